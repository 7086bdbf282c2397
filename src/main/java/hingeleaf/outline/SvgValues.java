package hingeleaf.outline;

import java.util.ArrayList;
import java.util.List;

/** Attribute values of SVG: lengths, lists of numbers, transforms. */
final class SvgValues {
  /** CSS Values and Units: 96 px, 72 pt and 6 pc make an inch of 25.4 mm. */
  static final double MM_PER_PX = 25.4 / 96;

  private SvgValues() {}

  /** A length in user units (px); {@code otherwise} where there is none. */
  static double length(String attribute, double otherwise) throws Refusal {
    if (attribute.isBlank()) {
      return otherwise;
    }
    Numbers in = new Numbers(attribute.strip());
    double number = in.number();
    StringBuilder unit = new StringBuilder();
    while (!in.done()) {
      unit.append(in.take());
    }
    return number * pixels(unit.toString().strip(), attribute);
  }

  private static double pixels(String unit, String attribute) throws Refusal {
    return switch (unit) {
      case "", "px" -> 1;
      case "mm" -> 1 / MM_PER_PX;
      case "cm" -> 10 / MM_PER_PX;
      case "in" -> 96;
      case "pt" -> 96 / 72.0;
      case "pc" -> 16;
      case "Q" -> 0.25 / MM_PER_PX;
      default ->
          throw new Refusal(
              "bad-drawing",
              "the length `"
                  + attribute.strip()
                  + "` has a unit that is not known here; use mm, cm,"
                  + " in, pt or px");
    };
  }

  /** Numbers with spaces or commas between them. */
  static List<Double> numbers(String attribute) throws Refusal {
    Numbers in = new Numbers(attribute);
    List<Double> out = new ArrayList<>();
    in.spaces();
    while (!in.done()) {
      out.add(in.number());
      if (out.size() > 2 * Pen.MOST) {
        throw new Refusal("too-many-points", "this drawing has more than 200,000 points");
      }
      in.spaces();
    }
    return out;
  }

  /** A list of transforms, SVG 1.1 section 7.6: the last written is applied first. */
  static Affine transform(String attribute) throws Refusal {
    Affine all = Affine.IDENTITY;
    int at = 0;
    while (true) {
      while (at < attribute.length() && " ,\t\r\n".indexOf(attribute.charAt(at)) >= 0) {
        at++;
      }
      if (at == attribute.length()) {
        return all;
      }
      int open = attribute.indexOf('(', at);
      int shut = open < 0 ? -1 : attribute.indexOf(')', open + 1);
      if (shut < 0) {
        throw new Refusal("bad-drawing", "the transform `" + brief(attribute) + "` is not closed");
      }
      List<Double> numbers = numbers(attribute.substring(open + 1, shut));
      all = all.times(one(attribute.substring(at, open).strip(), numbers));
      at = shut + 1;
    }
  }

  private static Affine one(String name, List<Double> n) throws Refusal {
    String shape = name + n.size();
    return switch (shape) {
      case "matrix6" -> new Affine(n.get(0), n.get(1), n.get(2), n.get(3), n.get(4), n.get(5));
      case "translate1" -> Affine.translate(n.get(0), 0);
      case "translate2" -> Affine.translate(n.get(0), n.get(1));
      case "scale1" -> Affine.scale(n.get(0), n.get(0));
      case "scale2" -> Affine.scale(n.get(0), n.get(1));
      case "rotate1" -> Affine.rotate(n.get(0));
      case "rotate3" ->
          Affine.translate(n.get(1), n.get(2))
              .times(Affine.rotate(n.get(0)))
              .times(Affine.translate(-n.get(1), -n.get(2)));
      case "skewX1" -> new Affine(1, 0, Math.tan(Math.toRadians(n.get(0))), 1, 0, 0);
      case "skewY1" -> new Affine(1, Math.tan(Math.toRadians(n.get(0))), 0, 1, 0, 0);
      default ->
          throw new Refusal(
              "bad-drawing",
              "the transform `" + brief(name) + "` with " + n.size() + " numbers is not known");
    };
  }

  private static String brief(String text) {
    String line = text.replaceAll("[\\p{Cntrl}\\s]+", " ").strip();
    return line.length() > 30 ? line.substring(0, 30) + "..." : line;
  }
}
