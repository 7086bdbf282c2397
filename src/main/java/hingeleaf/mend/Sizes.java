package hingeleaf.mend;

import hingeleaf.card.Piece;
import hingeleaf.design.FieldKind;
import hingeleaf.design.FormField;
import hingeleaf.design.Range;
import hingeleaf.design.Values;
import hingeleaf.pack.Pack;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The sizes of a part beside the layers that can be measured, and where the design tells them: of a
 * leaf, a stay and whatever else hangs on the card every length of its form, of what is glued on
 * its width and height.
 *
 * @param name of the part
 * @param origin its path in the design
 * @param all in the order of its form
 */
record Sizes(String name, String origin, List<One> all) {
  private static final double LARGEST_MM = 1000;
  private static final String MECHANISMS = "mechanisms[";
  private static final List<String> GLUED_ON = List.of("mats[", "windows[", "cut-outs[", "message");

  Sizes {
    all = List.copyOf(all);
  }

  /**
   * One size.
   *
   * @param word by which it is measured
   * @param path of its value in the design, which may not be there yet
   * @param mm as the design has it
   * @param range that the design's form allows, mm
   */
  record One(String word, String path, double mm, Range range) {}

  /** The sizes of a piece; none of a layer of the stack. */
  static Sizes of(Pack pack, Piece piece) {
    String origin = piece.origin();
    if (Stack.layer(pack, piece.id())) {
      return new Sizes(piece.id(), origin, List.of());
    }
    Optional<Values.Choice> hung =
        pack.inputs().design().mechanisms().stream()
            .filter(m -> m.form().path().equals(origin))
            .findFirst();
    if (hung.isPresent()) {
      return of(hung.get().form());
    }
    if (GLUED_ON.stream().noneMatch(origin::startsWith)) {
      return new Sizes(piece.id(), origin, List.of());
    }
    Range range = Range.positive(LARGEST_MM);
    return new Sizes(
        piece.id(),
        origin,
        List.of(
            new One("width", origin + ".width", piece.width(), range),
            new One("height", origin + ".height", piece.height(), range)));
  }

  /** The sizes of a door, a stay or the like; its place is none. */
  static Sizes of(Values v) {
    List<One> all = new ArrayList<>();
    for (FormField f : v.formOf().fields()) {
      if (f.kind() instanceof FieldKind.OneLength length
          && !f.key().equals("at")
          && v.has(f.key())) {
        all.add(new One(f.key(), v.path(f.key()), v.mm(f.key()), length.range()));
      }
    }
    return new Sizes(v.text("name"), v.path(), all);
  }

  /** The doors that are cut into a panel and are no piece of their own. */
  static List<Values> cutIn(Pack pack) {
    return pack.inputs().design().mechanisms().stream()
        .filter(m -> m.variant().equals("door") && !m.form().has("stock"))
        .map(Values.Choice::form)
        .toList();
  }

  /** The piece into which such a door is cut. */
  static String host(Pack pack, Values cutIn) {
    String name = cutIn.text("name");
    return pack.card().pieces().stream()
        .filter(p -> p.labels().stream().anyMatch(l -> l.name().equals(name)))
        .map(Piece::id)
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException(name + " is cut into nothing"));
  }

  boolean hung() {
    return origin.startsWith(MECHANISMS);
  }

  boolean leaf() {
    return origin.endsWith(".door");
  }

  Optional<One> one(String word) {
    return all.stream().filter(o -> o.word().equals(word)).findFirst();
  }

  /** A size by its word, mm. */
  double mm(String word, double otherwise) {
    return one(word).map(One::mm).orElse(otherwise);
  }
}
