package hingeleaf.card;

import java.util.List;

/**
 * A state in which the card can lie in an envelope: every freedom as far as it goes.
 *
 * @param posed where the panels are
 * @param leans for each freedom in the card's order: -1 leans left (or down), 1 leans right (or
 *     up); empty where the freedoms are no leans
 * @param width of the footprint, mm
 * @param height of the footprint, mm
 * @param limp most stacked paper in any one spot, mm, foam included
 * @param rigid thickest chain of panels that lie above each other, mm, as stiff card stacks
 * @param heldBy the part whose layers make the pile that thick; empty where no pile was computed
 */
public record Rest(
    Posed posed,
    List<Integer> leans,
    double width,
    double height,
    double limp,
    double rigid,
    String heldBy) {
  public Rest {
    leans = List.copyOf(leans);
  }
}
