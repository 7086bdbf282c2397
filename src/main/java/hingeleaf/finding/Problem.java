package hingeleaf.finding;

import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * One thing that is wrong with, doubtful about, or worth knowing of a design or a card.
 *
 * @param kind a stable word for the sort of problem, such as {@code tab-shows}; never shown alone
 * @param part the piece or part that a maker would point at; empty for the whole
 * @param origin path of the cause in the design, such as {@code
 *     base.stacked-frames.frames[1].aperture}; empty for the whole
 * @param place where the cause stands in the file, or null when it is in no file
 * @param message a sentence that a maker understands: what, how much, and what to do
 * @param numbers the figures of the message by name, in mm, g or rad
 * @param wants what would cure it; empty where nothing simple is known
 */
public record Problem(
    String kind,
    Level level,
    String part,
    String origin,
    @Nullable Place place,
    String message,
    Map<String, Double> numbers,
    List<Want> wants) {
  public Problem {
    numbers = Map.copyOf(numbers);
    wants = List.copyOf(wants);
  }

  public static Problem blocks(String kind, String part, String origin, String message) {
    return new Problem(kind, Level.BLOCKS, part, origin, null, message, Map.of(), List.of());
  }

  public static Problem warns(String kind, String part, String origin, String message) {
    return new Problem(kind, Level.WARNS, part, origin, null, message, Map.of(), List.of());
  }

  public static Problem notes(String kind, String part, String origin, String message) {
    return new Problem(kind, Level.NOTES, part, origin, null, message, Map.of(), List.of());
  }

  public Problem at(@Nullable Place where) {
    return new Problem(kind, level, part, origin, where, message, numbers, wants);
  }

  public Problem with(Map<String, Double> figures) {
    return new Problem(kind, level, part, origin, place, message, figures, wants);
  }

  public Problem wanting(Want... cures) {
    return new Problem(kind, level, part, origin, place, message, numbers, List.of(cures));
  }
}
