package hingeleaf.mend;

import hingeleaf.card.Piece;
import hingeleaf.card.Score;
import hingeleaf.geom.Segment;
import java.util.List;

/** Whether two pieces are cut, slit and scored alike. */
final class Likeness {
  /** Below what any hand can tell. */
  private static final double SAME_MM = 1e-4;

  private Likeness() {}

  static boolean same(Piece a, Piece b) {
    return alike(a, b, SAME_MM);
  }

  /** To what a ruler and an eye can tell. */
  static boolean near(Piece a, Piece b) {
    return alike(a, b, Stack.SAME_MM);
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
