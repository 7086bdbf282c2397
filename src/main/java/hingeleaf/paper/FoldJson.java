package hingeleaf.paper;

import hingeleaf.card.Joint;
import hingeleaf.card.Mechanism;
import hingeleaf.card.Posed;
import hingeleaf.geom.Rigid;
import hingeleaf.geom.Vec3;
import java.io.StringWriter;
import java.util.List;
import java.util.Map;
import tools.jackson.core.JsonGenerator;
import tools.jackson.core.ObjectWriteContext;
import tools.jackson.core.json.JsonFactory;

/** What folding a mechanism gave, as JSON: lengths in mm, angles in rad, full precision. */
public final class FoldJson {
  private FoldJson() {}

  /**
   * @param mobility freedoms, or -1 where they were too many to count
   * @param bodies panels that are glued count as one
   * @param loops independent loops of folds
   */
  public record Summary(int mobility, int bodies, int hinges, int loops, Flat flat) {}

  /**
   * The states in which the mechanism can lie.
   *
   * @param count how many were found, a product over parts that move by themselves; written as null
   *     where it is beyond counting
   * @param complete whether the search was exhaustive
   * @param listed the first of them
   */
  public record Flat(double count, boolean complete, List<FlatState> listed) {
    public Flat {
      listed = List.copyOf(listed);
    }
  }

  /**
   * @param coplanar whether every fold is open or closed
   * @param crossing whether the way there leads through another such state, which real panels
   *     cannot pass without crossing
   */
  public record FlatState(Posed posed, boolean coplanar, boolean crossing) {}

  /**
   * One state asked for and what came of it.
   *
   * @param error how far a point may be from its true place, mm
   */
  public record StateResult(
      Map<String, Double> drive, boolean reached, String why, Posed posed, double error) {}

  /** The whole report, ending in a line feed. */
  public static String write(Mechanism m, Summary summary, List<StateResult> states) {
    StringWriter text = new StringWriter();
    try (JsonGenerator g = new JsonFactory().createGenerator(ObjectWriteContext.empty(), text)) {
      g.writeStartObject();
      if (summary.mobility() >= 0) {
        g.writeNumberProperty("mobility", summary.mobility());
      } else {
        g.writeNullProperty("mobility");
      }
      g.writeNumberProperty("bodies", summary.bodies());
      g.writeNumberProperty("hinges", summary.hinges());
      g.writeNumberProperty("loops", summary.loops());
      flat(g, m, summary.flat());
      g.writeArrayPropertyStart("states");
      for (StateResult s : states) {
        state(g, m, s);
      }
      g.writeEndArray();
      g.writeEndObject();
    }
    return text + "\n";
  }

  private static void flat(JsonGenerator g, Mechanism m, Flat flat) {
    g.writeObjectPropertyStart("flat");
    if (flat.count() < 9e15) {
      g.writeNumberProperty("count", Math.round(flat.count()));
    } else {
      g.writeNullProperty("count");
    }
    g.writeBooleanProperty("complete", flat.complete());
    g.writeArrayPropertyStart("states");
    for (FlatState s : flat.listed()) {
      g.writeStartObject();
      g.writeBooleanProperty("coplanar", s.coplanar());
      g.writeBooleanProperty("crossing", s.crossing());
      folds(g, m, s.posed());
      g.writeNumberProperty("closure_mm", s.posed().gap());
      g.writeEndObject();
    }
    g.writeEndArray();
    g.writeEndObject();
  }

  private static void state(JsonGenerator g, Mechanism m, StateResult s) {
    g.writeStartObject();
    g.writeObjectPropertyStart("drive");
    s.drive().forEach(g::writeNumberProperty);
    g.writeEndObject();
    g.writeBooleanProperty("reached", s.reached());
    if (!s.reached()) {
      g.writeStringProperty("why", s.why());
    }
    folds(g, m, s.posed());
    g.writeObjectPropertyStart("panels");
    for (int f = 0; f < m.facets().size(); f++) {
      g.writeArrayPropertyStart(m.facets().get(f).id());
      Rigid motion = s.posed().motions().get(f);
      for (Vec3 p : m.facets().get(f).outline()) {
        point(g, motion.apply(p));
      }
      g.writeEndArray();
    }
    g.writeEndObject();
    g.writeNumberProperty("closure_mm", s.posed().gap());
    g.writeNumberProperty("error_mm", s.error());
    g.writeEndObject();
  }

  private static void folds(JsonGenerator g, Mechanism m, Posed posed) {
    g.writeObjectPropertyStart("folds");
    for (int j = 0; j < m.joints().size(); j++) {
      Joint joint = m.joints().get(j);
      g.writeNumberProperty(joint.id(), posed.values().get(j) + 0.0);
    }
    g.writeEndObject();
  }

  private static void point(JsonGenerator g, Vec3 p) {
    g.writeStartArray();
    g.writeNumber(p.x() + 0.0);
    g.writeNumber(p.y() + 0.0);
    g.writeNumber(p.z() + 0.0);
    g.writeEndArray();
  }
}
