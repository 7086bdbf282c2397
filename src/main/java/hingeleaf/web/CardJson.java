package hingeleaf.web;

import hingeleaf.design.Node;
import hingeleaf.pack.Pack;
import hingeleaf.stock.Bench;
import java.util.ArrayList;
import java.util.List;

/** Everything that the page shows of a card at once. */
final class CardJson {
  private CardJson() {}

  /**
   * @param told a sentence on what was done beside what was asked; may be empty
   */
  static String text(Opened card, String told, List<String> drawings) {
    return JsonOut.object(
        out -> {
          out.put("name", card.name()).put("version", card.version().number());
          out.put("undo", card.version().undo()).put("redo", card.version().redo());
          out.put("view", card.view().word()).put("told", told);
          out.texts("drawings", drawings);
          FindingJson.write(out, card.firstProblems());
          Pack pack = card.pack();
          if (pack == null) {
            out.nothing("sheet").nothing("scene").nothing("choices");
            return;
          }
          out.put("title", pack.title());
          out.put("designUnit", pack.inputs().design().unit().word());
          out.group("sheet", o -> SheetJson.write(o, pack, card.view()));
          choices(out, pack);
          if (pack.blocked()) {
            out.nothing("scene");
          } else {
            out.group("scene", o -> SceneJson.write(o, pack));
          }
        });
  }

  /** What the fields that name something may name. */
  private static void choices(JsonOut out, Pack pack) {
    Bench bench = pack.inputs().bench();
    out.group(
        "choices",
        o -> {
          o.each(
              "papers",
              bench.papers(),
              p ->
                  o.put("word", p.name())
                      .put("says", p.title())
                      .put("colour", p.faces().front())
                      .put("clear", p.clear()));
          o.each("glues", bench.glues(), g -> o.put("word", g.name()).put("says", g.title()));
          o.each(
              "folders",
              bench.embossingFolders(),
              f -> o.put("word", f.name()).put("says", f.label()));
          o.texts("parts", parts(pack));
        });
  }

  /** Names of all that something can be glued on, from the back forwards. */
  private static List<String> parts(Pack pack) {
    List<String> all = new ArrayList<>(List.of("back"));
    String base = "base." + pack.inputs().design().base().variant();
    for (String list : List.of(base + ".frames", "mats", "windows", "cut-outs")) {
      if (pack.inputs().design().tree().find(list).orElse(null) instanceof Node.Items items) {
        for (Node item : items.items()) {
          if (item instanceof Node.Fields f
              && f.get("name").orElse(null) instanceof Node.Scalar s) {
            all.add(s.raw());
          }
        }
      }
    }
    return all;
  }
}
