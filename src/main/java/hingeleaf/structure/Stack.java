package hingeleaf.structure;

import java.util.ArrayList;
import java.util.List;

/**
 * What a stay must know of the stack that it is made for.
 *
 * @param axes which way the sides stand
 * @param layers names of the back and the frames, back first
 * @param sides depth of the stage in front of each layer but the last, in its middle, mm
 * @param least the same where that stage is shallowest, mm
 * @param papers thickness of each layer, mm
 * @param sidePaths where the design says how deep each stage is
 */
record Stack(
    Axes axes,
    List<String> layers,
    List<Double> sides,
    List<Double> least,
    List<Double> papers,
    List<String> sidePaths) {
  Stack {
    layers = List.copyOf(layers);
    sides = List.copyOf(sides);
    least = List.copyOf(least);
    papers = List.copyOf(papers);
    sidePaths = List.copyOf(sidePaths);
  }

  static Stack of(StackedLayout.Sizes sizes, List<String> sidePaths) {
    List<String> layers = new ArrayList<>(List.of(sizes.back().name()));
    List<Double> sides = new ArrayList<>();
    List<Double> least = new ArrayList<>();
    List<Double> papers = new ArrayList<>(List.of(sizes.back().stock().thickness()));
    for (StackedLayout.Layer f : sizes.frames()) {
      layers.add(f.name());
      double first = f.own().side(0, f.side());
      double second = f.own().side(1, f.side());
      sides.add((first + second) / 2);
      least.add(Math.min(first, second));
      papers.add(f.stock().thickness());
    }
    return new Stack(sizes.axes(), layers, sides, least, papers, sidePaths);
  }

  int frames() {
    return sides.size();
  }

  /**
   * How far a layer really stands in front of the back, middle of the paper to middle: the sides,
   * and one paper for each stage, since a tab lies on the layer behind (common practice, no
   * source).
   */
  double ahead(int layer) {
    double z = 0;
    for (int i = 0; i < layer; i++) {
      z += sides.get(i) + papers.get(i + 1);
    }
    return z;
  }
}
