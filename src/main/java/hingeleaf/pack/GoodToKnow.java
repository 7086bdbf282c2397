package hingeleaf.pack;

import hingeleaf.fold.accuracy.CuttingReport;
import hingeleaf.fold.contact.Touch;
import hingeleaf.fold.contact.Way;
import hingeleaf.fold.stand.Stand;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** What is good to know of a card that has no fault: sentences for a maker. */
public final class GoodToKnow {
  private final Pack pack;

  private GoodToKnow(Pack pack) {
    this.pack = pack;
  }

  /**
   * Some sentences: what sets the thickness, how exactly to cut, how it stands.
   *
   * @param pack not blocked
   */
  public static List<String> of(Pack pack) {
    GoodToKnow know = new GoodToKnow(pack);
    List<String> all = new ArrayList<>();
    pack.touches().ifPresent(w -> know.resting(w, all));
    all.addAll(DoorFindings.told(pack));
    know.cutting(all);
    all.add(know.standing());
    return all;
  }

  private void resting(Way way, List<String> all) {
    Map<String, Double> highest = new LinkedHashMap<>();
    for (Touch t : way.touches()) {
      if (t.kind() == Touch.Kind.RESTS_ON) {
        highest.merge(t.part(), t.height(), Math::max);
      }
    }
    highest.entrySet().stream()
        .max(Map.Entry.comparingByValue())
        .filter(e -> e.getValue() > 1)
        .ifPresent(
            e ->
                all.add(
                    "Laid flat, the layers rest on what is raised; the highest is "
                        + pack.words(e.getKey())
                        + ", "
                        + pack.inputs().wants().units().fine(e.getValue())
                        + "."));
  }

  private void cutting(List<String> all) {
    CuttingReport r = pack.cutting();
    if (r.parts().isEmpty()) {
      return;
    }
    String bench = "On your bench (cuts and scores true to " + fine(r.accuracy()) + ") ";
    all.add(
        bench
            + percent(r.standing().share())
            + " % lie flat within "
            + fine(1)
            + " if glued standing; glued flat all do, and in "
            + percent(r.flat().share())
            + " % every second tab lands within "
            + fine(1)
            + " of its edge"
            + watch(r)
            + ".");
    all.add(
        "("
            + r.trials()
            + " trials from seed "
            + r.seed()
            + "; 95 % sure: "
            + interval(r.standing())
            + " and "
            + interval(r.flat())
            + ".)");
  }

  private String watch(CuttingReport r) {
    return r.watch().isEmpty()
        ? ""
        : "; the score of " + pack.words(r.watch()) + " is the one to watch";
  }

  private String fine(double mm) {
    return pack.inputs().wants().units().fine(mm);
  }

  private static long percent(double share) {
    return Math.round(100 * share);
  }

  private static String interval(CuttingReport.Share s) {
    return percent(s.least()) + " to " + percent(s.most()) + " %";
  }

  private String standing() {
    Stand s = pack.stand();
    return switch (s.verdict()) {
      case STANDS -> StayFindings.stands(pack) + tips(s);
      case LEANS ->
          "It stands, but can lean to the side: each stage is free. It needs a stay" + tips(s);
      case SINKS -> "Its own weight folds it: it needs a stay, or lies.";
      case TIPS -> "It does not stand by itself: lean it, or give it a strut.";
    };
  }

  private static String tips(Stand s) {
    double least = Math.toDegrees(Math.min(s.forwards(), s.backwards()));
    String way = s.forwards() < s.backwards() ? "forwards" : "backwards";
    return "; it falls over when tipped " + Math.round(least) + " degrees " + way + ".";
  }
}
