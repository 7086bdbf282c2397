package hingeleaf.mend;

import hingeleaf.card.Piece;
import hingeleaf.design.Values;
import hingeleaf.pack.Pack;
import java.util.ArrayList;
import java.util.List;

/** The layers of a stacked card as its design and pieces have them. */
final class Stack {
  /** Two measures of one thing may differ by so much, mm: what a ruler and an eye can tell. */
  static final double SAME_MM = 0.25;

  static final String BACK = "back";

  private Stack() {}

  static boolean stacked(Pack pack) {
    return pack.inputs().design().base().variant().equals("stacked-frames");
  }

  private static Values base(Pack pack) {
    return pack.inputs().design().base().form();
  }

  static String basePath(Pack pack) {
    return "base." + pack.inputs().design().base().variant();
  }

  /** Whether sides stand left and right. */
  static boolean upright(Pack pack) {
    return stacked(pack) && base(pack).text("sides").equals("left-right");
  }

  static boolean tabsIn(Pack pack) {
    return base(pack).text("tabs").equals("in");
  }

  static List<Values> frames(Pack pack) {
    return stacked(pack) ? base(pack).forms("frames") : List.of();
  }

  static boolean frame(Pack pack, String name) {
    return frames(pack).stream().anyMatch(f -> f.text("name").equals(name));
  }

  /** Whether a piece is the back or a frame. */
  static boolean layer(Pack pack, String name) {
    return stacked(pack) && (name.equals(BACK) || frame(pack, name));
  }

  static Layer layer(Piece piece, boolean upright) {
    return Layer.of(piece, upright, List.of(0.0, 0.0));
  }

  /** From the back forwards, as designed. */
  static List<Layer> layers(Pack pack) {
    List<Layer> all = new ArrayList<>();
    all.add(layer(pack.card().piece(BACK), upright(pack)));
    for (Values f : frames(pack)) {
      Layer layer = layer(pack.card().piece(f.text("name")), upright(pack));
      all.add(
          f.has("set-in")
              ? layer.gluedIn(f.lengths("set-in").stream().map(l -> l.mm()).toList())
              : layer);
    }
    return all;
  }

  /** Path of a layer in the design; the back's may not be there yet. */
  static String path(Pack pack, String name) {
    if (name.equals(BACK)) {
      return basePath(pack) + ".back";
    }
    return frames(pack).stream()
        .filter(f -> f.text("name").equals(name))
        .map(Values::path)
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException(name + " is no frame"));
  }
}
