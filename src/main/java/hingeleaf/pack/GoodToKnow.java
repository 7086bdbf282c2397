package hingeleaf.pack;

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
    all.addAll(CuttingWords.of(pack));
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
    long least = Math.round(Math.toDegrees(Math.min(s.forwards(), s.backwards())));
    String degrees = least == 1 ? " degree " : " degrees ";
    String way = s.forwards() < s.backwards() ? "forwards" : "backwards";
    return "; it falls over when tipped " + least + degrees + way + ".";
  }
}
