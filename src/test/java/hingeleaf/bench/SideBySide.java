package hingeleaf.bench;

import hingeleaf.fold.BenchCases;
import org.jspecify.annotations.Nullable;
import org.ode4j.math.DVector3;
import org.ode4j.ode.DBody;
import org.ode4j.ode.DHingeJoint;
import org.ode4j.ode.DMass;
import org.ode4j.ode.DWorld;
import org.ode4j.ode.OdeHelper;

/**
 * One stage of a stacked card (a parallelogram on four folds), laid from upright to 80 degrees:
 * here and in a general-purpose rigid-body engine with a motor on the first fold. Prints error and
 * time; run the main method.
 */
public final class SideBySide {
  private static final double W = 150;
  private static final double D = 12;
  private static final double TO = Math.toRadians(80);

  private SideBySide() {}

  public static void main(String[] args) {
    for (int steps : new int[] {200, 2000, 20000}) {
      engine(200);
      long start = System.nanoTime();
      double error = engine(steps);
      System.out.printf(
          "engine, %d steps: error %.3g mm, %.2f ms%n",
          steps, error, (System.nanoTime() - start) / 1e6);
    }
    for (int i = 0; i < 200; i++) {
      BenchCases.stageError(TO);
    }
    long start = System.nanoTime();
    double error = BenchCases.stageError(TO);
    System.out.printf(
        "here, path and all: error %.3g mm, %.3f ms%n", error, (System.nanoTime() - start) / 1e6);
  }

  /** Largest distance of the front's fold from where a parallelogram puts it, mm. */
  private static double engine(int steps) {
    OdeHelper.initODE2(0);
    DWorld world = OdeHelper.createWorld();
    world.setGravity(0, 0, 0);
    world.setERP(0.8);
    world.setCFM(1e-10);
    DBody left = body(world, 0, D / 2);
    DBody right = body(world, W, D / 2);
    DBody front = body(world, W / 2, D);
    DHingeJoint drive = hinge(world, left, null, 0, 0);
    hinge(world, right, null, W, 0);
    hinge(world, front, left, 0, D);
    hinge(world, front, right, W, D);
    double dt = 1.0 / steps;
    drive.setParamFMax(1e12);
    double sign = 1;
    for (int i = 0; i < steps; i++) {
      double left1 = sign * TO - drive.getAngle();
      drive.setParamVel(left1 / ((steps - i) * dt));
      world.step(dt);
    }
    DVector3 at = new DVector3();
    front.getRelPointPos(-W / 2, 0, 0, at);
    double x = Math.sin(TO) * D;
    double z = Math.cos(TO) * D;
    double error = Math.hypot(Math.abs(at.get0()) - x, at.get2() - z);
    world.destroy();
    OdeHelper.closeODE();
    return error;
  }

  private static DBody body(DWorld world, double x, double z) {
    DBody b = OdeHelper.createBody(world);
    b.setPosition(x, 0, z);
    DMass m = OdeHelper.createMass();
    m.setBoxTotal(1, 50, 100, 50);
    b.setMass(m);
    return b;
  }

  /** A null second body is the world, as the engine has it. */
  @SuppressWarnings("NullAway")
  private static DHingeJoint hinge(DWorld w, DBody a, @Nullable DBody b, double x, double z) {
    DHingeJoint h = OdeHelper.createHingeJoint(w);
    h.attach(a, b);
    h.setAnchor(x, 0, z);
    h.setAxis(0, 1, 0);
    return h;
  }
}
