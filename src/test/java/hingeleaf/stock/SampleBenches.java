package hingeleaf.stock;

import java.util.List;

/** The built-in metric bench with one thing changed. */
public final class SampleBenches {
  private SampleBenches() {}

  /** In a country. */
  public static Bench in(String country) {
    Bench b = BuiltInBench.metric();
    return with(b, b.machineWidth(), b.glues(), country);
  }

  /** With nothing to press or cut dies with. */
  public static Bench withoutMachine() {
    Bench b = BuiltInBench.metric();
    return with(b, 0, b.glues(), b.country());
  }

  /** With these glues and tapes alone. */
  public static Bench gluing(List<Glue> glues) {
    Bench b = BuiltInBench.metric();
    return with(b, b.machineWidth(), glues, b.country());
  }

  private static Bench with(Bench b, double machineWidth, List<Glue> glues, String country) {
    return new Bench(
        b.title(),
        b.inches(),
        b.trimmer(),
        b.ruler(),
        b.scoringBoard(),
        machineWidth,
        b.dies(),
        b.embossingFolders(),
        b.papers(),
        glues,
        b.foams(),
        b.envelopes(),
        b.accuracy(),
        b.money(),
        b.hourlyRate(),
        country);
  }
}
