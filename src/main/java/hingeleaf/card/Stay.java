package hingeleaf.card;

import hingeleaf.geom.Rigid;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * A piece that is set when the card stands, so that its stages cannot lean, and put away before the
 * card is laid flat. The pieces and joins describe it set; what it catches are passages, which hold
 * nothing by themselves, so that the card of the joins is the card with its stay released.
 *
 * @param piece id of its piece
 * @param word what makers call its sort: "base tab"
 * @param catches ids of the passages that hold while it is set
 * @param away for each of its folds that moves when it is put away, by joint id ("piece/score"),
 *     the total fold angle then, rad, signed as {@link Score#made}
 * @param laid for a loose one where it lies in the flat card, from piece coordinates to the world;
 *     null for one that hangs on the card
 * @param play how far what it catches can still move sideways, mm
 */
public record Stay(
    String piece,
    String word,
    List<String> catches,
    Map<String, Double> away,
    @Nullable Rigid laid,
    double play) {
  public Stay {
    catches = List.copyOf(catches);
    away = Map.copyOf(away);
  }

  /** Whether it is taken off before posting. */
  public boolean loose() {
    return laid != null;
  }
}
