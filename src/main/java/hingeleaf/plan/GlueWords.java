package hingeleaf.plan;

import hingeleaf.card.Card;
import hingeleaf.card.Face;
import hingeleaf.card.Join;
import hingeleaf.card.Piece;
import hingeleaf.geom.Box;
import hingeleaf.geom.Ring;
import hingeleaf.measure.MakerUnits;
import hingeleaf.measure.Unit;
import hingeleaf.stock.Bench;
import hingeleaf.stock.Glue;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** The sentences of the steps that put pieces together. */
final class GlueWords {
  private final Card card;
  private final Bench bench;
  private final Foams foams;
  private final MakerUnits units;
  private final PanelBoxes panels = new PanelBoxes();

  GlueWords(Card card, Bench bench, Foams foams, MakerUnits units) {
    this.card = card;
    this.bench = bench;
    this.foams = foams;
    this.units = units;
  }

  /**
   * Fixes flat parts on one face of one panel.
   *
   * @param glues at least one, all on that panel and face
   */
  Step fix(List<Join.Glue> glues) {
    Join.Glue first = glues.get(0);
    Piece base = card.piece(first.b().piece());
    Set<String> hows = new LinkedHashSet<>();
    Set<String> tools = new LinkedHashSet<>();
    double hands = 0;
    double dries = 0;
    for (Join.Glue g : glues) {
      Piece part = card.piece(g.a().piece());
      hows.add(how(g));
      tools.add(tool(g));
      boolean quick = g.raisedBy() > 0 || part.stock().clear();
      hands += quick ? 2 : 1 + glue(g).holdMinutes();
      dries = Math.max(dries, quick ? 0 : glue(g).dryMinutes());
    }
    boolean alike = glues.size() > 1 && hows.size() == 1;
    return Step.loose(
        kind(glues),
        glues.stream().map(g -> g.a().piece()).toList(),
        glues.stream().map(Join.Glue::id).toList(),
        "Fix "
            + Says.quoted(glues.stream().map(g -> g.a().piece()).toList(), "parts")
            + " on "
            + Says.called(base),
        (first.b().face() == Face.FRONT
                ? "On the good face of " + Says.called(base)
                : "Turn " + Says.called(base) + " over left to right and work on its plain back")
            + ". Measure from the edges of its panel, or mark through the gluing mask."
            + (alike ? " For each: " + hows.iterator().next() + "." : ""),
        glues.stream().map(g -> placing(g, alike)).toList(),
        window(glues) ? checkWindow(first) : checkPlace(first),
        List.copyOf(tools),
        hands,
        dries);
  }

  /** What holds a part, and how high it then stands. */
  private String how(Join.Glue g) {
    Piece part = card.piece(g.a().piece());
    String stands =
        g.raisedBy() > 0 ? "; it then stands " + units.fine(height(g, part)) + " high" : "";
    return with(g, part) + stands;
  }

  private String placing(Join.Glue g, boolean toldForAll) {
    String part = Says.called(card.piece(g.a().piece())) + ": ";
    String set = Says.place(spot(g), units);
    return toldForAll
        ? part + set + "."
        : part + how(g) + ". Set it " + set + " of " + Says.called(card.piece(g.b().piece())) + ".";
  }

  private String checkPlace(Join.Glue g) {
    var spot = spot(g);
    return Says.called(card.piece(g.a().piece()))
        + " is straight: "
        + units.rounded(Math.abs(spot.minY()))
        + (spot.minY() < -1e-9 ? " past" : " from")
        + " the lower edge at both its ends.";
  }

  /** How far a window laps its opening where it laps it least. */
  private String checkWindow(Join.Glue g) {
    Box outer = g.a().area().box();
    double lap = Double.POSITIVE_INFINITY;
    for (Ring hole : g.a().area().holes()) {
      Box o = hole.box();
      double across = Math.min(o.minX() - outer.minX(), outer.maxX() - o.maxX());
      lap =
          Math.min(
              lap, Math.min(across, Math.min(o.minY() - outer.minY(), outer.maxY() - o.maxY())));
    }
    return "no edge of the window touches a score"
        + (Double.isFinite(lap)
            ? ", and it laps its opening by " + Says.near(lap, units) + " or more all round."
            : ".");
  }

  private Step.Kind kind(List<Join.Glue> glues) {
    if (window(glues)) {
      return Step.Kind.WINDOW;
    }
    return glues.stream().anyMatch(g -> g.raisedBy() > 0) ? Step.Kind.CUT_OUT : Step.Kind.MAT;
  }

  private boolean window(List<Join.Glue> glues) {
    return card.piece(glues.get(0).a().piece()).stock().clear();
  }

  private String with(Join.Glue g, Piece part) {
    if (g.raisedBy() > 0) {
      return foam(foams.under(g));
    }
    Glue glue = glue(g);
    if (part.stock().clear()) {
      String tape = glue.kind() == Glue.Kind.TAPE ? glue.title() : "double-sided tape";
      return tape + " round its edge, clear of opening and folds";
    }
    if (glue.kind() == Glue.Kind.TAPE) {
      return glue.title()
          + " once round the edge of its "
          + Says.face(g.a())
          + ", "
          + Says.near(2, units)
          + " inside, pressed down";
    }
    return glue.title()
        + " thinly on its "
        + Says.face(g.a())
        + ", "
        + Says.near(2, units)
        + " inside the edge, pressed for "
        + Says.minutes(glue.holdMinutes());
  }

  /** How a part is raised, by what the bench has. */
  private String foam(FoamPads pads) {
    String what =
        pads.foam()
            .map(f -> (pads.layers() == 2 ? "two layers of " : "") + f.title())
            .orElse("foam or card scraps " + units.fine(pads.thickness()) + " thick");
    String inside = Says.near(FoamPads.INSIDE_MM, units) + " inside its edge";
    if (!pads.strips()) {
      return what
          + " on its back, "
          + (pads.pads().size() == 1 ? "one pad" : pads.pads().size() + " pads")
          + " cut to its shape"
          + (pads.inside() > 0 ? ", " + inside : ", for it is narrow, up to its edge");
    }
    return what
        + " on its back in "
        + Says.count(pads.pads().size(), "strip")
        + " "
        + Says.near(pads.width(), units)
        + " wide, "
        + tape(pads.length())
        + " of tape in all, "
        + inside;
  }

  /** A length to cut off a roll: rounded up, for nobody measures it finely. */
  private String tape(double mm) {
    double step = units.unit() == Unit.IN ? 25.4 / 4 : 5;
    return units.text(Math.ceil(mm / step) * step);
  }

  private static double height(Join.Glue g, Piece part) {
    return g.raisedBy() + part.thickness(g.a().panel());
  }

  private String tool(Join.Glue g) {
    return g.raisedBy() > 0 ? "foam" : glue(g).title();
  }

  /** The first tab, in register; the layer still stands open. */
  Step firstTab(Join.Glue g) {
    Piece p = card.piece(g.a().piece());
    Piece behind = card.piece(g.b().piece());
    Glue glue = glue(g);
    return Step.loose(
        Step.Kind.GLUE_TAB,
        List.of(p.id()),
        List.of(g.id()),
        "Glue the "
            + Says.spoken(g.a().panel())
            + " of "
            + Says.called(p)
            + " to "
            + Says.called(behind),
        onTab(g)
            + " Set the fold of the tab exactly along the "
            + edge(g, behind)
            + " of "
            + Says.called(behind)
            + ", its good face towards you, level at both ends, and press for "
            + Says.minutes(glue.holdMinutes())
            + ". Go straight on with the next step.",
        List.of(),
        "the fold lies on the edge over its whole "
            + units.text(longSide(g))
            + " and stands out nowhere.",
        List.of(glue.title()),
        1 + glue.holdMinutes(),
        0);
  }

  /**
   * A leaf or a stay that hangs on its one strip.
   *
   * @param stay whether it is a stay, whose fold lies along an edge and works both ways
   */
  Step hang(Join.Glue g, boolean stay) {
    Piece p = card.piece(g.a().piece());
    Piece behind = card.piece(g.b().piece());
    Glue glue = glue(g);
    String where =
        stay
            ? "Set its fold along the " + edge(g, behind) + " of " + Says.called(behind)
            : "Set it " + Says.place(spot(g), units) + " of " + Says.called(behind);
    String dry =
        glue.dryMinutes() > 0
            ? " Plain paper under what must stay free, then "
                + Says.minutes(glue.dryMinutes())
                + " under a weight."
            : "";
    return Step.loose(
        Step.Kind.GLUE_TAB,
        List.of(p.id()),
        List.of(g.id()),
        "Hang " + Says.called(p) + " on " + Says.called(behind),
        (g.b().face() == Face.FRONT ? "" : "Turn the card so far over. ")
            + onTab(g)
            + " "
            + where
            + (g.b().face() == Face.FRONT ? "" : ", on its plain back")
            + ", and press the tab for "
            + Says.minutes(glue.holdMinutes())
            + "."
            + dry,
        List.of(),
        stay
            ? "it swings about its fold both ways; crease it back as well."
            : "its tab lies level over its whole "
                + units.text(longSide(g))
                + "; the leaf opens and shuts and rubs on nothing.",
        List.of(glue.title()),
        1 + glue.holdMinutes(),
        glue.dryMinutes());
  }

  /** What is put on a tab, and how wide: a tape leaves the folds free. */
  private String onTab(Join.Glue g) {
    Glue glue = glue(g);
    double tab = Says.shortSide(g.a());
    String where =
        "the "
            + Says.face(g.a())
            + " of the "
            + Says.spoken(g.a().panel())
            + " ("
            + units.text(tab)
            + " wide)";
    if (glue.kind() == Glue.Kind.TAPE) {
      return "Put " + tape(glue, tab) + " along the middle of " + where + " and peel it.";
    }
    return "Spread "
        + glue.title()
        + " thinly on "
        + where
        + ", "
        + Says.near(1, units)
        + " short of its fold and edge.";
  }

  private String tape(Glue glue, double tab) {
    if (Tapes.fits(glue, tab)) {
      return glue.title();
    }
    return Tapes.onTab(bench, tab)
        .map(Glue::title)
        .orElse(glue.title() + " cut down to " + units.text(tab - Tapes.CLEAR_OF_TAB_MM) + " wide");
  }

  /**
   * A further tab, closed in the flat pose, where it falls.
   *
   * @param toldBefore whether an earlier step said why
   */
  Step closeFlat(Join.Glue g, List<Join.Glue> raisedBehind, boolean toldBefore) {
    Piece p = card.piece(g.a().piece());
    Piece behind = card.piece(g.b().piece());
    Glue glue = glue(g);
    boolean wet = glue.dryMinutes() > 0;
    List<String> lines =
        List.of(
            onTab(g),
            closing(g, toldBefore),
            pressed(glue, toldBefore) + packers(raisedBehind) + ".");
    return Step.loose(
        Step.Kind.CLOSE_FLAT,
        List.of(p.id()),
        List.of(g.id()),
        "Close " + Says.called(p) + " flat on its " + Says.spoken(g.a().panel()),
        toldBefore ? "" : "The second tab is never pressed standing, over empty air.",
        lines,
        "pulled up, "
            + Says.called(p)
            + " stands "
            + units.text(depth(g))
            + " off "
            + Says.called(behind)
            + "; pushed over it lies flat both ways.",
        wet ? List.of(glue.title(), "plain paper", "weight") : List.of(glue.title(), "bone folder"),
        1 + glue.holdMinutes(),
        glue.dryMinutes());
  }

  private String closing(Join.Glue g, boolean toldBefore) {
    String part = Says.called(card.piece(g.a().piece()));
    Piece behind = card.piece(g.b().piece());
    String over = " over onto " + Says.called(behind);
    String press =
        "press along the " + edge(g, behind) + " for " + Says.minutes(glue(g).holdMinutes()) + ".";
    return toldBefore
        ? "Swing " + part + over + ", flat; the tab stays where it falls. P" + press.substring(1)
        : "Lay the card so far flat and swing "
            + part
            + over
            + ", as one closes a book; "
            + press
            + " Do not pull the tab to the edge: it is glued where it falls.";
  }

  private static String pressed(Glue glue, boolean toldBefore) {
    if (glue.dryMinutes() == 0) {
      return "Rub it down with the bone folder";
    }
    return "Plain paper between the layers"
        + (toldBefore ? "" : " against oozing glue")
        + ", then "
        + Says.minutes(glue.dryMinutes())
        + " flat under a weight";
  }

  private String packers(List<Join.Glue> raised) {
    Optional<Join.Glue> most =
        raised.stream().max(Comparator.comparingDouble(g -> height(g, card.piece(g.a().piece()))));
    return most.map(
            g -> {
              Piece part = card.piece(g.a().piece());
              return ", with scrap card "
                  + units.fine(height(g, part))
                  + " deep beside "
                  + Says.called(part)
                  + " so that it is not crushed";
            })
        .orElse("");
  }

  private Box spot(Join.Glue g) {
    return Says.spot(card, g, panels.box(card.piece(g.b().piece()), g.b().panel()));
  }

  private String edge(Join.Glue g, Piece behind) {
    return Says.edge(g, panels.box(behind, g.b().panel()));
  }

  /** How deep each stage is. */
  List<Double> depths() {
    return Depths.of(card, panels);
  }

  /** How deep the side at a tab is: from the tab's fold to the next one. */
  private double depth(Join.Glue g) {
    Piece p = card.piece(g.a().piece());
    String end = g.a().panel().substring(g.a().panel().indexOf('-') + 1);
    if (p.labels().stream().noneMatch(l -> l.name().equals("side-" + end))) {
      return 0;
    }
    Box side = panels.box(p, "side-" + end);
    return Math.min(side.width(), side.height());
  }

  private static double longSide(Join.Glue g) {
    var b = g.a().area().box();
    return Math.max(b.width(), b.height());
  }

  Step slide(Join.Slide s) {
    return moving(
        s.id(),
        s.strip().piece(),
        "Slip " + Says.called(card.piece(s.strip().piece())) + " into its guide",
        "Put it into the guide on "
            + Says.called(card.piece(s.guide().piece()))
            + " without glue; it slides "
            + units.text(s.to() - s.from())
            + ".");
  }

  Step pin(Join.Pin p) {
    return moving(
        p.id(),
        p.wheel().piece(),
        "Pin " + Says.called(card.piece(p.wheel().piece())),
        "Pin it loosely on "
            + Says.called(card.piece(p.seat().piece()))
            + "; it turns "
            + Math.round(Math.toDegrees(p.to() - p.from()))
            + " degrees.");
  }

  private static Step moving(String id, String piece, String title, String text) {
    return Step.loose(
        Step.Kind.MOVING,
        List.of(piece),
        List.of(id),
        title,
        text,
        List.of(),
        "it moves its whole way and does not catch: try it 5 times.",
        List.of(),
        3,
        0);
  }

  /**
   * The last drying and the trial.
   *
   * @param fresh joins that may still be damp inside
   */
  Step check(List<Join.Glue> fresh, double deep, List<Double> sides) {
    double dries =
        fresh.stream()
            .filter(g -> g.raisedBy() == 0 && !card.piece(g.a().piece()).stock().clear())
            .mapToDouble(g -> glue(g).dryMinutes())
            .max()
            .orElse(0);
    List<String> lines = new ArrayList<>();
    if (dries > 0) {
      lines.add(
          "Fold the card flat, plain paper between the layers, and leave it under a weight for "
              + Says.minutes(2 * dries)
              + " more.");
    }
    if (!sides.isEmpty()) {
      double least = sides.stream().mapToDouble(d -> d).min().orElse(0);
      lines.add(
          "Never weigh it down standing, unless packers as deep as the side ("
              + units.text(least)
              + (sides.stream().distinct().count() > 1 ? " and up" : "")
              + ") fill every stage.");
    }
    lines.add(
        "Stand it up, look at it straight on and from the side, fold it flat and back 3 times.");
    return Step.loose(
        Step.Kind.CHECK,
        List.of(),
        List.of(),
        dries > 0 ? "Let it dry, then try it" : "Try it",
        "The card is whole now.",
        lines,
        sides.isEmpty()
            ? "it folds without force and nothing sticks out."
            : "standing, it is about "
                + units.rounded(deep)
                + " deep; it folds without force and nothing sticks out of it flat.",
        dries > 0 ? List.of("weight", "plain paper") : List.of(),
        3,
        2 * dries);
  }

  private Glue glue(Join.Glue g) {
    return bench
        .glue(g.glue())
        .orElseThrow(() -> new IllegalArgumentException("the bench has no glue " + g.glue()));
  }
}
