package hingeleaf.pack;

import hingeleaf.card.Panel;
import hingeleaf.card.Stay;
import hingeleaf.design.Values;
import hingeleaf.finding.Problem;
import hingeleaf.finding.Want;
import hingeleaf.fold.contact.Blocked;
import hingeleaf.fold.contact.Contact;
import hingeleaf.fold.stand.Hold;
import hingeleaf.fold.stand.Stand;
import hingeleaf.geom.Vec2;
import hingeleaf.measure.MakerUnits;
import hingeleaf.plan.Depths;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Whether a card needs a stay, and whether those that it has hold and can be put away. */
final class StayFindings {
  /** How much shorter than its place a hooked strip may act, mm: common practice, no source. */
  private static final double SLACK_MM = 0.5;

  /** What a cut-out keeps from a flap beside it: common practice, no source, mm. */
  private static final double CLEAR_MM = 1;

  private final Pack pack;
  private final MakerUnits units;

  private StayFindings(Pack pack) {
    this.pack = pack;
    this.units = pack.inputs().wants().units();
  }

  static List<Problem> of(Pack pack) {
    return new StayFindings(pack).all();
  }

  private List<Problem> all() {
    List<Problem> found = new ArrayList<>();
    Stand stand = pack.stand();
    if (!stand.loose().isEmpty()) {
      found.add(pack.card().stays().isEmpty() ? needed(stand) : holdsNot(stand));
    } else if (!pack.card().stays().isEmpty() && !pack.hold().firm()) {
      taut().ifPresent(found::add);
    }
    List<Blocked> stuck = Contact.stays(pack.made());
    stuck.forEach(b -> found.add(blocked(b)));
    if (stuck.isEmpty() && !pack.card().stays().isEmpty() && !pack.hold().frees()) {
      found.add(holdsOn(pack.hold()));
    }
    return found;
  }

  /** No stay that we make does this: it is the engine's check of them. */
  private Problem holdsOn(Hold hold) {
    Stay stay = pack.card().stays().get(0);
    String message =
        stay.piece()
            + ": let go, it leaves "
            + hold.released()
            + " of the "
            + hold.without()
            + " stages free that lean without it, so the card does not lie flat - use another stay";
    return Problem.warns("stay-blocked", stay.piece(), origin(stay), message)
        .with(Map.of("released", (double) hold.released(), "without", (double) hold.without()));
  }

  private Problem needed(Stand stand) {
    boolean sinks = stand.verdict() == Stand.Verdict.SINKS;
    String what =
        sinks
            ? "standing, its own weight folds this card"
            : "standing, this card can lean to the side: "
                + (stand.loose().size() == 1 ? "its stage is" : "its stages are")
                + " free";
    String message =
        what
            + " - give it a stay, such as a base tab, a slot-lock, a belly strip or a fold-down"
            + " brace, or let it lie";
    Problem p =
        sinks
            ? Problem.warns("needs-a-stay", "", "", message)
            : Problem.notes("needs-a-stay", "", "", message);
    return p.with(Map.of("free", (double) stand.loose().size()));
  }

  private Problem holdsNot(Stand stand) {
    Stay stay = pack.card().stays().get(0);
    List<String> names = stand.loose().stream().map(Stand.Lean::piece).toList();
    String message =
        stay.piece()
            + ": even with it set, "
            + names(names)
            + " can still lean - add a brace for "
            + (names.size() == 1 ? "that stage" : "each of those stages")
            + ", or take a stay that catches every frame, such as a base tab";
    return Problem.warns("stay-does-not-hold", stay.piece(), origin(stay), message)
        .with(Map.of("free", (double) names.size()));
  }

  /**
   * What layers between the hooked ends give sideways. A chain of straight links between fixed ends
   * that has {@code slack} too much is led aside at a distance a from one end, b from the other, by
   * about sqrt(2 slack / (1/a + 1/b)) (Pythagoras, small angles).
   */
  private Optional<Problem> taut() {
    List<Double> sides = Depths.of(pack.card());
    double whole = sides.stream().mapToDouble(d -> d).sum();
    double most = 0;
    double a = 0;
    for (int i = 0; i + 1 < sides.size(); i++) {
      a += sides.get(i);
      most = Math.max(most, Math.sqrt(2 * SLACK_MM / (1 / a + 1 / (whole - a))));
    }
    Stay stay = pack.card().stays().get(0);
    if (most == 0) {
      return Optional.empty();
    }
    String message =
        stay.piece()
            + ": it holds the foremost frame; those between are only held taut and can give about "
            + units.fine(most)
            + " to the side if it is "
            + units.fine(SLACK_MM)
            + " long - a base tab or a slot-lock catches each";
    return Optional.of(
        Problem.notes("stay-holds-taut", stay.piece(), origin(stay), message)
            .with(Map.of("gives", most, "slack", SLACK_MM)));
  }

  private Problem blocked(Blocked b) {
    Optional<Want> move = clear(b);
    String message =
        b.stay()
            + ": it cannot be put away: after "
            + Math.round(Math.toDegrees(b.turned()))
            + " of "
            + Math.round(Math.toDegrees(b.whole()))
            + " degrees it meets "
            + pack.words(b.against())
            + " - "
            + (move.isPresent()
                ? "move that away from the fold, make it less high, or use another stay"
                : "use another stay");
    String origin = pack.card().piece(b.stay()).origin();
    Problem p =
        Problem.warns("stay-blocked", b.stay(), origin, message)
            .with(Map.of("turned", b.turned(), "whole", b.whole()));
    return move.map(p::wanting).orElse(p);
  }

  /** Where a cut-out that is in the way must be so that the flap comes down beside it. */
  private Optional<Want> clear(Blocked b) {
    String piece = b.against().substring(0, b.against().lastIndexOf('/'));
    String origin = pack.card().piece(piece).origin();
    Optional<Values> part =
        pack.inputs().design().cutOuts().stream()
            .filter(v -> v.path().equals(origin) && v.given("at"))
            .findFirst();
    List<Panel> own = panels(b.stay(), "flap");
    List<Panel> tab = panels(b.stay(), "tab");
    List<Panel> other = panels(piece, "panel");
    if (part.isEmpty() || own.isEmpty() || tab.isEmpty() || other.isEmpty()) {
      return Optional.empty();
    }
    double deep = own.get(0).region().box().height() + CLEAR_MM;
    boolean across = tall(tab.get(0));
    int axis = across ? 0 : 1;
    double by = least(tab.get(0), across) + deep - least(other.get(0), across);
    double to = part.get().lengths("at").get(axis).mm() + by;
    return Optional.of(Want.atLeast(part.get().path("at", axis), to));
  }

  private List<Panel> panels(String piece, String name) {
    return pack.made().panels().stream()
        .filter(p -> p.piece().equals(piece) && p.name().equals(name))
        .toList();
  }

  /** Whether a panel stands upright along y: the flap's fold does where it runs at the left. */
  private static boolean tall(Panel p) {
    double rise = p.made().apply(new Vec2(1, 0)).y() - p.made().apply(Vec2.ZERO).y();
    return Math.abs(rise) > 0.5;
  }

  private static double least(Panel p, boolean across) {
    return p.region().outer().points().stream()
        .map(p.made()::apply)
        .mapToDouble(q -> across ? q.x() : q.y())
        .min()
        .orElse(0);
  }

  private static String names(List<String> names) {
    int last = names.size() - 1;
    return last == 0
        ? names.get(0)
        : String.join(", ", names.subList(0, last)) + " and " + names.get(last);
  }

  private String origin(Stay stay) {
    return pack.card().piece(stay.piece()).origin();
  }

  /** "With its base tab set it stands by itself and leans no more than 2 degrees". */
  static String stands(Pack pack) {
    List<Stay> stays = pack.card().stays();
    if (stays.isEmpty()) {
      return "It stands by itself";
    }
    double play = stays.stream().mapToDouble(Stay::play).max().orElse(0);
    double least = Depths.of(pack.card()).stream().mapToDouble(d -> d).min().orElse(1);
    long degrees = Math.max(1, Math.round(Math.toDegrees(Math.asin(Math.min(1, play / least)))));
    String set = names(stays.stream().map(Stay::piece).toList());
    return "With "
        + set
        + " set it stands by itself"
        + (pack.hold().firm()
            ? ", and no stage leans more than about "
                + degrees
                + (degrees == 1 ? " degree" : " degrees")
            : "");
  }
}
