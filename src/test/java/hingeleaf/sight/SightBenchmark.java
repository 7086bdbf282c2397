package hingeleaf.sight;

import hingeleaf.geom.Vec3;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** Time of one view: twelve frames with forty cut-outs of 60 to 200 points, and three frames. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(1)
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 3, time = 2)
public class SightBenchmark {
  private final Scene large = Stacks.large().scene();
  private final Scene three = Stacks.caseA().scene();
  private final Look eye = Look.fromEye(new Vec3(0, 0, 144), 400, 0.2, 0.1);

  @Benchmark
  public View largeStraightOn() {
    return Sight.look(large, Look.straightOn());
  }

  @Benchmark
  public View largeThreeQuarter() {
    return Sight.look(large, Look.threeQuarter());
  }

  @Benchmark
  public View largeFromEye() {
    return Sight.look(large, eye);
  }

  @Benchmark
  public View threeFramesThreeQuarter() {
    return Sight.look(three, Look.threeQuarter());
  }
}
