package hingeleaf.fold.accuracy;

import hingeleaf.card.Join;
import hingeleaf.card.Joint;
import hingeleaf.card.MadeCard;
import hingeleaf.card.Piece;
import hingeleaf.card.Rest;
import hingeleaf.card.Score;
import hingeleaf.fold.Budget;
import hingeleaf.fold.Linkage;
import hingeleaf.geom.Vec2;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Finds the stages of a card: loops of four parallel folds of one piece. */
final class Stages {
  private static final long STEPS = 4_000_000;
  private static final double SAME_MM = 1e-6;

  private final MadeCard made;
  private final Linkage linkage;

  private Stages(MadeCard made) {
    this.made = made;
    this.linkage = Linkage.of(made.mechanism(), Budget.of(STEPS));
  }

  /** From the back forwards; what is no such loop has none. */
  static List<Stage> of(MadeCard made, @Nullable Rest rest) {
    Stages finder = new Stages(made);
    List<Stage> all = new ArrayList<>();
    List<List<Integer>> movers = finder.linkage.movers();
    for (int i = 0; i < movers.size(); i++) {
      int lean = rest == null || i >= rest.leans().size() ? 1 : rest.leans().get(i);
      finder.stage(movers.get(i), lean).ifPresent(all::add);
    }
    return all;
  }

  private Optional<Stage> stage(List<Integer> joints, int lean) {
    if (joints.size() != 4) {
      return Optional.empty();
    }
    List<String> ids = joints.stream().map(linkage::joint).map(Joint::id).toList();
    String piece = before(ids.get(0));
    if (!ids.stream().allMatch(id -> before(id).equals(piece))) {
      return Optional.empty();
    }
    Piece p = made.card().piece(piece);
    List<Score> scores =
        new ArrayList<>(ids.stream().map(id -> p.score(id.substring(piece.length() + 1))).toList());
    boolean upright = scores.stream().allMatch(s -> level(s, true));
    if (!upright && !scores.stream().allMatch(s -> level(s, false))) {
      return Optional.empty();
    }
    scores.sort(Comparator.comparingDouble(s -> along(s.at().from(), upright)));
    List<Join.Glue> feet = feet(piece);
    if (feet.size() != 2) {
      return Optional.empty();
    }
    return Optional.of(stage(p, scores, feet, upright, lean));
  }

  private static String before(String id) {
    return id.substring(0, Math.max(0, id.lastIndexOf('/')));
  }

  private static boolean level(Score s, boolean upright) {
    return Math.abs(along(s.at().from(), upright) - along(s.at().to(), upright)) < SAME_MM;
  }

  private static double along(Vec2 p, boolean upright) {
    return upright ? p.x() : p.y();
  }

  /** The two glues by which the piece stands on one panel behind it. */
  private List<Join.Glue> feet(String piece) {
    List<Join.Glue> feet = new ArrayList<>();
    for (Join j : made.card().joins()) {
      if (j instanceof Join.Glue g && g.a().piece().equals(piece)) {
        feet.add(g);
      }
    }
    boolean same =
        feet.size() == 2
            && feet.get(0).b().piece().equals(feet.get(1).b().piece())
            && feet.get(0).b().panel().equals(feet.get(1).b().panel());
    return same ? feet : List.of();
  }

  private Stage stage(
      Piece p, List<Score> scores, List<Join.Glue> feet, boolean upright, int lean) {
    String direction = upright ? "x" : "y";
    double[] at = scores.stream().mapToDouble(s -> along(s.at().from(), upright)).toArray();
    double[] lands =
        feet.stream().mapToDouble(g -> along(g.b().origin(), upright)).sorted().toArray();
    Piece behind = made.card().piece(feet.get(0).b().piece());
    List<Map.Entry<Integer, Setting>> landing = new ArrayList<>();
    for (int i = 0; i < 2; i++) {
      Setting s = line(behind, lands[i], upright);
      if (s != null) {
        landing.add(Map.entry(i, s));
      }
    }
    return new Stage(
        p.id(),
        scores.stream().map(Score::name).toList(),
        at,
        scores.stream()
            .map(s -> Setting.of("score", direction, along(s.at().from(), upright)))
            .toList(),
        lands,
        landing,
        lean,
        behind.id(),
        (upright ? p.width() : p.height()) - at[3],
        p.stock().thickness());
  }

  /** The setting by which a line of a piece came to be; null for the edge measured from. */
  private static @Nullable Setting line(Piece piece, double at, boolean upright) {
    String direction = upright ? "x" : "y";
    for (Score s : piece.scores()) {
      if (level(s, upright) && Math.abs(along(s.at().from(), upright) - at) < SAME_MM) {
        return Setting.of("score", direction, at);
      }
    }
    double far = upright ? piece.box().maxX() : piece.box().maxY();
    return Math.abs(far - at) < SAME_MM ? Setting.of("cut", direction, at) : null;
  }
}
