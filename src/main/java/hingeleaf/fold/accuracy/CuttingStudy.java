package hingeleaf.fold.accuracy;

import hingeleaf.card.MadeCard;
import hingeleaf.card.Rest;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SplittableRandom;
import org.jspecify.annotations.Nullable;

/**
 * What a hand's accuracy does to a card, worst case and by trial.
 *
 * <p>Law of the trials: every setting of trimmer and scoring board is off by an error of its own,
 * uniform within plus or minus the accuracy, independent of the others; pieces cut at one setting
 * share its error.
 */
public final class CuttingStudy {
  /** Trials; enough to tell a share to about two in a hundred. */
  public static final int TRIALS = 2000;

  /** Where the trials start from; printed with them. */
  public static final long SEED = 20_170_601;

  /**
   * A card that stands up by less than this lies flat to a maker, mm: common practice, no source.
   */
  public static final double FLAT_MM = 1;

  /** A tab of which less is glued holds badly, mm: common practice, no source. */
  private static final double LEAST_GLUED_MM = 6;

  private final List<Stage> stages;
  private final Map<String, Double> thickness = new HashMap<>();
  private final List<Setting> settings;
  private final double accuracy;

  private CuttingStudy(List<Stage> stages, List<ThicknessMisfit> forced, double accuracy) {
    this.stages = stages;
    forced.forEach(f -> thickness.merge(f.piece(), f.misfit(), Math::max));
    this.accuracy = accuracy;
    Set<Setting> all = new LinkedHashSet<>();
    for (Stage s : stages) {
      all.addAll(s.settings());
      s.landing().forEach(l -> all.add(l.getValue()));
    }
    settings = List.copyOf(all);
  }

  /**
   * The study of a card; with no stages, where nothing can jam, all shares are 1.
   *
   * @param rest how it is laid flat; null where it does not
   * @param accuracy largest error of one setting, mm, more than 0
   */
  public static CuttingReport of(MadeCard made, @Nullable Rest rest, double accuracy) {
    if (!(accuracy > 0)) {
      throw new IllegalArgumentException("the accuracy must be more than 0, it is " + accuracy);
    }
    return new CuttingStudy(Stages.of(made, rest), ThicknessMisfit.of(made), accuracy).report();
  }

  private CuttingReport report() {
    double[] heights = new double[TRIALS];
    double[] flats = new double[TRIALS];
    double[] misfits = new double[TRIALS];
    SplittableRandom random = new SplittableRandom(SEED);
    for (int n = 0; n < TRIALS; n++) {
      Map<Setting, Double> errors = new HashMap<>();
      for (Setting s : settings) {
        errors.put(s, (2 * random.nextDouble() - 1) * accuracy);
      }
      for (Stage s : stages) {
        FourBar links = s.links(errors);
        double up = links.giving(s.give(), s.lean()).jamHeight(s.lean());
        heights[n] += Double.isNaN(up) ? Double.POSITIVE_INFINITY : up;
        flats[n] += gluedFlat(s, links);
        misfits[n] = Math.max(misfits[n], Math.abs(links.misfit(s.lean())));
      }
    }
    List<CuttingReport.Part> parts = stages.stream().map(this::part).toList();
    return new CuttingReport(
        accuracy,
        TRIALS,
        SEED,
        share(heights),
        share(flats),
        share(misfits),
        percentile(misfits, 0.95),
        parts,
        watch());
  }

  /**
   * How high it stands when closed flat; as good as infinite where too little of a tab is glued.
   */
  private static double gluedFlat(Stage s, FourBar links) {
    double out = Math.max(0, links.misfit(s.lean()));
    return s.tab() - out < Math.min(s.tab(), LEAST_GLUED_MM)
        ? Double.POSITIVE_INFINITY
        : links.gluedFlat(s.lean()).jamHeight(s.lean());
  }

  /** Share of trials within {@link #FLAT_MM}, with Wilson's interval at 95 % (Wilson, 1927). */
  private static CuttingReport.Share share(double[] values) {
    double n = values.length;
    double p = Arrays.stream(values).filter(v -> v <= FLAT_MM).count() / n;
    double z = 1.959963984540054;
    double middle = (p + z * z / (2 * n)) / (1 + z * z / n);
    double half = z / (1 + z * z / n) * Math.sqrt(p * (1 - p) / n + z * z / (4 * n * n));
    return new CuttingReport.Share(p, Math.max(0, middle - half), Math.min(1, middle + half));
  }

  private static double percentile(double[] values, double share) {
    double[] sorted = values.clone();
    Arrays.sort(sorted);
    return sorted[(int) Math.min(sorted.length - 1, Math.ceil(share * sorted.length) - 1)];
  }

  private CuttingReport.Part part(Stage s) {
    List<CuttingReport.Effect> effects = new ArrayList<>();
    double worst = 0;
    for (Map.Entry<Setting, Double> e : effects(s).entrySet()) {
      worst += Math.abs(e.getValue()) * accuracy;
    }
    for (int i = 0; i < 4; i++) {
      double effect = effects(s).getOrDefault(s.settings().get(i), 0.0);
      effects.add(new CuttingReport.Effect(s.folds().get(i), effect));
    }
    for (Map.Entry<Integer, Setting> l : s.landing()) {
      if (!s.settings().contains(l.getValue())) {
        double effect = effects(s).getOrDefault(l.getValue(), 0.0);
        effects.add(new CuttingReport.Effect("edge of " + s.behind(), effect));
      }
    }
    FourBar exact = s.links(Map.of());
    FourBar bad = new FourBar(exact.base() - worst, exact.first(), exact.panel(), exact.second());
    FourBar other = new FourBar(exact.base() + worst, exact.first(), exact.panel(), exact.second());
    double jam =
        Math.max(tall(bad.jamHeight(s.lean()), exact), tall(other.jamHeight(s.lean()), exact));
    return new CuttingReport.Part(
        s.piece(),
        Math.abs(exact.misfit(s.lean())),
        exact.jamHeight(s.lean()),
        worst,
        jam,
        1 / exact.panel(),
        thickness.getOrDefault(s.piece(), 0.0),
        effects);
  }

  /** What does not close at all stands as high as its sides. */
  private static double tall(double jam, FourBar links) {
    return Double.isNaN(jam) ? Math.max(links.first(), links.second()) : jam;
  }

  /** How the misfit of a stage changes with each setting, mm per mm; it is linear in all. */
  private Map<Setting, Double> effects(Stage s) {
    Map<Setting, Double> effects = new HashMap<>();
    double exact = s.links(Map.of()).misfit(s.lean());
    for (Setting one : settings) {
      double d = s.links(Map.of(one, 1.0)).misfit(s.lean()) - exact;
      if (Math.abs(d) > 1e-9) {
        effects.put(one, d);
      }
    }
    return effects;
  }

  /** The score with the greatest effect on the stage with the greatest worst case; may be empty. */
  private String watch() {
    String best = "";
    double most = 0;
    for (Stage s : stages) {
      Map<Setting, Double> effects = effects(s);
      double spread = effects.values().stream().mapToDouble(e -> e * e).sum();
      for (int i = 0; i < 4; i++) {
        double here = Math.abs(effects.getOrDefault(s.settings().get(i), 0.0)) + spread / 1000;
        if (here > most + 1e-9) {
          most = here;
          best = s.piece() + "/" + s.folds().get(i);
        }
      }
    }
    return best;
  }
}
