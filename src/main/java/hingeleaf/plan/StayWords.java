package hingeleaf.plan;

import hingeleaf.card.Card;
import hingeleaf.card.Join;
import hingeleaf.card.Piece;
import hingeleaf.card.Stay;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** The step that sets a stay and lets it go again, as it is done each time the card is posted. */
final class StayWords {
  private static final double SET_MINUTES = 2;

  private final Card card;

  StayWords(Card card) {
    this.card = card;
  }

  Step set(Stay stay) {
    Piece piece = card.piece(stay.piece());
    String called = Says.called(piece);
    List<String> lines = new ArrayList<>();
    lines.add("To set it: " + set(stay, called));
    lines.add("Before posting: " + release(stay, called));
    return Step.loose(
        Step.Kind.FINISH,
        List.of(piece.id()),
        List.of(),
        "Set " + called + " and let it go again",
        "This " + stay.word() + " keeps the standing card from leaning to the side.",
        lines,
        "set, no layer can be pushed aside; let go, the card lies flat as before.",
        List.of(),
        SET_MINUTES,
        0);
  }

  private String set(Stay stay, String called) {
    return switch (stay.word()) {
      case "base tab" ->
          "stand the card up, bring "
              + called
              + " forward under it, fold its tongues up and tuck them from the front into the"
              + " slits of "
              + caught(stay)
              + ".";
      case "belly strip" ->
          "stand the card up, lay "
              + called
              + " forward over it and push its end from the front through the slit of "
              + caught(stay)
              + ".";
      case "slot-lock" ->
          "stand the card up and press "
              + called
              + " on edge over "
              + caught(stay)
              + ", each notch over its layer and each slit round the strip. Open a tight slit by"
              + " drawing the knife through it once more.";
      default ->
          "stand the card up and fold "
              + called
              + " down until it lies level between the two sides of its stage.";
    };
  }

  private static String release(Stay stay, String called) {
    return switch (stay.word()) {
      case "base tab" ->
          "pull the tongues out, lay them level and fold "
              + called
              + " back, flat behind the card.";
      case "belly strip" -> "unhook " + called + " and fold it back, flat behind the card.";
      case "slot-lock" ->
          "lift " + called + " off and lay it flat on the back, inside the card along that edge.";
      default -> "fold " + called + " up, flat against the layer that it hangs on.";
    };
  }

  /** The layers that it catches, back first. */
  private String caught(Stay stay) {
    Set<String> names = new LinkedHashSet<>();
    for (Join j : card.joins()) {
      if (j instanceof Join.Passage p && stay.catches().contains(p.id())) {
        names.add(p.slit().piece());
      }
    }
    return Says.names(List.copyOf(names), "layers");
  }
}
