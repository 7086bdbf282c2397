package hingeleaf.mend;

import hingeleaf.card.Piece;
import hingeleaf.card.Rest;
import hingeleaf.card.Score;
import hingeleaf.design.Values;
import hingeleaf.finding.Problem;
import hingeleaf.fold.accuracy.StageFit;
import hingeleaf.geom.Segment;
import hingeleaf.geom.Vec2;
import hingeleaf.measure.Unit;
import hingeleaf.pack.Pack;
import hingeleaf.pack.Postage;
import hingeleaf.post.PostWords;
import hingeleaf.post.Wrap;
import hingeleaf.sight.Look;
import hingeleaf.sight.Seen;
import hingeleaf.sight.Sight;
import hingeleaf.sight.View;
import hingeleaf.sight.VisiblePolygon;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** Compares the card as it was meant with the card as it becomes. */
final class RescueReport {
  /** A change of what is seen of a part that is told, as a share of the part. */
  private static final double NOTICED = 0.02;

  private static final double EPS = 1e-6;

  /** A design tells lengths to four decimals. */
  private static final double ROUND_MM = 1e-3;

  private final Pack old;
  private final Pack made;
  private final Measures measures;
  private final Resized resized;
  private final Map<String, StageFit> stages = new HashMap<>();

  RescueReport(Pack old, Pack made, Measures measures, Resized resized) {
    this.old = old;
    this.made = made;
    this.measures = measures;
    this.resized = resized;
    StageFit.of(made.made()).forEach(s -> stages.put(s.piece(), s));
  }

  Rescued rescued() {
    List<Rescued.Row> rows = new ArrayList<>();
    for (Piece p : made.card().pieces()) {
      rows.add(row(p));
    }
    return new Rescued(rows, beyond(made, old), beyond(old, made), sight(), post(), bench(), made);
  }

  /** What is found of one pack and not of the other. */
  private static List<Problem> beyond(Pack one, Pack other) {
    Set<String> known = other.problems().stream().map(Rescue::key).collect(Collectors.toSet());
    return one.problems().stream().filter(p -> !known.contains(Rescue.key(p))).toList();
  }

  private Rescued.Row row(Piece of) {
    Sizes sizes = Sizes.of(made, of);
    boolean stays = measures.cut().contains(of.id()) && !resized.recut().containsKey(of.id());
    Piece p = stays && sizes.hung() ? AsCut.of(old, made, of.id()) : of;
    double w = sizes.mm("width", p.width());
    double h = sizes.mm("height", p.height());
    List<Double> scores = new ArrayList<>();
    if (Stack.layer(made, p.id())) {
      boolean upright = Stack.upright(made);
      Layer l = Stack.layer(p, upright);
      w = upright ? l.across() : l.along();
      h = upright ? l.along() : l.across();
      scores.addAll(scores(l));
    } else if (sizes.hung()) {
      scores.addAll(scores(p));
    }
    return new Rescued.Row(p.id(), verdict(of), w, h, p.width(), p.height(), scores, told(of));
  }

  private static List<Double> scores(Layer l) {
    if (l.back()) {
      return List.of();
    }
    double first = l.tabs().get(0);
    double second = first + l.sides().get(0);
    double third = second + l.across();
    return List.of(first, second, third, third + l.sides().get(1));
  }

  /** Scores that all run one way, from the left or lower edge. */
  private static List<Double> scores(Piece p) {
    List<Segment> all = p.scores().stream().map(Score::at).toList();
    boolean level = all.stream().allMatch(s -> Math.abs(s.from().y() - s.to().y()) < EPS);
    boolean upright = all.stream().allMatch(s -> Math.abs(s.from().x() - s.to().x()) < EPS);
    if (!level && !upright) {
      return List.of();
    }
    return all.stream().map(s -> level ? s.from().y() : s.from().x()).sorted().toList();
  }

  /** Why it is cut anew, what is done to it, or how it is glued. */
  private String told(Piece p) {
    String why = resized.recut().get(p.id());
    if (why != null) {
      return why;
    }
    List<String> all = new ArrayList<>();
    if (measures.cut().contains(p.id())) {
      all.addAll(longerSlits(p));
    }
    all.add(moved(p));
    all.add(glue(p.id()));
    return all.stream().filter(s -> !s.isEmpty()).collect(Collectors.joining("; "));
  }

  /** Where a leaf is glued otherwise than designed. */
  private String moved(Piece p) {
    Optional<Vec2> is = fold(made, p);
    Optional<Vec2> was = fold(old, old.card().piece(p.id()));
    if (is.isEmpty() || was.isEmpty() || is.get().distance(was.get()) < EPS) {
      return "";
    }
    Vec2 by = is.get().minus(was.get());
    List<String> ways = new ArrayList<>();
    if (Math.abs(by.x()) > EPS) {
      ways.add(Said.mm(made, Math.abs(by.x())) + (by.x() > 0 ? " to the right" : " to the left"));
    }
    if (Math.abs(by.y()) > EPS) {
      ways.add(Said.mm(made, Math.abs(by.y())) + (by.y() > 0 ? " up" : " down"));
    }
    return "glue it on " + String.join(" and ", ways) + " of where it was";
  }

  /** The middle of a leaf's fold, from the middle of its panel; empty for what is no leaf. */
  private static Optional<Vec2> fold(Pack pack, Piece p) {
    return pack.inputs().design().mechanisms().stream()
        .filter(m -> m.variant().equals("door") && m.form().path().equals(p.origin()))
        .map(m -> fold(m.form()))
        .findFirst();
  }

  private static Vec2 fold(Values door) {
    Vec2 at = new Vec2(door.lengths("at").get(0).mm(), door.lengths("at").get(1).mm());
    double w = door.mm("width") / 2;
    double h = door.mm("height") / 2;
    return switch (door.text("hinge")) {
      case "left" -> at.plus(new Vec2(-w, 0));
      case "right" -> at.plus(new Vec2(w, 0));
      case "top" -> at.plus(new Vec2(0, h));
      default -> at.plus(new Vec2(0, -h));
    };
  }

  private Rescued.Verdict verdict(Piece p) {
    if (resized.recut().containsKey(p.id())) {
      return Rescued.Verdict.RECUT;
    }
    Piece was = old.card().piece(p.id());
    if (!measures.cut().contains(p.id())) {
      return Likeness.same(was, p) ? Rescued.Verdict.AS_DESIGNED : Rescued.Verdict.CUT_OTHERWISE;
    }
    boolean trimmed =
        resized.trimmed().contains(p.id())
            || narrowerTabs(p)
            || smaller(p)
            || !longerSlits(p).isEmpty();
    return trimmed ? Rescued.Verdict.TRIM : Rescued.Verdict.STILL_GOOD;
  }

  /** Whether a part loses of what it measures; a drawing's other side goes with the measured. */
  private boolean smaller(Piece p) {
    Sizes now = Sizes.of(made, p);
    boolean drawn = p.origin().startsWith("cut-outs[");
    return Sizes.of(old, old.card().piece(p.id())).all().stream()
        .filter(o -> !drawn || measures.has(p.id(), o.word()))
        .anyMatch(
            o -> now.mm(o.word(), o.mm()) < measures.size(p.id(), o.word(), o.mm()) - ROUND_MM);
  }

  /** Slits of a cut layer that must be longer for what goes through them. */
  private List<String> longerSlits(Piece p) {
    List<Segment> was = old.card().piece(p.id()).slits();
    boolean doors = Sizes.cutIn(made).stream().anyMatch(v -> Sizes.host(made, v).equals(p.id()));
    if (!Stack.layer(made, p.id()) || doors || was.size() != p.slits().size()) {
      return List.of();
    }
    List<String> all = new ArrayList<>();
    for (int i = 0; i < was.size(); i++) {
      double now = p.slits().get(i).length();
      if (now > was.get(i).length() + EPS) {
        all.add("make its slit " + Said.mm(made, now) + " long");
      }
    }
    return all;
  }

  /** Whether a tab became narrower after all sizes had been fitted. */
  private boolean narrowerTabs(Piece p) {
    List<Double> now = Stack.layer(p, Stack.upright(made)).tabs();
    return resized.layers().stream()
        .filter(l -> l.name().equals(p.id()) && l.tabs().size() == 2 && now.size() == 2)
        .anyMatch(l -> now.get(0) < l.tabs().get(0) - EPS || now.get(1) < l.tabs().get(1) - EPS);
  }

  /** How a frame is glued, where it is not simply on the edge. */
  private String glue(String piece) {
    StageFit s = stages.get(piece);
    if (s == null) {
      return "";
    }
    Layer l =
        Stack.layers(made).stream().filter(x -> x.name().equals(piece)).findFirst().orElseThrow();
    double first = l.setIn().get(0);
    double second = l.setIn().get(1);
    boolean uneven = Math.abs(s.links().first() - s.links().second()) > EPS;
    if (!uneven && Math.abs(first) < EPS && Math.abs(second) < EPS) {
      return "";
    }
    boolean upright = Stack.upright(made);
    String way = s.lean() > 0 ? (upright ? "right" : "top") : (upright ? "left" : "bottom");
    return "glue its "
        + (upright ? "left" : "bottom")
        + " tab "
        + edge(first)
        + ", lay the frame flat "
        + (uneven ? "to the " + way : "either way")
        + " and close its "
        + (upright ? "right" : "top")
        + " tab where it falls, "
        + edge(second);
  }

  private String edge(double in) {
    if (Math.abs(in) < EPS) {
      return "on the edge";
    }
    return Said.mm(made, Math.abs(in)) + (in > 0 ? " inside the edge" : " out over the edge");
  }

  private List<String> sight() {
    Map<String, Double> before = shares(old);
    List<String> all = new ArrayList<>();
    for (Map.Entry<String, Double> e : shares(made).entrySet()) {
      double was = before.getOrDefault(e.getKey(), 0.0);
      double is = e.getValue();
      if (was < NOTICED / 10 && is > NOTICED) {
        all.add(words(e.getKey()) + " now shows");
      } else if (was > NOTICED && is < NOTICED / 10) {
        all.add(words(e.getKey()) + " is now hidden");
      } else if (Math.abs(is - was) > NOTICED) {
        long percent = Math.round(100 * Math.abs(is - was));
        all.add(
            percent + " % " + (is > was ? "more" : "less") + " of " + words(e.getKey()) + " shows");
      }
    }
    return all;
  }

  /** How much of each part is seen, foreshortened: a side seen nearly edge-on is next to none. */
  private static Map<String, Double> shares(Pack pack) {
    Map<String, Double> facing = new HashMap<>();
    View front = Sight.look(pack.scene(), Look.straightOn());
    for (VisiblePolygon p : front.polygons()) {
      facing.merge(p.part(), p.facing(), Math::max);
    }
    Map<String, Double> shares = new LinkedHashMap<>();
    for (Seen s : Seen.of(pack.scene(), front)) {
      shares.put(s.part(), s.share() * facing.getOrDefault(s.part(), 0.0));
    }
    return shares;
  }

  private String words(String part) {
    return part.contains("/") ? made.words(part) : "\"" + part + "\"";
  }

  private List<String> post() {
    List<String> all = new ArrayList<>();
    Optional<Rest> before = best(old);
    Optional<Rest> after = best(made);
    if (before.isPresent() && after.isPresent()) {
      tell(all, "folded flat", flat(before.get()), flat(after.get()));
      tell(
          all,
          "thickest spot",
          Said.mm(made, before.get().rigid()),
          Said.mm(made, after.get().rigid()));
    } else if (before.isPresent() != after.isPresent()) {
      all.add(after.isPresent() ? "it now lies flat" : "it no longer lies flat");
    }
    List<Postage.Offer> offers = made.posting().offers();
    for (int i = 0; i < offers.size() && i < old.posting().offers().size(); i++) {
      Postage.Offer was = old.posting().offers().get(i);
      tell(all, "post", taken(was), taken(offers.get(i)));
      tell(all, "envelope", wrap(was), wrap(offers.get(i)));
    }
    return all.stream().distinct().toList();
  }

  private static void tell(List<String> all, String what, String was, String is) {
    if (!was.equals(is)) {
      all.add(what + ": " + is + " instead of " + was);
    }
  }

  private static Optional<Rest> best(Pack pack) {
    return pack.best() < 0 ? Optional.empty() : Optional.of(pack.flats().states().get(pack.best()));
  }

  private String flat(Rest r) {
    return Said.size(made, r.width(), r.height());
  }

  private String taken(Postage.Offer offer) {
    boolean inches = made.inputs().wants().units().unit() == Unit.IN;
    return new PostWords(inches).taken(offer.best().decision());
  }

  private String wrap(Postage.Offer offer) {
    Wrap wrap = offer.best().wrap();
    if (wrap instanceof Wrap.Bought b) {
      return b.envelope().name();
    } else if (wrap instanceof Wrap.Made m) {
      return "one of your own, " + Said.size(made, m.envelope().width(), m.envelope().height());
    }
    return "none";
  }

  private List<String> bench() {
    BenchWords words = new BenchWords(made.inputs().design().unit());
    List<String> all = new ArrayList<>();
    new TreeMap<>(measures.papers())
        .forEach((name, mm) -> all.add("thickness " + words.told(mm) + " at the stock " + name));
    new TreeMap<>(measures.dies())
        .forEach(
            (name, d) ->
                all.add("cut " + Said.size(made, d.width(), d.height()) + " at the die " + name));
    return all;
  }
}
