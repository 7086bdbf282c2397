package hingeleaf.mend;

import hingeleaf.design.Change;
import hingeleaf.design.DesignDocument;
import hingeleaf.design.Node;
import hingeleaf.design.Values;
import hingeleaf.design.YamlText;
import hingeleaf.finding.Level;
import hingeleaf.finding.Problem;
import hingeleaf.pack.Pack;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Adds a stay to a card that leans, or puts another sort in the place of one that cannot be made,
 * set or put away: the first of the sorts that makes it stand.
 */
final class AddStay {
  /** From the quickest to make to what fits where no border is left. */
  private static final List<String> SORTS = List.of("base-tab", "belly-strip", "slot-lock");

  /** What a card that leans says. */
  private static final Set<String> LEANS = Set.of("needs-a-stay", "stay-does-not-hold");

  /** What a stay says that another sort, place or edge may cure. */
  private static final Set<String> UNFIT =
      Set.of(
          "stay-holds-taut",
          "stay-blocked",
          "stay-at-sides",
          "stay-past-border",
          "stay-too-small",
          "no-stage");

  private final Pack pack;
  private final DesignDocument design;

  private AddStay(Pack pack) {
    this.pack = pack;
    this.design = pack.inputs().design();
  }

  /** Empty where the finding does not ask for a stay, or no stay helps. */
  static List<Mend> of(Pack pack, Problem finding) {
    if (!answers(finding) || !design(pack).base().form().has("stock")) {
      return List.of();
    }
    AddStay add = new AddStay(pack);
    List<Mend> tried = LEANS.contains(finding.kind()) ? add.candidates() : add.others(finding);
    return tried.stream().filter(m -> add.cures(finding, m)).limit(1).toList();
  }

  static boolean answers(Problem finding) {
    return LEANS.contains(finding.kind()) || UNFIT.contains(finding.kind());
  }

  /** The same stay at another edge or on another layer, else another sort in its place. */
  private List<Mend> others(Problem finding) {
    List<Mend> all = new ArrayList<>();
    for (int i = 0; i < design.mechanisms().size(); i++) {
      Values.Choice m = design.mechanisms().get(i);
      if (finding.origin().startsWith(m.form().path())) {
        elsewhere(finding, m.form(), all);
        instead("mechanisms[" + i + "]", m, all);
      }
    }
    return all;
  }

  private void elsewhere(Problem finding, Values stay, List<Mend> all) {
    if (finding.kind().equals("stay-at-sides")) {
      for (String edge : List.of("bottom", "top", "left", "right")) {
        all.add(
            new Mend(
                "put it at the " + edge + " edge",
                List.of(new Change.Put(stay.path("edge"), edge))));
      }
    }
    if (finding.kind().equals("no-stage")) {
      String stage = stages() > 1 ? frame(stages() - 2) : "back";
      all.add(
          new Mend(
              "hang it on " + stage, List.of(new Change.Put(stay.path("on"), YamlText.of(stage)))));
    }
  }

  private int stages() {
    return design.base().form().forms("frames").size();
  }

  private String frame(int i) {
    return design.base().form().forms("frames").get(i).text("name");
  }

  /** Another sort under the same name, of the same paper. */
  private void instead(String path, Values.Choice stay, List<Mend> all) {
    String keys =
        ": {name: "
            + YamlText.of(stay.form().text("name"))
            + ", stock: "
            + YamlText.of(stay.form().text("stock"))
            + "}}";
    for (String sort : SORTS) {
      if (!sort.equals(stay.variant())) {
        all.add(
            new Mend(
                "make it a " + sort.replace('-', ' ') + " instead",
                List.of(new Change.Put(path, "{" + sort + keys))));
      }
    }
    if (stages() == 1 && !stay.variant().equals("fold-down-brace")) {
      all.add(
          new Mend(
              "make it a fold-down brace instead",
              List.of(new Change.Put(path, "{fold-down-brace" + keys))));
    }
  }

  private static DesignDocument design(Pack pack) {
    return pack.inputs().design();
  }

  private List<Mend> candidates() {
    List<Mend> all = new ArrayList<>();
    for (String sort : SORTS) {
      all.add(new Mend("add a " + sort.replace('-', ' '), List.of(added(at(0), sort, ""))));
    }
    List<Change> braces = new ArrayList<>();
    String on = "back";
    for (Values frame : design.base().form().forms("frames")) {
      braces.add(added(at(braces.size()), "fold-down-brace", on));
      on = frame.text("name");
    }
    all.add(new Mend("add a fold-down brace to each stage", braces));
    return all;
  }

  /** At the end of the list of mechanisms, which is made where there is none. */
  private int at(int more) {
    return there() + more;
  }

  private int there() {
    return design.tree().find("mechanisms").orElse(null) instanceof Node.Items i
        ? i.items().size()
        : 0;
  }

  private Change added(int at, String sort, String on) {
    String stock = YamlText.of(design.base().form().text("stock"));
    String hung = on.isEmpty() ? "" : ", on: " + YamlText.of(on);
    String yaml = "{" + sort + ": {name: " + name(at) + hung + ", stock: " + stock + "}}";
    boolean list = design.tree().find("mechanisms").isPresent() || at > 0;
    return list
        ? new Change.Insert("mechanisms", at, yaml)
        : new Change.Put("mechanisms", "[" + yaml + "]");
  }

  /** A name that no piece has. */
  private String name(int at) {
    Set<String> taken = pack.card().pieces().stream().map(p -> p.id()).collect(Collectors.toSet());
    String name = at == there() ? "stay" : "stay-" + (at - there() + 1);
    int more = 2;
    while (taken.contains(name)) {
      name = "stay-" + (at - there() + more++);
    }
    return name;
  }

  /** The finding is gone and nothing graver than a note came. */
  private boolean cures(Problem finding, Mend mend) {
    if (!(Trial.of(design.tree(), mend.changes()) instanceof Trial.Read r)) {
      return false;
    }
    Pack after = Trial.pack(pack, r.design());
    Set<String> known = pack.problems().stream().map(AddStay::key).collect(Collectors.toSet());
    return after.problems().stream()
        .noneMatch(
            p ->
                p.kind().equals(finding.kind())
                    || p.level() != Level.NOTES && !known.contains(key(p)));
  }

  private static String key(Problem p) {
    return p.kind() + " " + p.part() + " " + p.origin();
  }
}
