package hingeleaf.paper.json;

import hingeleaf.card.Flats;
import hingeleaf.card.Misfit;
import hingeleaf.card.Piece;
import hingeleaf.card.Rest;
import hingeleaf.card.Score;
import hingeleaf.finding.Problem;
import hingeleaf.finding.Want;
import hingeleaf.fold.accuracy.CuttingReport;
import hingeleaf.fold.contact.Touch;
import hingeleaf.fold.contact.Way;
import hingeleaf.fold.stand.Stand;
import hingeleaf.geom.Ring;
import hingeleaf.geom.Segment;
import hingeleaf.geom.Vec2;
import hingeleaf.pack.GoodToKnow;
import hingeleaf.pack.Pack;
import hingeleaf.pack.Postage;
import hingeleaf.plan.CutList;
import hingeleaf.plan.Step;
import hingeleaf.plan.WorkPlan;
import java.io.StringWriter;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Locale;
import java.util.TreeMap;
import java.util.function.Consumer;
import tools.jackson.core.JsonGenerator;
import tools.jackson.core.ObjectWriteContext;
import tools.jackson.core.json.JsonFactory;

/** Writes pack.json and the shorter answers of single commands. */
public final class PackJson {
  private static final JsonFactory FACTORY = new JsonFactory();

  private final JsonGenerator g;

  private PackJson(JsonGenerator g) {
    this.g = g;
  }

  private static String write(Consumer<PackJson> what) {
    StringWriter text = new StringWriter();
    try (JsonGenerator g = FACTORY.createGenerator(ObjectWriteContext.empty(), text)) {
      what.accept(new PackJson(g));
    }
    return text.append('\n').toString();
  }

  /** The whole pack. */
  public static String text(Pack pack) {
    return write(j -> j.pack(pack));
  }

  /** {@code {"problems":[...]}}. */
  public static String problems(List<Problem> problems) {
    return write(
        j -> {
          j.g.writeStartObject();
          j.problemList(problems);
          j.g.writeEndObject();
        });
  }

  /** {@code {"unit":"mm","flat":{...}}}. */
  public static String flats(Flats flats) {
    return write(
        j -> {
          j.g.writeStartObject();
          j.g.writeStringProperty("unit", "mm");
          j.flat(flats, flats.states().isEmpty() ? -1 : 0, Flats.ORDER);
          j.g.writeEndObject();
        });
  }

  /** {@code {"unit":"mm","posting":[...],"problems":[...]}}. */
  public static String post(Pack pack) {
    return write(
        j -> {
          j.g.writeStartObject();
          j.g.writeStringProperty("unit", "mm");
          new PostJson(j.g, pack).write(pack);
          j.problemList(
              pack.problems().stream().filter(p -> p.kind().startsWith("post-")).toList());
          j.g.writeEndObject();
        });
  }

  /** {@code {"price":{...},"problems":[...]}}. */
  public static String price(Pack pack) {
    return write(
        j -> {
          j.g.writeStartObject();
          new PriceJson(j.g).write(pack);
          j.problemList(pack.price().problems());
          j.g.writeEndObject();
        });
  }

  private void pack(Pack pack) {
    g.writeStartObject();
    g.writeNumberProperty("pack", 1);
    g.writeStringProperty("title", pack.title());
    g.writeStringProperty("unit", "mm");
    g.writeArrayPropertyStart("pieces");
    for (CutList.Line line : pack.cuts().lines()) {
      piece(line);
    }
    g.writeEndArray();
    mass(pack);
    flat(pack.flats(), pack.best(), Postage.ORDER);
    steps(pack.work());
    new PostJson(g, pack).write(pack);
    pack.touches().ifPresent(this::way);
    cutting(pack.cutting());
    stand(pack.stand());
    new MovingJson(g, pack).write();
    g.writeArrayPropertyStart("misfits");
    for (Misfit m : pack.made().misfits()) {
      g.writeStartObject();
      g.writeStringProperty("glue", m.glue());
      number("gap", m.gap());
      number("angle", m.angle());
      g.writeEndObject();
    }
    g.writeEndArray();
    texts("goodToKnow", GoodToKnow.of(pack));
    problemList(pack.problems());
    g.writeEndObject();
  }

  private void piece(CutList.Line line) {
    Piece p = line.piece();
    g.writeStartObject();
    g.writeStringProperty("id", p.id());
    g.writeStringProperty("name", line.names());
    g.writeNumberProperty("quantity", line.quantity());
    texts("ids", line.pieces());
    g.writeStringProperty("stock", p.stock().name());
    number("width", p.width());
    number("height", p.height());
    g.writeStringProperty("grain", p.grain().name().toLowerCase(Locale.ROOT));
    p.embossing()
        .ifPresent(
            e -> {
              g.writeObjectPropertyStart("embossing");
              g.writeStringProperty("folder", e.folder().name());
              number("blankWidth", line.blankWidth());
              number("blankHeight", line.blankHeight());
              g.writeEndObject();
            });
    g.writeName("outline");
    ring(p.shape().outer());
    g.writeArrayPropertyStart("apertures");
    p.apertures().forEach(this::ring);
    g.writeEndArray();
    g.writeArrayPropertyStart("scores");
    p.scores().forEach(this::score);
    g.writeEndArray();
    g.writeArrayPropertyStart("slits");
    for (Segment s : p.slits()) {
      g.writeStartObject();
      ends(s);
      g.writeEndObject();
    }
    g.writeEndArray();
    g.writeEndObject();
  }

  private void score(Score s) {
    Segment at = s.at();
    g.writeStartObject();
    g.writeStringProperty("name", s.name());
    ends(at);
    if (Math.abs(at.from().x() - at.to().x()) < 1e-9) {
      g.writeStringProperty("axis", "x");
      number("at", at.from().x());
    } else if (Math.abs(at.from().y() - at.to().y()) < 1e-9) {
      g.writeStringProperty("axis", "y");
      number("at", at.from().y());
    }
    g.writeStringProperty("fold", s.mountain() ? "mountain" : "valley");
    number("angle", Math.abs(s.made()));
    g.writeEndObject();
  }

  private void ends(Segment s) {
    g.writeName("from");
    point(s.from());
    g.writeName("to");
    point(s.to());
  }

  private void ring(Ring ring) {
    g.writeStartArray();
    ring.points().forEach(this::point);
    g.writeEndArray();
  }

  private void point(Vec2 p) {
    g.writeStartArray();
    number(p.x());
    number(p.y());
    g.writeEndArray();
  }

  private void mass(Pack pack) {
    g.writeObjectPropertyStart("mass");
    PostJson.parts(g, pack.posting().first().mass());
    g.writeObjectPropertyStart("perPiece");
    for (Piece p : pack.card().pieces()) {
      number(p.id(), p.mass());
    }
    g.writeEndObject();
    g.writeEndObject();
  }

  private void steps(WorkPlan work) {
    g.writeArrayPropertyStart("steps");
    for (Step s : work.steps()) {
      g.writeStartObject();
      g.writeNumberProperty("number", s.number());
      g.writeStringProperty("kind", s.kind().name().toLowerCase(Locale.ROOT).replace('_', '-'));
      g.writeStringProperty("title", s.title());
      g.writeStringProperty("text", s.whole());
      texts("pieces", s.pieces());
      texts("joins", s.joins());
      number("hands", s.hands());
      number("dries", s.dries());
      g.writeArrayPropertyStart("after");
      s.after().forEach(g::writeNumber);
      g.writeEndArray();
      g.writeEndObject();
    }
    g.writeEndArray();
  }

  private void flat(Flats flats, int best, String bestBy) {
    g.writeObjectPropertyStart("flat");
    g.writeBooleanProperty("complete", flats.complete());
    g.writeNumberProperty("count", flats.count());
    g.writeStringProperty("order", Flats.ORDER);
    if (best < 0) {
      g.writeNullProperty("best");
    } else {
      g.writeNumberProperty("best", best);
    }
    g.writeStringProperty("bestBy", bestBy);
    g.writeArrayPropertyStart("states");
    flats.states().forEach(this::rest);
    g.writeEndArray();
    g.writeEndObject();
  }

  private void rest(Rest r) {
    g.writeStartObject();
    if (!r.leans().isEmpty()) {
      g.writeArrayPropertyStart("leans");
      r.leans().forEach(g::writeNumber);
      g.writeEndArray();
    }
    number("width", r.width());
    number("height", r.height());
    number("limp", r.limp());
    number("rigid", r.rigid());
    g.writeStringProperty("heldBy", r.heldBy());
    g.writeEndObject();
  }

  private void way(Way way) {
    g.writeObjectPropertyStart("way");
    g.writeStringProperty("order", way.order().name().toLowerCase(Locale.ROOT).replace('_', '-'));
    g.writeBooleanProperty("free", !way.blocked());
    g.writeArrayPropertyStart("touches");
    for (Touch t : way.touches()) {
      g.writeStartObject();
      g.writeStringProperty("kind", t.kind().name().toLowerCase(Locale.ROOT).replace('_', '-'));
      g.writeStringProperty("part", t.part());
      g.writeStringProperty("against", t.against());
      number("share", t.share());
      number("height", t.height());
      number("over", t.over());
      g.writeEndObject();
    }
    g.writeEndArray();
    g.writeEndObject();
  }

  private void cutting(CuttingReport r) {
    g.writeObjectPropertyStart("cutting");
    number("accuracy", r.accuracy());
    g.writeNumberProperty("trials", r.trials());
    g.writeNumberProperty("seed", r.seed());
    share("gluedStanding", r.standing());
    share("gluedFlat", r.flat());
    share("landsOnEdge", r.lands());
    number("shift", r.shift());
    g.writeStringProperty("watch", r.watch());
    g.writeArrayPropertyStart("stages");
    for (CuttingReport.Part p : r.parts()) {
      g.writeStartObject();
      g.writeStringProperty("piece", p.piece());
      number("misfit", p.misfit());
      number("jam", p.jam());
      number("worstMisfit", p.worstMisfit());
      number("worstJam", p.worstJam());
      number("tilt", p.tilt());
      number("thickness", p.thickness());
      g.writeObjectPropertyStart("effects");
      p.effects().forEach(e -> number(e.fold(), e.perMm()));
      g.writeEndObject();
      g.writeEndObject();
    }
    g.writeEndArray();
    g.writeEndObject();
  }

  private void share(String name, CuttingReport.Share s) {
    g.writeObjectPropertyStart(name);
    number("share", s.share());
    number("least", s.least());
    number("most", s.most());
    g.writeEndObject();
  }

  private void stand(Stand s) {
    g.writeObjectPropertyStart("stand");
    g.writeStringProperty("verdict", s.verdict().name().toLowerCase(Locale.ROOT));
    number("height", s.height());
    number("front", s.front());
    number("back", s.back());
    number("forwards", s.forwards());
    number("backwards", s.backwards());
    texts("loose", s.loose().stream().map(Stand.Lean::piece).toList());
    g.writeEndObject();
  }

  private void problemList(List<Problem> problems) {
    g.writeArrayPropertyStart("problems");
    for (Problem p : problems) {
      problem(p);
    }
    g.writeEndArray();
  }

  private void problem(Problem p) {
    g.writeStartObject();
    g.writeStringProperty("kind", p.kind());
    g.writeStringProperty("level", p.level().name().toLowerCase(Locale.ROOT));
    g.writeStringProperty("part", p.part());
    g.writeStringProperty("origin", p.origin());
    if (p.place() != null) {
      g.writeStringProperty("source", p.place().source());
      g.writeNumberProperty("line", p.place().line());
      g.writeNumberProperty("column", p.place().column());
    }
    g.writeStringProperty("message", p.message());
    g.writeObjectPropertyStart("numbers");
    new TreeMap<>(p.numbers()).forEach(this::number);
    g.writeEndObject();
    g.writeArrayPropertyStart("wants");
    for (Want w : p.wants()) {
      g.writeStartObject();
      g.writeStringProperty("parameter", w.parameter());
      if (Double.isFinite(w.least())) {
        number("least", w.least());
      }
      if (Double.isFinite(w.most())) {
        number("most", w.most());
      }
      g.writeEndObject();
    }
    g.writeEndArray();
    g.writeEndObject();
  }

  private void texts(String name, List<String> all) {
    g.writeArrayPropertyStart(name);
    all.forEach(g::writeString);
    g.writeEndArray();
  }

  private void number(String name, double value) {
    number(g, name, value);
  }

  private void number(double value) {
    g.writeNumber(rounded(value));
  }

  /** A named number, to a millionth. */
  static void number(JsonGenerator g, String name, double value) {
    g.writeName(name);
    g.writeNumber(rounded(value));
  }

  /** A millionth is far below anything that can be cut, and above the last bits of rounding. */
  private static BigDecimal rounded(double value) {
    BigDecimal rounded = BigDecimal.valueOf(value).setScale(6, RoundingMode.HALF_EVEN);
    return rounded.signum() == 0
        ? BigDecimal.ZERO
        : new BigDecimal(rounded.stripTrailingZeros().toPlainString());
  }
}
