package hingeleaf.structure;

import hingeleaf.card.Face;
import hingeleaf.finding.Problem;
import hingeleaf.finding.Want;
import hingeleaf.geom.Box;
import hingeleaf.geom.Overlay;
import hingeleaf.geom.Region;
import hingeleaf.geom.Ring;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * Parts glued on one face that want the same place: two at the same height that overlap, or one
 * over a strip where a frame's glue tab must land. A part that lies wholly on another lies well.
 */
final class Crowding {
  /** Less than this is a slip of rounding, mm2. */
  private static final double LEAST_MM2 = 1;

  private static final double EPS = 1e-6;

  /** Advice is on this step, mm. */
  private static final double STEP_MM = 0.5;

  private final Assembly card;
  private final Bearings bearings;
  private final List<Part> laid = new ArrayList<>();

  /**
   * A part on a face.
   *
   * @param placed where it lies, in the coordinates of the piece that it is glued on
   * @param from height of its underside over the face, mm
   * @param to height of its top, mm
   * @param origin path in the design, with keys {@code at} and {@code raised-by}
   * @param x its offset in the design, right, mm
   * @param y its offset in the design, up, mm
   */
  record Part(
      String name,
      Surface on,
      Face face,
      Region placed,
      double from,
      double to,
      String origin,
      double x,
      double y) {}

  Crowding(Assembly card, Bearings bearings) {
    this.card = card;
    this.bearings = bearings;
  }

  /**
   * Adds a part and reports whom it crowds.
   *
   * @param small whether it may lie anywhere; a mat was made to leave the strips free
   */
  void lay(Part part, boolean small) {
    for (Part other : laid) {
      if (clash(other, part)) {
        card.report(overlap(other, part));
        break;
      }
    }
    if (part.face() == Face.FRONT && small) {
      strips(part);
    }
    laid.add(part);
  }

  private static boolean clash(Part a, Part b) {
    boolean sameFace = a.on().piece().equals(b.on().piece()) && a.face() == b.face();
    boolean sameHeight = a.from() < b.to() - EPS && b.from() < a.to() - EPS;
    return sameFace
        && sameHeight
        && meet(a.placed().box(), b.placed().box())
        && shared(a.placed(), b.placed()) > LEAST_MM2
        && (alike(a, b) || !nested(a.placed(), b.placed()) && !nested(b.placed(), a.placed()));
  }

  private static boolean nested(Region small, Region large) {
    return Overlay.within(List.of(small), List.of(large));
  }

  /** Two that fill the very same place, as a copied line of the design makes them. */
  private static boolean alike(Part a, Part b) {
    return nested(a.placed(), b.placed()) && nested(b.placed(), a.placed());
  }

  private static boolean meet(Box a, Box b) {
    return a.minX() < b.maxX() && b.minX() < a.maxX() && a.minY() < b.maxY() && b.minY() < a.maxY();
  }

  private static double shared(Region a, Region b) {
    return Overlay.area(Overlay.intersection(List.of(a), List.of(b)));
  }

  private Problem overlap(Part under, Part over) {
    Step step = Step.out(over.placed().box(), under.placed().box());
    double raise = Math.ceil(under.to() / STEP_MM - EPS) * STEP_MM;
    return Problem.warns(
            "parts-overlap",
            over.name(),
            over.origin(),
            over.name()
                + (alike(under, over)
                    ? ": it lies in the very place of "
                    : ": it lies over the edge of ")
                + under.name()
                + ", on the same face at the same height - move it "
                + bearings.say(step.length())
                + " "
                + step.words()
                + ", or raise it by "
                + bearings.say(raise)
                + " or more")
        .with(Map.of("move", step.length(), "raise", raise))
        .wanting(step.want(over), Want.atLeast(over.origin() + ".raised-by", raise));
  }

  private void strips(Part part) {
    for (Box strip : part.on().frontStrips()) {
      Region area =
          Region.of(Ring.rectangle(strip.minX(), strip.minY(), strip.maxX(), strip.maxY()));
      if (meet(part.placed().box(), strip) && shared(part.placed(), area) > LEAST_MM2) {
        card.report(overStrip(part, strip));
        return;
      }
    }
  }

  private Problem overStrip(Part part, Box strip) {
    Step step = Step.off(part.placed().box(), strip, part.on().box());
    return Problem.warns(
            "over-glue-strip",
            part.name(),
            part.origin(),
            part.name()
                + ": it covers a strip at the edge of "
                + part.on().name()
                + " where a frame's glue tab must land - move it "
                + bearings.say(step.length())
                + " "
                + step.words())
        .with(Map.of("move", step.length()))
        .wanting(step.want(part));
  }

  /** A move along x or y, mm; one of the two is 0. */
  private record Step(double right, double up) {
    /** The least move that takes a box off another. */
    static Step out(Box box, Box other) {
      boolean east = box.centre().x() >= other.centre().x();
      boolean north = box.centre().y() >= other.centre().y();
      double x = east ? other.maxX() - box.minX() : other.minX() - box.maxX();
      double y = north ? other.maxY() - box.minY() : other.minY() - box.maxY();
      return Math.abs(x) <= Math.abs(y) ? new Step(rounded(x), 0) : new Step(0, rounded(y));
    }

    /** Off a strip at an edge of a panel, inwards. */
    static Step off(Box box, Box strip, Box panel) {
      boolean upright = strip.height() >= panel.height() - EPS;
      if (upright) {
        boolean left = strip.minX() <= panel.minX() + EPS;
        return new Step(rounded(left ? strip.maxX() - box.minX() : strip.minX() - box.maxX()), 0);
      }
      boolean below = strip.minY() <= panel.minY() + EPS;
      return new Step(0, rounded(below ? strip.maxY() - box.minY() : strip.minY() - box.maxY()));
    }

    private static double rounded(double mm) {
      return Math.signum(mm) * Math.ceil(Math.abs(mm) / STEP_MM - EPS) * STEP_MM;
    }

    double length() {
      return Math.abs(right + up);
    }

    String words() {
      if (right != 0) {
        return right > 0 ? "to the right" : "to the left";
      }
      return up > 0 ? "up" : "down";
    }

    Want want(Part part) {
      String path = part.origin() + (right != 0 ? ".at[0]" : ".at[1]");
      double to = right != 0 ? part.x() + right : part.y() + up;
      return right + up > 0 ? Want.atLeast(path, to) : Want.atMost(path, to);
    }
  }
}
