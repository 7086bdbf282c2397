package hingeleaf.post;

import hingeleaf.post.Limit.Confidence;
import hingeleaf.post.Limit.Source;
import hingeleaf.post.Limit.When;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * Reads the limits of one post from JSON bytes. Keys: {@code name, title, country, unit} (mm or
 * in), {@code weight} (g or oz), {@code advice, sources, classes}; see the data files beside.
 * Unknown keys, unknown words and missing sources are refused with the path of the fault.
 */
public final class SchemeReader {
  private static final double INCH = 25.4;

  /** The international avoirdupois ounce, a sixteenth of the pound of 453.59237 g. */
  private static final double OUNCE = 28.349523125;

  private final double mmPerUnit;
  private final double gramsPerUnit;
  private final Map<String, Source> sources;

  /**
   * @throws IllegalArgumentException with the path of the fault, what was expected and found
   */
  public static Scheme read(byte[] json) {
    Fields top = Fields.of("post limits", JsonTree.read(json));
    top.only("name", "title", "country", "unit", "weight", "advice", "sources", "classes");
    SchemeReader reader =
        new SchemeReader(
            top.word("unit", Map.of("mm", 1.0, "in", INCH)),
            top.word("weight", Map.of("g", 1.0, "oz", OUNCE)),
            sources(top.child("sources")));
    return new Scheme(
        top.text("name"),
        top.text("title"),
        top.text("country"),
        reader.mmPerUnit != 1,
        top.list("classes").stream().map(reader::postClass).toList(),
        top.text("advice"));
  }

  private SchemeReader(double mmPerUnit, double gramsPerUnit, Map<String, Source> sources) {
    this.mmPerUnit = mmPerUnit;
    this.gramsPerUnit = gramsPerUnit;
    this.sources = sources;
  }

  private static Map<String, Source> sources(Fields all) {
    Map<String, Source> sources = new HashMap<>();
    for (String key : all.names()) {
      Fields one = all.child(key);
      one.only("document", "seen");
      sources.put(key, new Source(one.text("document"), one.text("seen")));
    }
    return sources;
  }

  private PostClass postClass(Fields one) {
    one.only("name", "title", "rank", "limits", "steps", "also");
    return new PostClass(
        one.text("name"),
        one.text("title"),
        (int) one.number("rank"),
        one.list("limits").stream().map(this::limit).toList(),
        one.has("steps") ? steps(one.child("steps")) : List.of(),
        one.has("also") ? one.texts("also") : List.of());
  }

  private Limit limit(Fields one) {
    one.only("figure", "least", "most", "when", "from", "sure");
    Figure figure = figure(one);
    double scale = scale(figure);
    if (!one.has("least") && !one.has("most")) {
      throw one.fault("a least or a most", "neither");
    }
    return new Limit(
        figure,
        one.has("least") ? scale * one.number("least") : Double.NEGATIVE_INFINITY,
        one.has("most") ? scale * one.number("most") : Double.POSITIVE_INFINITY,
        one.has("when") ? one.list("when").stream().map(this::when).toList() : List.of(),
        confidence(one),
        source(one));
  }

  private When when(Fields one) {
    one.only("figure", "over", "most");
    Figure figure = figure(one);
    return new When(
        figure,
        one.has("over") ? scale(figure) * one.number("over") : Double.NEGATIVE_INFINITY,
        one.has("most") ? scale(figure) * one.number("most") : Double.POSITIVE_INFINITY);
  }

  private List<Limit> steps(Fields one) {
    one.only("most", "from", "sure");
    List<Limit> steps = new ArrayList<>();
    for (double most : one.numbers("most")) {
      steps.add(
          new Limit(
              Figure.WEIGHT,
              Double.NEGATIVE_INFINITY,
              gramsPerUnit * most,
              List.of(),
              confidence(one),
              source(one)));
    }
    return steps;
  }

  private static Figure figure(Fields one) {
    Map<String, Figure> known = new HashMap<>();
    for (Figure figure : Figure.values()) {
      known.put(word(figure), figure);
    }
    return one.word("figure", known);
  }

  private static Confidence confidence(Fields one) {
    Map<String, Confidence> known = new HashMap<>();
    for (Confidence confidence : Confidence.values()) {
      known.put(word(confidence), confidence);
    }
    return one.word("sure", known);
  }

  private Source source(Fields one) {
    return one.word("from", sources);
  }

  private static String word(Enum<?> value) {
    return value.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  private double scale(Figure figure) {
    return switch (figure.sort()) {
      case MM -> mmPerUnit;
      case GRAMS -> gramsPerUnit;
      case NUMBER -> 1;
    };
  }
}
