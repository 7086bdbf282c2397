package hingeleaf.web;

import java.util.List;
import java.util.Optional;

/** The finished cards that come with the tool, to look at and to start from. */
final class Examples {
  /**
   * A finished card.
   *
   * @param drawings names of the SVG files that it needs
   */
  record Example(String name, String says, List<String> drawings) {}

  static final List<Example> ALL =
      List.of(
          new Example(
              "fair-winds",
              "Three round openings, a boat behind them",
              List.of("boat.svg", "gull.svg")),
          new Example(
              "harvest-supper",
              "An invitation in inches that opens like a stage",
              List.of("hare.svg")),
          new Example("open-house", "Double doors on a card that stands by itself", List.of()),
          new Example(
              "into-the-wood",
              "Twelve frames deep, for a patient afternoon",
              List.of("fir.svg", "gull.svg", "hare.svg")));

  private Examples() {}

  static Optional<Example> named(String name) {
    return ALL.stream().filter(e -> e.name().equals(name)).findFirst();
  }

  static byte[] design(Example e) {
    return Assets.bytes("/hingeleaf/web/examples/" + e.name() + ".yaml");
  }

  static byte[] drawing(String name) {
    return Assets.bytes("/hingeleaf/web/examples/" + name);
  }
}
