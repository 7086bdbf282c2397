package hingeleaf.card;

import java.util.List;

/**
 * A card folded from its pieces.
 *
 * @param card what it was folded from
 * @param panels the panels of all pieces, in the order of the mechanism's facets
 * @param mechanism in the made pose
 * @param misfits one for each glue that closes a loop, largest gap first
 */
public record MadeCard(Card card, List<Panel> panels, Mechanism mechanism, List<Misfit> misfits) {
  public MadeCard {
    panels = List.copyOf(panels);
    misfits = List.copyOf(misfits);
  }

  /**
   * A panel by its id.
   *
   * @throws IllegalArgumentException if the card has none such
   */
  public Panel panel(String id) {
    return panels.stream()
        .filter(p -> p.id().equals(id))
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException("no panel " + id));
  }
}
