package hingeleaf.structure;

import hingeleaf.finding.Problem;
import hingeleaf.finding.Want;
import hingeleaf.geom.Box;
import hingeleaf.geom.Tolerance;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * Where a window lies behind the openings of a panel, and what is wrong with a size of its own.
 *
 * <p>It lies in the middle of the openings, clear of the folds at the panel's edges. A size that
 * was left to us is the openings' and the overlap, cut off at the folds; one that was given stays.
 */
final class Panes {
  /** A window stays this far from the folds at the panel's edges: common practice, no source. */
  private static final double CLEAR_MM = 1;

  /** The least that it reaches past an opening and can be taped by: as the overlap's least. */
  private static final double LEAST_LAP_MM = 1;

  private final Fittings.Window window;
  private final Box openings;
  private final Box clear;
  private final Bearings bearings;

  /**
   * @param openings round all openings of the panel
   */
  Panes(Fittings.Window window, Box openings, Bearings bearings) {
    this.window = window;
    this.openings = openings;
    this.clear = window.on().box().grown(-CLEAR_MM);
    this.bearings = bearings;
  }

  /** Of the window, in the panel's coordinates. */
  Box box() {
    double[] x = span(openings.minX(), openings.maxX(), clear.minX(), clear.maxX(), window.width());
    double[] y =
        span(openings.minY(), openings.maxY(), clear.minY(), clear.maxY(), window.height());
    return new Box(x[0], y[0], x[1], y[1]);
  }

  private double[] span(
      double open0, double open1, double clear0, double clear1, @Nullable Double size) {
    if (size == null) {
      return new double[] {
        Math.max(open0 - window.overlap(), clear0), Math.min(open1 + window.overlap(), clear1)
      };
    }
    double centred = (open0 + open1 - size) / 2;
    double from = Math.max(clear0, Math.min(centred, clear1 - size));
    return new double[] {from, from + size};
  }

  /** What is wrong with the size that was given; empty where nothing is, or none was given. */
  Optional<Problem> fault() {
    Box b = box();
    return fault("width", window.width(), clear.width(), lap(b.minX(), b.maxX(), true))
        .or(() -> fault("height", window.height(), clear.height(), lap(b.minY(), b.maxY(), false)));
  }

  /** How far it reaches past the openings where it does so least, mm. */
  private double lap(double from, double to, boolean across) {
    double open0 = across ? openings.minX() : openings.minY();
    double open1 = across ? openings.maxX() : openings.maxY();
    return Math.min(open0 - from, to - open1);
  }

  private Optional<Problem> fault(String key, @Nullable Double size, double most, double lap) {
    if (size == null) {
      return Optional.empty();
    }
    String way = key.equals("width") ? " wide" : " high";
    String path = window.origin() + "." + key;
    if (size > most + Tolerance.LENGTH_MM) {
      return Optional.of(
          problem(
                  "window-past-panel",
                  size,
                  way + ", it would lie over the folds of ",
                  most,
                  "less")
              .wanting(Want.atMost(path, most)));
    }
    if (lap < LEAST_LAP_MM - Tolerance.LENGTH_MM) {
      double least = size + 2 * (LEAST_LAP_MM - lap);
      return Optional.of(
          problem(
                  "window-too-small",
                  size,
                  way + ", it does not reach past the opening of ",
                  least,
                  "more")
              .wanting(Want.atLeast(path, least)));
    }
    return Optional.empty();
  }

  private Problem problem(String kind, double size, String what, double bound, String or) {
    return Problem.blocks(
            kind,
            window.name(),
            window.origin(),
            window.name()
                + ": "
                + bearings.say(size)
                + what
                + window.on().name()
                + " - make it "
                + bearings.say(or.equals("less") ? bearings.down(bound) : bearings.up(bound))
                + " or "
                + or)
        .with(Map.of("size", size, "bound", bound));
  }
}
