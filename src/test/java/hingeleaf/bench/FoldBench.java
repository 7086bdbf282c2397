package hingeleaf.bench;

import hingeleaf.fold.BenchCases;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.factory.DecompositionFactory_DDRM;
import org.ejml.interfaces.decomposition.QRDecomposition;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.OptionsBuilder;

/**
 * Time a pose, warm, against a fixed 6 x 6 QR decomposition (EJML) in the same run, so that ratios
 * compare between machines. Run the main method; not part of the test run.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class FoldBench {
  private final DMatrixRMaj six = new DMatrixRMaj(6, 6);
  private final QRDecomposition<DMatrixRMaj> qr = DecompositionFactory_DDRM.qr(6, 6);
  private BenchCases.Stepper planar = () -> false;
  private BenchCases.Stepper sphericalParts = () -> false;
  private BenchCases.Stepper generalParts = () -> false;
  private BenchCases.Stepper coupled = () -> false;
  private BenchCases.Stepper sheet100 = () -> false;
  private BenchCases.Stepper sheet1000 = () -> false;
  private BenchCases.Stepper sheet10000 = () -> false;

  @Setup
  public void prepare() {
    Random random = new Random(1);
    for (int i = 0; i < 36; i++) {
      six.data[i] = random.nextDouble();
    }
    planar = BenchCases.planar();
    sphericalParts = BenchCases.sphericalParts();
    generalParts = BenchCases.generalParts();
    coupled = BenchCases.coupled();
    sheet100 = BenchCases.sheet(10);
    sheet1000 = BenchCases.sheet(32);
    sheet10000 = BenchCases.sheet(100);
  }

  @Benchmark
  public boolean qr6x6() {
    return qr.decompose(six.copy());
  }

  @Benchmark
  public boolean planar31bodies6loops() {
    return planar.step();
  }

  @Benchmark
  public boolean spherical24bodies6loops() {
    return sphericalParts.step();
  }

  @Benchmark
  public boolean general31bodies6loops() {
    return generalParts.step();
  }

  @Benchmark
  public boolean coupled24bodies6loops() {
    return coupled.step();
  }

  @Benchmark
  public boolean sheet100() {
    return sheet100.step();
  }

  @Benchmark
  public boolean sheet1024() {
    return sheet1000.step();
  }

  @Benchmark
  public boolean sheet10000() {
    return sheet10000.step();
  }

  public static void main(String[] args) throws RunnerException {
    new Runner(new OptionsBuilder().include(FoldBench.class.getSimpleName()).build()).run();
  }
}
