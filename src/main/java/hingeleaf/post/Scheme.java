package hingeleaf.post;

import java.util.List;

/**
 * The classes of one post.
 *
 * @param name a stable word, such as {@code usps}
 * @param title as shown
 * @param country two letters (ISO 3166-1); empty for the international one
 * @param inches whether its limits are written in inches and ounces
 * @param classes cheapest first, ranks rising
 * @param advice what the maker is told beside every answer
 */
public record Scheme(
    String name,
    String title,
    String country,
    boolean inches,
    List<PostClass> classes,
    String advice) {
  public Scheme {
    classes = List.copyOf(classes);
    if (classes.isEmpty()) {
      throw new IllegalArgumentException(name + ": a post needs at least one class");
    }
    for (int i = 1; i < classes.size(); i++) {
      if (classes.get(i).rank() <= classes.get(i - 1).rank()) {
        throw new IllegalArgumentException(name + ": classes must stand cheapest first");
      }
    }
  }
}
