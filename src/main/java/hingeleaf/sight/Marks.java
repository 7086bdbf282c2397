package hingeleaf.sight;

import hingeleaf.card.Patch;
import java.util.List;
import java.util.Set;

/**
 * What a drawing points out.
 *
 * @param fresh ids of the pieces that are new at this step, to be toned
 * @param glued patches to be shaded where the face that takes the glue is seen
 */
public record Marks(Set<String> fresh, List<Patch> glued) {
  public static final Marks NONE = new Marks(Set.of(), List.of());

  public Marks {
    fresh = Set.copyOf(fresh);
    glued = List.copyOf(glued);
  }
}
