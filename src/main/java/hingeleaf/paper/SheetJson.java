package hingeleaf.paper;

import hingeleaf.sheet.Cut;
import hingeleaf.sheet.JobUnit;
import hingeleaf.sheet.PlacedPiece;
import hingeleaf.sheet.PlannedSheet;
import hingeleaf.sheet.Scrap;
import hingeleaf.sheet.SheetJob;
import hingeleaf.sheet.SheetPlan;
import java.io.StringWriter;
import java.math.BigDecimal;
import tools.jackson.core.JsonGenerator;
import tools.jackson.core.ObjectWriteContext;
import tools.jackson.core.json.JsonFactory;

/** A sheet plan as JSON, lengths in the job's unit. */
public final class SheetJson {
  private final SheetJob job;
  private final JsonGenerator out;

  private SheetJson(SheetJob job, JsonGenerator out) {
    this.job = job;
    this.out = out;
  }

  /**
   * The plan as one line of JSON.
   *
   * @param seconds how long planning took, to a thousandth
   */
  public static String write(SheetJob job, SheetPlan plan, double seconds) {
    StringWriter text = new StringWriter();
    JsonFactory factory = new JsonFactory();
    try (JsonGenerator out = factory.createGenerator(ObjectWriteContext.empty(), text)) {
      new SheetJson(job, out).plan(plan, seconds);
    }
    return text.toString();
  }

  /** Millionths as a decimal without needless zeros. */
  public static BigDecimal money(long millionths) {
    BigDecimal value = BigDecimal.valueOf(millionths, 6).stripTrailingZeros();
    return value.scale() < 0 ? value.setScale(0) : value;
  }

  private void plan(SheetPlan plan, double seconds) {
    JobUnit unit = job.unit();
    out.writeStartObject();
    out.writeStringProperty("unit", unit.label());
    out.writeNumberProperty("cost", money(plan.cost()));
    out.writeNumberProperty("lower_bound", money(plan.lowerBound()));
    out.writeStringProperty("bound", plan.bound());
    out.writeBooleanProperty("proven_optimal", plan.provenOptimal());
    out.writeArrayPropertyStart("sheets");
    plan.sheets().forEach(this::sheet);
    out.writeEndArray();
    out.writeNumberProperty("trimmer_settings", plan.settings());
    out.writeArrayPropertyStart("warnings");
    plan.warnings().forEach(out::writeString);
    out.writeEndArray();
    out.writeNumberProperty("seconds", BigDecimal.valueOf(Math.round(seconds * 1000), 3));
    out.writeEndObject();
  }

  private void length(String name, long nm) {
    out.writeNumberProperty(name, job.unit().fromNanometres(nm));
  }

  private void box(long x, long y, long w, long h) {
    length("x", x);
    length("y", y);
    length("w", w);
    length("h", h);
  }

  private void sheet(PlannedSheet sheet) {
    out.writeStartObject();
    out.writeNumberProperty("stock", sheet.stock());
    length("w", sheet.w());
    length("h", sheet.h());
    out.writeArrayPropertyStart("pieces");
    sheet.pieces().forEach(this::piece);
    out.writeEndArray();
    out.writeArrayPropertyStart("cuts");
    sheet.cuts().forEach(this::cut);
    out.writeEndArray();
    out.writeArrayPropertyStart("scraps");
    sheet.scraps().forEach(this::scrap);
    out.writeEndArray();
    out.writeEndObject();
  }

  private void piece(PlacedPiece p) {
    out.writeStartObject();
    out.writeStringProperty("name", job.pieces().get(p.piece()).name());
    box(p.x(), p.y(), p.w(), p.h());
    out.writeBooleanProperty("rotated", p.rotated());
    out.writeEndObject();
  }

  private void cut(Cut c) {
    out.writeStartObject();
    out.writeStringProperty("axis", c.axis().name().toLowerCase(java.util.Locale.ROOT));
    length("at", c.at());
    length("from", c.from());
    length("to", c.to());
    out.writeEndObject();
  }

  private void scrap(Scrap s) {
    out.writeStartObject();
    box(s.x(), s.y(), s.w(), s.h());
    out.writeEndObject();
  }
}
