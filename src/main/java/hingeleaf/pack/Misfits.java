package hingeleaf.pack;

import hingeleaf.card.Join;
import hingeleaf.card.Misfit;
import hingeleaf.card.Piece;
import hingeleaf.design.Values;
import hingeleaf.finding.Problem;
import hingeleaf.finding.Want;
import hingeleaf.fold.accuracy.StageFit;
import hingeleaf.measure.MakerUnits;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Pieces that do not quite fit together as designed.
 *
 * <p>Paper swallows about one thickness of misfit at its scores: a note up to that, a warning
 * beyond (common practice, no source). What counts is the misfit that is left when the stage is
 * pressed flat: a tab closed in the flat pose lands where it falls.
 */
final class Misfits {
  /** Less than this share of a thickness nobody feels. */
  private static final double FELT = 0.1;

  /** A panel that stands out of true by more is seen: common practice, no source; rad. */
  private static final double ASKEW = Math.toRadians(1.5);

  private final Pack pack;
  private final MakerUnits units;

  private Misfits(Pack pack) {
    this.pack = pack;
    this.units = pack.inputs().wants().units();
  }

  static List<Problem> of(Pack pack) {
    Misfits misfits = new Misfits(pack);
    List<Problem> found = new ArrayList<>();
    for (Misfit m : pack.made().misfits()) {
      String piece = m.glue().substring(0, m.glue().lastIndexOf('/'));
      if (m.gap() > FELT * misfits.piece(piece).stock().thickness()) {
        found.add(misfits.told(m, misfits.piece(piece)));
      }
    }
    return found;
  }

  private Piece piece(String id) {
    return pack.card().piece(id);
  }

  private Problem told(Misfit m, Piece piece) {
    Optional<StageFit> stage = StageFit.of(pack.made(), piece.id());
    if (stage.isEmpty()) {
      return plain(m, piece);
    }
    StageFit s = stage.get();
    Problem p = Math.abs(s.forced()) <= FELT * s.thickness() ? askew(s, piece) : forced(s, piece);
    return p.with(
        Map.of(
            "gap", m.gap(),
            "angle", m.angle(),
            "forced", Math.abs(s.forced()),
            "jam", s.jam(),
            "tilt", s.tilt()));
  }

  private Problem plain(Misfit m, Piece piece) {
    String message =
        piece.name()
            + ": folded at its scores, this part misses its place by "
            + units.fine(m.gap())
            + " - check its scores, or glue its last tab flat, where it falls";
    return level(m.gap() <= piece.stock().thickness(), piece, "misfit", message)
        .with(Map.of("gap", m.gap(), "angle", m.angle()));
  }

  private static Problem level(boolean note, Piece piece, String kind, String message) {
    return note
        ? Problem.notes(kind, piece.id(), piece.origin(), message)
        : Problem.warns(kind, piece.id(), piece.origin(), message);
  }

  /** Its two sides differ, but one way it closes flat. */
  private Problem askew(StageFit s, Piece piece) {
    String message =
        piece.name()
            + ": its sides are "
            + units.fine(s.links().first())
            + " and "
            + units.fine(s.links().second())
            + " deep, so it stands "
            + degrees(s.tilt())
            + " out of true and lies flat only "
            + towards(s)
            + " - glue its second tab with the frame laid flat "
            + towards(s)
            + "; to stand true it needs both sides "
            + units.fine(s.links().first())
            + " deep and a panel "
            + units.fine(s.links().base())
            + across(pack);
    Problem p = level(s.tilt() <= ASKEW, piece, "stands-askew", message);
    List<Want> wants = new ArrayList<>();
    double side = s.links().first();
    frame(pack, piece).ifPresent(f -> wants.add(new Want(f.path("side-depths", 1), side, side)));
    cut(pack, piece, s.links().base()).ifPresent(wants::add);
    return p.wanting(wants.toArray(Want[]::new));
  }

  /** It must be forced flat, unless its second tab is closed flat. */
  private Problem forced(StageFit s, Piece piece) {
    double off = s.forced();
    String message =
        piece.name()
            + ": glued standing it does not lie flat by "
            + units.fine(Math.abs(off))
            + " and jams "
            + units.fine(s.jam())
            + " up - glue its first tab, lay the frame flat "
            + towards(s)
            + ", and close its second tab where it falls, "
            + units.fine(Math.abs(off))
            + (off > 0 ? " further out" : " further in")
            + ", or cut its panel "
            + units.fine(fitting(s))
            + across(pack);
    Problem p = level(Math.abs(off) <= s.thickness(), piece, "misfit", message);
    List<Want> wants = new ArrayList<>();
    frame(pack, piece).ifPresent(f -> wants.add(setIn(f, -off)));
    cut(pack, piece, fitting(s)).ifPresent(wants::add);
    return p.wanting(wants.toArray(Want[]::new));
  }

  /** How long a panel has to be across its sides so that nothing has to be forced, mm. */
  static double fitting(StageFit s) {
    return Math.rint((s.links().panel() - s.forced()) * 1e6) / 1e6;
  }

  /** Which size of a panel goes across its sides. */
  static String across(Pack pack) {
    return upright(pack) ? " wide" : " high";
  }

  private static boolean upright(Pack pack) {
    return pack.inputs().design().base().form().text("sides").equals("left-right");
  }

  /** A panel of that size. */
  static Optional<Want> cut(Pack pack, Piece piece, double size) {
    String key = upright(pack) ? "width" : "height";
    return frame(pack, piece).map(f -> new Want(f.path(key), size, size));
  }

  private static Optional<Values> frame(Pack pack, Piece piece) {
    return pack.inputs().design().base().form().forms("frames").stream()
        .filter(f -> f.path().equals(piece.origin()))
        .findFirst();
  }

  /** Where the second tab's fold stands when it was closed flat. */
  private static Want setIn(Values frame, double moved) {
    double now = frame.has("set-in") ? frame.lengths("set-in").get(1).mm() : 0;
    double to = Math.rint((now + moved) * 1e6) / 1e6;
    return new Want(frame.path("set-in", 1), to, to);
  }

  private String towards(StageFit s) {
    boolean upright = hasTab(s.piece(), "tab-left");
    return s.lean() > 0
        ? (upright ? "to the right" : "upwards")
        : (upright ? "to the left" : "down");
  }

  private boolean hasTab(String piece, String tab) {
    return pack.card().joins().stream()
        .anyMatch(
            j ->
                j instanceof Join.Glue g
                    && g.a().piece().equals(piece)
                    && g.a().panel().equals(tab));
  }

  private static String degrees(double rad) {
    return Math.round(Math.toDegrees(rad) * 10) / 10.0 + " degrees";
  }
}
