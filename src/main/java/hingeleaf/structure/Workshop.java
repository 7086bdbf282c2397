package hingeleaf.structure;

import hingeleaf.design.Shape;
import hingeleaf.design.Values;
import hingeleaf.finding.Problem;
import hingeleaf.geom.Region;
import hingeleaf.geom.Ring;
import hingeleaf.geom.Vec2;
import hingeleaf.measure.Length;
import hingeleaf.measure.NearestWord;
import hingeleaf.outline.Outline;
import hingeleaf.stock.Stock;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What is at hand while a card is built: the bearings, the sizes as the plan's units want them, the
 * drawings that the design names, and the card so far.
 *
 * @param drawings bytes of the SVG files by the names that the design uses
 * @param outlines those read so far, by name and width: a wood has one tree drawn many times
 */
record Workshop(
    Assembly card,
    Bearings bearings,
    Sizing sizing,
    Map<String, byte[]> drawings,
    Map<String, Outline.Reading> outlines) {
  /** A length of the design as it will be built, mm. */
  double mm(Values v, String key) {
    return sizing.mm(key, v.length(key));
  }

  double mm(String what, Length length) {
    return sizing.mm(what, length);
  }

  /** The paper that a key names; reports an unknown one. */
  Optional<Stock> stock(Values v, String key, String part) {
    String name = v.text(key);
    Optional<Stock> found = bearings.bench().paper(name);
    if (found.isEmpty()) {
      List<String> known = bearings.bench().papers().stream().map(Stock::name).toList();
      card.report(
          v.problem(
              "unknown-stock", part, key, "unknown stock `" + name + "`" + nearest(name, known)));
    }
    return found;
  }

  /** The panel that a key names; reports an unknown one. */
  Optional<Surface> surface(Values v, String key, String part) {
    String name = v.text(key);
    Optional<Surface> found = card.surface(name);
    if (found.isEmpty()) {
      card.report(
          v.problem(
              "unknown-panel",
              part,
              key,
              "there is no panel or part `"
                  + name
                  + "` here"
                  + nearest(name, card.surfaceNames())));
    }
    return found;
  }

  private static String nearest(String name, List<String> known) {
    return NearestWord.to(name, known)
        .map(w -> " - did you mean `" + w + "`?")
        .orElse(" - there are: " + String.join(", ", known.stream().limit(12).toList()));
  }

  /**
   * The shape that a key gives, centred where the shape's own offset says; reports a drawing that
   * cannot be used.
   */
  Optional<Region> shape(Values v, String key, String part) {
    Shape shape = Shape.of(v.choice(key));
    Vec2 at = new Vec2(mm(part + " across", shape.right()), mm(part + " up", shape.up()));
    if (shape instanceof Shape.Standard s) {
      Shape.Standard sized =
          s.sized(
              built(part + " width", s.width()),
              built(part + " height", s.height()),
              built(part + " radius", s.radius()));
      return Optional.of(Region.of(sized.ring()).moved(at));
    }
    Shape.Drawn d = (Shape.Drawn) shape;
    return drawn(v, key, part, d).map(r -> r.moved(at));
  }

  private Length built(String what, Length named) {
    double mm = sizing.mm(what, named);
    return Math.abs(mm - named.mm()) < Length.EXACT_MM ? named : bearings.units().nearest(mm);
  }

  private Optional<Region> drawn(Values v, String key, String part, Shape.Drawn d) {
    byte[] bytes = drawings.get(d.file());
    if (bytes == null) {
      card.report(
          v.problem(
              "missing-file", part, key, "there is no file " + d.file() + " beside the design"));
      return Optional.empty();
    }
    double width = mm(part + " width", d.width());
    Outline.Reading reading =
        outlines.computeIfAbsent(
            d.file() + " " + width, k -> Outline.read(d.file(), bytes, OptionalDouble.of(width)));
    if (reading instanceof Outline.Reading.Refused refused) {
      card.report(v.problem(refused.problem().kind(), part, key, sentence(refused.problem())));
      return Optional.empty();
    }
    Outline.Reading.Read read = (Outline.Reading.Read) reading;
    read.notes().forEach(card::report);
    List<Region> regions = read.outline().regions();
    if (regions.size() != 1) {
      card.report(
          v.problem(
              "loose-parts",
              part,
              key,
              d.file()
                  + " has "
                  + regions.size()
                  + " separate shapes - a piece must hang together: join them, or make them parts "
                  + "of their own"));
      return Optional.empty();
    }
    return Optional.of(regions.get(0));
  }

  /** A fault of a drawing, told at the design's line, with its own place in words. */
  private static String sentence(Problem p) {
    return p.place() == null ? p.message() : p.place() + ": " + p.message();
  }

  /** The outer rings of a shape used as an opening. */
  static List<Ring> opening(Region shape) {
    return List.of(shape.outer());
  }
}
