package hingeleaf.card;

import hingeleaf.geom.Region;
import hingeleaf.geom.Segment;
import hingeleaf.geom.Subdivision;
import hingeleaf.geom.Vec2;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The panels of one flat piece, derived from its outline, slits and scores, and which score folds
 * which two of them.
 *
 * @param piece what was divided
 * @param panels named by the labels inside them
 * @param folds one for each score and pair of panels that it parts
 */
public record PanelLayout(Piece piece, List<FlatPanel> panels, List<Fold> folds) {
  /** How far beside a score a panel is looked for, mm: less than any panel is wide. */
  private static final double BESIDE_MM = 1e-3;

  /** Where along a score its neighbours are looked for; more than one, since it may be broken. */
  private static final double[] ALONG = {0.5, 0.1, 0.9, 0.25, 0.75};

  /** A panel in piece coordinates. */
  public record FlatPanel(String name, Region region) {}

  /**
   * A score with the panels on its two sides, as indices into {@link #panels}.
   *
   * @param left on the left of the score's direction
   */
  public record Fold(Score score, int left, int right) {}

  /**
   * Derives the panels.
   *
   * @throws IllegalArgumentException if a panel has no label or two, or a score parts nothing: a
   *     fault of the structure that made the piece, not of the maker's design
   */
  public static PanelLayout of(Piece piece) {
    List<Segment> lines = new ArrayList<>(piece.slits());
    piece.scores().forEach(s -> lines.add(s.at()));
    List<Region> faces =
        lines.isEmpty() ? List.of(piece.shape()) : Subdivision.split(piece.shape(), lines);
    List<FlatPanel> panels = faces.stream().map(f -> named(piece, f)).toList();
    List<Fold> folds = new ArrayList<>();
    for (Score score : piece.scores()) {
      Fold fold = fold(panels, score);
      if (fold == null) {
        throw new IllegalArgumentException(
            piece.id() + ": score " + score.name() + " does not part two panels");
      }
      folds.add(fold);
    }
    return new PanelLayout(piece, panels, List.copyOf(folds));
  }

  private static FlatPanel named(Piece piece, Region face) {
    List<Label> inside =
        piece.labels().stream().filter(l -> face.contains(l.at())).limit(2).toList();
    if (inside.size() != 1) {
      throw new IllegalArgumentException(
          piece.id() + ": the panel " + face.box() + " has " + inside.size() + " labels, not one");
    }
    return new FlatPanel(inside.get(0).name(), face);
  }

  private static @Nullable Fold fold(List<FlatPanel> panels, Score score) {
    Segment s = score.at();
    Vec2 across = s.to().minus(s.from()).unit().left().times(BESIDE_MM);
    for (double t : ALONG) {
      Vec2 on = s.from().plus(s.to().minus(s.from()).times(t));
      int left = at(panels, on.plus(across));
      int right = at(panels, on.minus(across));
      if (left >= 0 && right >= 0 && left != right) {
        return new Fold(score, left, right);
      }
    }
    return null;
  }

  private static int at(List<FlatPanel> panels, Vec2 p) {
    for (int i = 0; i < panels.size(); i++) {
      if (panels.get(i).region().contains(p)) {
        return i;
      }
    }
    return -1;
  }

  /** Index of the panel with this name. */
  public int index(String name) {
    for (int i = 0; i < panels.size(); i++) {
      if (panels.get(i).name().equals(name)) {
        return i;
      }
    }
    throw new IllegalArgumentException(piece.id() + " has no panel " + name);
  }
}
