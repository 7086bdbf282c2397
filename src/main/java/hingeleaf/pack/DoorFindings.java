package hingeleaf.pack;

import hingeleaf.design.Values;
import hingeleaf.finding.Problem;
import hingeleaf.finding.Want;
import hingeleaf.fold.contact.Meeting;
import hingeleaf.fold.contact.Swing;
import hingeleaf.measure.MakerUnits;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** How doors swing, meet and rest: what is wrong with it, and what is good to know. */
final class DoorFindings {
  private final Pack pack;
  private final MakerUnits units;

  private DoorFindings(Pack pack) {
    this.pack = pack;
    this.units = pack.inputs().wants().units();
  }

  /** Doors that open too little, and pairs of leaves that bind. */
  static List<Problem> of(Pack pack) {
    DoorFindings doors = new DoorFindings(pack);
    List<Problem> found = new ArrayList<>();
    pack.swings().stream()
        .filter(s -> s.opens() < Math.PI / 2 - 1e-9)
        .forEach(s -> found.add(doors.opensLittle(s)));
    pack.meetings().stream().filter(Meeting::binds).forEach(m -> found.add(doors.binds(m)));
    return found;
  }

  /** A sentence for each door, and one for each pair. */
  static List<String> told(Pack pack) {
    DoorFindings doors = new DoorFindings(pack);
    List<String> all = new ArrayList<>();
    pack.swings().forEach(s -> all.add(doors.opens(s)));
    pack.meetings().stream().filter(m -> !m.binds()).forEach(m -> all.add(doors.meets(m)));
    return all;
  }

  private static String name(String door) {
    return door.substring(door.lastIndexOf('/') + 1);
  }

  private Optional<Values> design(String name) {
    return pack.inputs().design().mechanisms().stream()
        .filter(m -> m.variant().equals("door"))
        .map(Values.Choice::form)
        .filter(v -> v.text("name").equals(name))
        .findFirst();
  }

  private static boolean upright(Values door) {
    return door.text("hinge").equals("left") || door.text("hinge").equals("right");
  }

  /** The key that says how far a leaf goes from its fold. */
  private static String across(Values door) {
    return upright(door) ? "width" : "height";
  }

  private static double millionth(double mm) {
    return Math.rint(mm * 1e6) / 1e6;
  }

  /** A door that does not open to a right angle hides what is behind it. */
  private Problem opensLittle(Swing s) {
    String name = name(s.door());
    Optional<Values> door = design(name);
    String against = s.against();
    boolean part = against != null && isPart(against);
    String met = against == null ? "what is in front" : pack.words(against);
    String what =
        name
            + ": it opens only "
            + Math.round(Math.toDegrees(s.opens()))
            + " degrees, until it meets "
            + met
            + " - "
            + (part ? "move " + met + " out of its way, or " : "")
            + "let it reach "
            + units.fine(s.square())
            + " or less from its fold"
            + (part ? "" : ", or open what is in front of it wider");
    Problem p =
        Problem.warns("door-opens-little", name, door.map(Values::path).orElse(""), what)
            .with(Map.of("opens", s.opens(), "reach", s.reach(), "square", s.square()));
    if (door.isEmpty()) {
      return p;
    }
    Values v = door.get();
    double most = v.mm(across(v)) - s.reach() + s.square();
    return p.wanting(Want.atMost(v.path(across(v)), millionth(most)));
  }

  /** Whether a panel is a part that was glued on, which can be moved, and no layer of the card. */
  private boolean isPart(String panel) {
    String piece = panel.substring(0, panel.lastIndexOf('/'));
    return pack.card().piece(piece).scores().isEmpty()
        && pack.card().roots().stream().noneMatch(r -> r.piece().equals(piece));
  }

  /** Two leaves that rub. */
  private Problem binds(Meeting m) {
    List<Values> both = new ArrayList<>();
    for (String door : List.of(m.first(), m.second())) {
      design(name(door)).ifPresent(both::add);
    }
    List<String> advice = new ArrayList<>();
    List<Want> wants = new ArrayList<>();
    both.forEach(v -> narrower(v, m.over(), advice, wants));
    if (both.stream().allMatch(v -> v.given("stock") && v.given("at"))) {
      // Made narrower about its middle, a leaf may lose the card that its strip is glued to.
      advice.clear();
    }
    both.stream().filter(v -> v.given("at")).forEach(v -> farther(v, m.over(), advice, wants));
    String how =
        m.gap() < 0
            ? "shut, they overlap by " + units.fine(-m.gap()) + " and bind"
            : "shut, there are only " + units.fine(m.gap()) + " between them and they bind";
    String message =
        name(m.first())
            + " and "
            + name(m.second())
            + ": "
            + how
            + "; to swing, leaves so thick need "
            + units.fine(Math.max(m.need(), LEAST_TOLD_MM))
            + " - "
            + (advice.isEmpty() ? "make one of them narrower" : String.join(", or ", advice));
    String origin = both.isEmpty() ? "" : both.get(0).path();
    return Problem.warns("leaves-bind", name(m.first()), origin, message)
        .with(Map.of("gap", m.gap(), "need", m.need()))
        .wanting(wants.toArray(Want[]::new));
  }

  /**
   * A leaf is placed by its middle, so what is taken off its size comes off both its edges and
   * frees half as much between the two.
   */
  private void narrower(Values v, double over, List<String> advice, List<Want> wants) {
    double most = millionth(v.mm(across(v)) - 2 * over);
    if (most <= 0) {
      return;
    }
    if (wants.isEmpty()) {
      advice.add(
          "make "
              + v.text("name")
              + " "
              + units.fine(most)
              + (upright(v) ? " wide" : " high")
              + " or less where it stands");
    }
    wants.add(Want.atMost(v.path(across(v)), most));
  }

  /** Moved towards its own hinge. */
  private void farther(Values v, double over, List<String> advice, List<Want> wants) {
    int axis = upright(v) ? 0 : 1;
    boolean less = v.text("hinge").equals("left") || v.text("hinge").equals("bottom");
    double at = v.lengths("at").get(axis).mm();
    String path = v.path("at", axis);
    if (advice.size() < 2) {
      advice.add("move " + v.text("name") + " " + units.fine(over) + " towards its hinge");
    }
    wants.add(less ? Want.atMost(path, at - over) : Want.atLeast(path, at + over));
  }

  /** Nobody cuts finer, mm. */
  private static final double LEAST_TOLD_MM = 0.1;

  private String opens(Swing d) {
    String against = d.against();
    String through =
        d.passes().isEmpty()
            ? ""
            : ", passing through the opening of " + pack.words(last(d.passes()));
    String ajar =
        d.ajar() < AJAR_RAD
            ? " and in a box as deep as the card stays shut"
            : "; in a box as deep as the card it can stand open up to "
                + Math.round(Math.toDegrees(d.ajar()))
                + " degrees";
    return name(d.door())
        + (against == null
            ? " opens all the way"
            : " opens to "
                + Math.round(Math.toDegrees(d.opens()))
                + " degrees, where it meets "
                + pack.words(against))
        + through
        + "; it lies flat closed"
        + ajar
        + ".";
  }

  /** Less than this is shut. */
  private static final double AJAR_RAD = Math.toRadians(1);

  private static String last(List<String> all) {
    return all.get(all.size() - 1);
  }

  private String meets(Meeting m) {
    String swing =
        name(m.first())
            + " and "
            + name(m.second())
            + " meet with "
            + units.fine(Math.max(0, m.gap()))
            + " between them, and both swing";
    return m.laps().isEmpty()
        ? swing + "."
        : swing + "; open " + name(m.laps()) + " first, its tongue laps over the other.";
  }
}
