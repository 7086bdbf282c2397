package hingeleaf.pack;

import hingeleaf.fold.accuracy.CuttingReport;
import hingeleaf.measure.MakerUnits;
import java.util.ArrayList;
import java.util.List;

/**
 * How exactly a card must be cut, as sentences for a maker: first the way of gluing that works and
 * how often, then why not the other, then on what this stands.
 */
public final class CuttingWords {
  private final CuttingReport r;
  private final Pack pack;
  private final MakerUnits units;

  private CuttingWords(Pack pack) {
    this.pack = pack;
    this.r = pack.cutting();
    this.units = pack.inputs().wants().units();
  }

  /**
   * The sentences; none where nothing can jam.
   *
   * @param pack not blocked
   */
  public static List<String> of(Pack pack) {
    CuttingWords words = new CuttingWords(pack);
    return words.r.parts().isEmpty() ? List.of() : words.all();
  }

  private List<String> all() {
    List<String> all = new ArrayList<>();
    all.add(glueFlat());
    watch(all);
    if (r.standing().share() < r.flat().share()) {
      all.add(notStanding());
    }
    all.add(thickness());
    all.add(law());
    return all;
  }

  private String glueFlat() {
    return "Glue each frame's first tab, lay the frame flat, and close its second tab where it"
        + " falls: so glued "
        + percent(r.flat().share())
        + " % of cards made on your bench (cuts and scores true to "
        + fine(r.accuracy())
        + ") lie flat, and in 95 of 100 every second tab lands within "
        + fine(Math.ceil(r.shift() * 10) / 10)
        + " of its edge ("
        + percent(r.lands().share())
        + " % within "
        + fine(1)
        + ").";
  }

  private void watch(List<String> all) {
    if (r.watch().isEmpty()) {
      return;
    }
    String piece = r.watch().substring(0, r.watch().lastIndexOf('/'));
    String fold = r.watch().substring(r.watch().lastIndexOf('/') + 1);
    double most =
        r.parts().stream()
            .filter(p -> p.piece().equals(piece))
            .flatMap(p -> p.effects().stream())
            .filter(e -> e.fold().equals(fold))
            .mapToDouble(e -> Math.abs(e.perMm()))
            .max()
            .orElse(1);
    all.add(
        "The score of "
            + pack.words(r.watch())
            + " is the one to watch: "
            + fine(1)
            + " off there moves a tab by "
            + fine(most)
            + ".");
  }

  private String notStanding() {
    return "Do not glue frames standing, both tabs set on their edges: only "
        + percent(r.standing().share())
        + " % would lie flat within "
        + fine(1)
        + ".";
  }

  private String thickness() {
    double most = r.parts().stream().mapToDouble(CuttingReport.Part::thickness).max().orElse(0);
    return most < 1e-6
        ? "The card's own thickness forces nothing between standing and flat: both sides bend alike."
        : "The card's own thickness forces " + fine(most) + " between standing and flat.";
  }

  private String law() {
    double misfit = r.parts().stream().mapToDouble(CuttingReport.Part::worstMisfit).max().orElse(0);
    double jam = r.parts().stream().mapToDouble(CuttingReport.Part::worstJam).max().orElse(0);
    return "("
        + r.trials()
        + " trials from seed "
        + r.seed()
        + ": every setting off by an error of its own, any within "
        + fine(r.accuracy())
        + " as likely, pieces cut at one setting alike; 95 % sure: "
        + interval(r.flat())
        + ", "
        + interval(r.lands())
        + " and "
        + interval(r.standing())
        + ". At worst a tab lands "
        + fine(misfit)
        + " off, and a frame glued standing jams "
        + fine(jam)
        + " up.)";
  }

  private String fine(double mm) {
    return units.fine(mm);
  }

  /** Whole; to a tenth near the ends, so that all and none are said of all and none only. */
  private static String percent(double share) {
    return share > 0 && share < 1
        ? tenth(Math.max(0.001, Math.min(0.999, share)))
        : String.valueOf(Math.round(100 * share));
  }

  /** "32 to 36 %"; to a tenth near the ends, where whole numbers hide the difference. */
  private static String interval(CuttingReport.Share s) {
    return tenth(s.least()) + " to " + tenth(s.most()) + " %";
  }

  private static String tenth(double share) {
    double percent = 100 * share;
    boolean end = percent < 1 || percent > 99;
    String tenth = String.valueOf(Math.round(percent * 10) / 10.0);
    return end && !tenth.endsWith(".0") ? tenth : String.valueOf(Math.round(percent));
  }
}
