package hingeleaf.mend;

import hingeleaf.card.Piece;
import hingeleaf.card.Rest;
import hingeleaf.finding.Problem;
import hingeleaf.fold.accuracy.StageFit;
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
import java.util.stream.Collectors;

/** Compares the card as it was meant with the card as it becomes. */
final class RescueReport {
  /** A change of what is seen of a part that is told, as a share of the part. */
  private static final double NOTICED = 0.02;

  private static final double EPS = 1e-6;

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

  private Rescued.Row row(Piece p) {
    boolean upright = Stack.upright(made);
    boolean stacked = Stack.layer(made, p.id());
    Layer l = Stack.layer(p, upright);
    double w = stacked && upright ? l.across() : stacked ? l.along() : p.width();
    double h = stacked && upright ? l.along() : stacked ? l.across() : p.height();
    List<Double> scores = new ArrayList<>();
    if (stacked && !l.back()) {
      double first = l.tabs().get(0);
      double second = first + l.sides().get(0);
      double third = second + l.across();
      scores.addAll(List.of(first, second, third, third + l.sides().get(1)));
    }
    return new Rescued.Row(p.id(), verdict(p), w, h, p.width(), p.height(), scores, told(p.id()));
  }

  /** Why it is cut anew, or how it is glued. */
  private String told(String piece) {
    String why = resized.recut().get(piece);
    return why == null ? glue(piece) : why;
  }

  private Rescued.Verdict verdict(Piece p) {
    if (resized.recut().containsKey(p.id())) {
      return Rescued.Verdict.RECUT;
    }
    Piece was = old.card().piece(p.id());
    if (measures.cut().contains(p.id())) {
      boolean trimmed =
          resized.trimmed().contains(p.id())
              || narrowerTabs(p)
              || p.width() < measured(was, "width", was.width()) - EPS && flat(p)
              || p.height() < measured(was, "height", was.height()) - EPS && flat(p);
      return trimmed ? Rescued.Verdict.TRIM : Rescued.Verdict.STILL_GOOD;
    }
    return same(was, p) ? Rescued.Verdict.AS_DESIGNED : Rescued.Verdict.CUT_OTHERWISE;
  }

  /** Whether a tab became narrower after all sizes had been fitted. */
  private boolean narrowerTabs(Piece p) {
    List<Double> now = Stack.layer(p, Stack.upright(made)).tabs();
    return resized.layers().stream()
        .filter(l -> l.name().equals(p.id()) && l.tabs().size() == 2 && now.size() == 2)
        .anyMatch(l -> now.get(0) < l.tabs().get(0) - EPS || now.get(1) < l.tabs().get(1) - EPS);
  }

  private boolean flat(Piece p) {
    return !Stack.layer(made, p.id());
  }

  private double measured(Piece was, String word, double otherwise) {
    return measures.size(was.id(), word, otherwise);
  }

  private static boolean same(Piece a, Piece b) {
    return a.shape().equals(b.shape()) && a.scores().equals(b.scores());
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
    List<String> all = new ArrayList<>();
    measures
        .papers()
        .forEach(
            (name, mm) ->
                all.add("write thickness " + Said.mm(made, mm) + " at the stock " + name));
    measures
        .dies()
        .forEach(
            (name, d) ->
                all.add(
                    "write cut " + Said.size(made, d.width(), d.height()) + " at the die " + name));
    return all;
  }
}
