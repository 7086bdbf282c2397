package hingeleaf.paper;

/**
 * What is done along the marks of a layer, by the names of ISO 19593-1:2018 (PDF processing steps,
 * Part 1). Structural groups need a type; Dimensions and Legend have none.
 */
public enum Step {
  /** No processing step: an ordinary drawing. */
  PLAIN("", "", "Drawing", Look.INK),
  EMBOSSING("Structural", "Embossing", "Pressed by the embossing folder", "#7a5c2e"),
  GLUING("Structural", "Gluing", "Glue here", "#8a8d90"),

  /** The groove goes into the face that is drawn: a mountain fold seen on that face. */
  CREASING("Structural", "Creasing", "Mountain folds, scored on this face", Look.ACCENT),

  /** The groove goes into the other face: a valley fold seen on the drawn face. */
  REVERSE_CREASING(
      "Structural", "ReverseCreasing", "Valley folds, scored on the other face", Look.ACCENT),
  CUTTING("Structural", "Cutting", "Cut", Look.INK),
  DIMENSIONS("Dimensions", "", "Sizes and check bar", Look.QUIET),
  LEGEND("Legend", "", "Names, key and page marks", Look.INK);

  private final String group;
  private final String type;
  private final String title;
  private final String colour;

  Step(String group, String type, String title, String colour) {
    this.group = group;
    this.type = type;
    this.title = title;
    this.colour = colour;
  }

  /** GTS_ProcStepsGroup; empty for {@link #PLAIN}. */
  public String group() {
    return group;
  }

  /** GTS_ProcStepsType; empty where the group has none. */
  public String type() {
    return type;
  }

  public String title() {
    return title;
  }

  /** How the step's spot colour looks on a screen. */
  public String colour() {
    return colour;
  }

  /** The name that files use: the type, or the group where there is no type. */
  public String id() {
    if (this == PLAIN) {
      return "Drawing";
    }
    return type.isEmpty() ? group : type;
  }
}
