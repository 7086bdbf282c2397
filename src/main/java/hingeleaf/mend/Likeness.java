package hingeleaf.mend;

import hingeleaf.card.Piece;
import hingeleaf.card.Score;
import hingeleaf.geom.Segment;
import hingeleaf.geom.Vec2;
import java.util.List;
import java.util.stream.IntStream;

/** Whether two pieces are cut, slit and scored alike. */
final class Likeness {
  /** Below what any hand can tell. */
  private static final double SAME_MM = 1e-4;

  /** A folded stay gives by so much: common practice, no source, mm. */
  private static final double FOLD_BESIDE_MM = 1;

  /** Half of what a notch is wider than its paper; more and it binds. */
  private static final double NOTCH_BESIDE_MM = 0.1;

  private Likeness() {}

  static boolean same(Piece a, Piece b) {
    return alike(a, b, SAME_MM);
  }

  /** Whether a stay made like one does the work of the other. */
  static boolean near(Piece a, Piece b) {
    double mm = (a.scores().isEmpty() ? NOTCH_BESIDE_MM : FOLD_BESIDE_MM) + SAME_MM;
    return alike(a, b, mm) && points(a, b, mm);
  }

  /** Notches stand where they stand. */
  private static boolean points(Piece a, Piece b, double mm) {
    List<Vec2> one = a.shape().outer().points();
    List<Vec2> other = b.shape().outer().points();
    return one.size() == other.size()
        && IntStream.range(0, one.size()).allMatch(i -> one.get(i).distance(other.get(i)) < mm);
  }

  private static boolean alike(Piece a, Piece b, double mm) {
    return Math.abs(a.width() - b.width()) < mm
        && Math.abs(a.height() - b.height()) < mm
        && Math.abs(a.shape().area() - b.shape().area()) < mm * (a.width() + a.height())
        && lines(folds(a), folds(b), mm)
        && lines(a.slits(), b.slits(), mm);
  }

  private static List<Segment> folds(Piece p) {
    return p.scores().stream().map(Score::at).toList();
  }

  private static boolean lines(List<Segment> a, List<Segment> b, double mm) {
    if (a.size() != b.size()) {
      return false;
    }
    for (int i = 0; i < a.size(); i++) {
      if (a.get(i).from().distance(b.get(i).from()) >= mm
          || a.get(i).to().distance(b.get(i).to()) >= mm) {
        return false;
      }
    }
    return true;
  }
}
