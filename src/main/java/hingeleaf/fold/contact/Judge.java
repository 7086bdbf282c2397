package hingeleaf.fold.contact;

import hingeleaf.geom.Rigid;
import hingeleaf.geom.Vec3;
import org.jspecify.annotations.Nullable;

/** Tells what a contact means: a layer on top of an ornament, or something in the way. */
final class Judge {
  /** An ornament's top and a sheet within this angle lie on each other, rad. */
  private static final double FLAT_ON_RAD = 0.1;

  /** Paper swallows up to two thicknesses of what is in the way: common practice, no source. */
  private static final double SWALLOWED = 2;

  private final Course course;

  Judge(Course course) {
    this.course = course;
  }

  /** Null where it is a touch that paper swallows. */
  @Nullable Touch of(Solid a, Solid b, Chain chain, boolean hinged, Advance.Outcome o) {
    double share = (o.leg() + o.share()) / course.legs();
    boolean start = o.leg() == 0 && o.share() == 0;
    if (!a.prism() && !b.prism()) {
      return new Touch(
          start ? Touch.Kind.STANDS_THROUGH : Touch.Kind.CROSSES,
          a.id(),
          b.id(),
          share,
          0,
          0,
          o.on(),
          Vec3.ZERO);
    }
    boolean first = a.prism();
    Solid prism = first ? a : b;
    Solid other = first ? b : a;
    Rigid toPrism = first ? o.rel() : o.rel().inverse();
    Vec3 at = first ? o.on() : toPrism.apply(o.on());
    if (start) {
      return touch(Touch.Kind.STANDS_THROUGH, prism, other, 0, prism.top(), at, Vec3.ZERO);
    }
    double paper = Math.max(prism.thickness(), other.thickness());
    double swallowed = SWALLOWED * paper;
    double height = at.minus(prism.at()).dot(prism.normal());
    boolean onTop = height >= prism.top() - 2 * Advance.TOUCH_MM;
    boolean flat = Advance.parallel(prism, other, toPrism, FLAT_ON_RAD);
    if (hinged && !other.prism()) {
      double over = prism.top() - swallowed;
      return over <= 0
          ? rests(prism, other, share, at)
          : touch(
              Touch.Kind.JAMS,
              prism,
              other,
              share,
              over,
              at,
              inPlane(prism, slide(a, b, chain, o, at)));
    }
    Vec3 slide = inPlane(prism, slide(a, b, chain, o, at));
    if (onTop && flat) {
      return rests(prism, other, share, at);
    }
    return slide.length() <= swallowed
        ? null
        : touch(Touch.Kind.JAMS, prism, other, share, slide.length(), at, slide);
  }

  /** Two that run along each other; of an ornament and a sheet the ornament is what stands so. */
  Touch close(Solid a, Solid b, Advance.Outcome o) {
    Solid part = b.prism() && !a.prism() ? b : a;
    double share = (o.leg() + o.share()) / course.legs();
    Touch.Kind kind = Touch.Kind.RUNS_ALONG;
    Vec3 at = part == a ? o.on() : o.rel().inverse().apply(o.on());
    return touch(kind, part, part == a ? b : a, share, 0, at, Vec3.ZERO);
  }

  private static Touch rests(Solid prism, Solid other, double share, Vec3 at) {
    return touch(Touch.Kind.RESTS_ON, prism, other, share, 0, at, Vec3.ZERO);
  }

  private static Touch touch(
      Touch.Kind kind, Solid prism, Solid other, double share, double over, Vec3 at, Vec3 slide) {
    Vec3 towards = slide.length() > 0 ? slide.unit() : Vec3.ZERO;
    return new Touch(kind, prism.id(), other.id(), share, prism.top(), over, at, towards);
  }

  private static Vec3 inPlane(Solid prism, Vec3 v) {
    return v.minus(prism.normal().times(v.dot(prism.normal())));
  }

  /** How far the touching point of the other part still goes, seen from the prism. */
  private Vec3 slide(Solid a, Solid b, Chain chain, Advance.Outcome o, Vec3 at) {
    Rigid end = chain.pose(course.end());
    Rigid then = a.prism() ? end : end.inverse();
    Rigid now = a.prism() ? o.rel() : o.rel().inverse();
    return then.apply(now.inverse().apply(at)).minus(at);
  }
}
