package hingeleaf.pack;

import hingeleaf.design.DesignDocument;
import hingeleaf.measure.MakerUnits;
import hingeleaf.paper.HouseFonts;
import hingeleaf.paper.Letters;
import hingeleaf.stock.Bench;
import hingeleaf.stock.BuiltInBench;
import hingeleaf.structure.Structures;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;

/** Packs for tests, from the examples and from designs written in a test. */
public final class SamplePacks {
  private SamplePacks() {}

  /** The pack of an example with the built-in bench of its unit. */
  public static Pack example(String name) {
    try {
      byte[] bytes = Files.readAllBytes(Path.of("examples", name));
      return of(bytes, BuiltInBench.metric(), 1);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The pack of an example for a batch and a class of so many seats and two hours. */
  public static Pack example(String name, int copies, int seats) {
    Pack one = example(name);
    Pack.Inputs in = one.inputs();
    Wants wants =
        new Wants(in.wants().units(), in.wants().letter(), copies, false)
            .teaching(new Wants.Lesson(seats, 120));
    return Pack.of(new Pack.Inputs(in.design(), in.drawings(), in.bench(), in.lettering(), wants));
  }

  public static Pack of(String yaml, Bench bench, int copies) {
    return of(yaml.getBytes(StandardCharsets.UTF_8), bench, copies);
  }

  private static Pack of(byte[] yaml, Bench bench, int copies) {
    DesignDocument.Outcome read = DesignDocument.read("test.yaml", yaml, Structures.FORMS);
    if (!(read instanceof DesignDocument.Outcome.Right right)) {
      throw new IllegalArgumentException(read.toString());
    }
    DesignDocument design = right.document();
    boolean inches = design.unit() == hingeleaf.measure.Unit.IN;
    Wants wants = new Wants(MakerUnits.of(design.unit()), inches, copies, false);
    Bench used = inches && bench.country().isEmpty() ? BuiltInBench.inches() : bench;
    return Pack.of(
        new Pack.Inputs(design, drawings(), used, new Letters(HouseFonts.read()), wants));
  }

  private static Map<String, byte[]> drawings() {
    Map<String, byte[]> all = new HashMap<>();
    try (var files = Files.list(Path.of("examples"))) {
      for (Path p : files.filter(f -> f.toString().endsWith(".svg")).toList()) {
        all.put(p.getFileName().toString(), Files.readAllBytes(p));
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return all;
  }

  /** Three frames of 150 on sides of 12, as in the worked case. */
  public static String stack(String more) {
    return """
        hingeleaf: 1
        title: Stack
        unit: mm
        base:
          stacked-frames:
            width: 150
            height: 150
            stock: white-300
            side: 12
            tab: 12
            frames:
              - {name: far, aperture: {circle: 90}}
              - {name: middle, aperture: {circle: 110}}
              - {name: near, aperture: {square: 126}}
        """
        + more;
  }
}
