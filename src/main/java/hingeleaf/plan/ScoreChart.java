package hingeleaf.plan;

import hingeleaf.card.Face;
import hingeleaf.card.Score;
import hingeleaf.geom.Box;
import hingeleaf.geom.Segment;
import hingeleaf.stock.Bench;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Where to score each kind of piece, as a scoring board is used: the piece against the stop, one
 * face up, distances from the left edge.
 *
 * <p>The groove of a score is on the outside of its fold and the bead inside: a mountain is scored
 * with the front up, a valley with the back up. Turned over left to right, a score that stood at x
 * stands at the width less x; one that stood at a height stays there.
 *
 * @param rows one for each line of the cut list that has scores
 */
public record ScoreChart(List<Row> rows) {
  /** A score this near to a groove is on it, mm; half of what a bone folder's tip wanders. */
  private static final double ON_GROOVE_MM = 0.05;

  /** Above this grammage a second score beside the first keeps the fold from cracking. */
  public static final double DOUBLE_SCORE_G = 350; // common practice, no source

  public ScoreChart {
    rows = List.copyOf(rows);
  }

  /**
   * The scores of one kind of piece.
   *
   * @param line of the cut list
   * @param settings front-up ones first, each face from the left edge rightwards
   */
  public record Row(CutList.Line line, List<Setting> settings) {
    public Row {
      settings = List.copyOf(settings);
    }

    public boolean turnsOver() {
      return settings.stream().anyMatch(s -> s.up() == Face.BACK)
          && settings.stream().anyMatch(s -> s.up() == Face.FRONT);
    }

    /** Whether the scoring board has a groove for every score. */
    public boolean grooved() {
      return settings.stream().allMatch(s -> s.groove().isPresent());
    }

    public boolean doubleScored() {
      return line.piece().stock().grammage() > DOUBLE_SCORE_G;
    }
  }

  /**
   * One score.
   *
   * @param score on the piece
   * @param up the face that lies up while scoring
   * @param at distance from the left edge (or, turned a quarter, from the lower edge) as the piece
   *     lies with that face up, mm; NaN for a score that runs aslant
   * @param quarterTurn whether the piece is first turned a quarter, so that the score runs across
   * @param groove the number of the groove, from 1; empty where ruler and stylus must serve
   */
  public record Setting(
      Score score, Face up, double at, boolean quarterTurn, Optional<Integer> groove) {
    public boolean aslant() {
      return Double.isNaN(at);
    }
  }

  /** The chart of a cut list. */
  public static ScoreChart of(CutList cuts, Bench bench) {
    List<Row> rows = new ArrayList<>();
    for (CutList.Line line : cuts.lines()) {
      if (!line.piece().scores().isEmpty()) {
        rows.add(new Row(line, settings(line, bench)));
      }
    }
    return new ScoreChart(rows);
  }

  private static List<Setting> settings(CutList.Line line, Bench bench) {
    List<Setting> settings = new ArrayList<>();
    for (Score s : line.piece().scores()) {
      settings.add(setting(s, line.piece().box(), bench));
    }
    settings.sort(Comparator.comparing(Setting::up).thenComparingDouble(Setting::at));
    return settings;
  }

  private static Setting setting(Score score, Box box, Bench bench) {
    Face up = score.mountain() ? Face.FRONT : Face.BACK;
    Segment s = score.at();
    boolean upright = Math.abs(s.from().x() - s.to().x()) < 1e-9;
    boolean level = Math.abs(s.from().y() - s.to().y()) < 1e-9;
    if (!upright && !level) {
      return new Setting(score, up, Double.NaN, false, Optional.empty());
    }
    double width = upright ? box.width() : box.height();
    double fromLeft = upright ? s.from().x() - box.minX() : s.from().y() - box.minY();
    // Turned over left to right the lower edge stays where it is.
    double at = up == Face.FRONT || level ? fromLeft : width - fromLeft;
    return new Setting(score, up, at, level, groove(at, bench));
  }

  private static Optional<Integer> groove(double at, Bench bench) {
    double step = bench.scoringBoard().step();
    long n = Math.round(at / step);
    boolean on = Math.abs(n * step - at) <= ON_GROOVE_MM;
    boolean reached = at <= bench.scoringBoard().longest() + ON_GROOVE_MM;
    return on && n >= 1 && reached ? Optional.of((int) n) : Optional.empty();
  }
}
