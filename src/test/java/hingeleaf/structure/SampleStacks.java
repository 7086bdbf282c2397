package hingeleaf.structure;

import hingeleaf.card.Card;
import hingeleaf.card.MadeCard;
import hingeleaf.fold.FoldForward;
import hingeleaf.stock.Grain;
import hingeleaf.stock.Stock;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Plain stacks for tests of the stages above: no openings, sides left and right, tabs folded in.
 */
public final class SampleStacks {
  private static final List<String> NAMES = List.of("back", "far", "middle", "near");

  private SampleStacks() {}

  public static Stock card(double thickness) {
    return new Stock(
        "card",
        "card",
        Stock.Kind.CARD,
        300,
        thickness,
        Stock.Faces.alike("#ffffff"),
        List.of(),
        3);
  }

  /** A back and up to three frames called far, middle, near. */
  public static MadeCard plain(
      double width, double height, double side, double tab, int frames, double thickness) {
    return stacked(
        width,
        height,
        Collections.nCopies(frames, side),
        NAMES.subList(1, 1 + frames),
        tab,
        thickness);
  }

  /** A back and frames called 1, 2, 3 ..., each with sides of its own depth. */
  public static MadeCard ofDepths(double width, double height, List<Double> sides, double tab) {
    List<String> names = IntStream.rangeClosed(1, sides.size()).mapToObj(String::valueOf).toList();
    return stacked(width, height, sides, names, tab, 0.3);
  }

  private static MadeCard stacked(
      double width,
      double height,
      List<Double> sides,
      List<String> names,
      double tab,
      double thickness) {
    Stock stock = card(thickness);
    List<StackedLayout.Layer> layers = new ArrayList<>();
    for (int i = 0; i < sides.size(); i++) {
      layers.add(
          new StackedLayout.Layer(
              names.get(i), sides.get(i), List.of(), stock, Grain.ANY, "frames"));
    }
    StackedLayout.Laid laid =
        StackedLayout.of(
            new StackedLayout.Sizes(
                width,
                height,
                Axes.LEFT_RIGHT,
                tab,
                true,
                new StackedLayout.Layer("back", 0, List.of(), stock, Grain.ANY, "back"),
                layers,
                "pva"));
    return FoldForward.of(new Card("test", laid.roots(), laid.pieces(), laid.joins()));
  }

  /** How many stages lie behind a piece. */
  public static int stage(String piece) {
    return NAMES.indexOf(piece);
  }

  /** The depth of the first stage, read off the made card. */
  public static double side(MadeCard made) {
    return made.panels().stream()
        .filter(p -> p.id().equals("far/panel"))
        .findFirst()
        .orElseThrow()
        .made()
        .shift()
        .z();
  }
}
