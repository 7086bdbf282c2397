package hingeleaf.mend;

import hingeleaf.design.Change;
import hingeleaf.design.Node;
import hingeleaf.design.Tree;
import hingeleaf.measure.Length;
import hingeleaf.measure.Reading;
import hingeleaf.pack.Pack;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Gathers the changes of a design's text that give its pieces other sizes. */
final class Written {
  private static final double EPS = 1e-6;

  private final Pack start;
  private final Tree tree;
  private final List<Change> changes = new ArrayList<>();

  Written(Pack start) {
    this.start = start;
    this.tree = start.inputs().design().tree();
  }

  List<Change> changes() {
    return List.copyOf(changes);
  }

  static boolean differs(double a, double b) {
    return Math.abs(a - b) > EPS;
  }

  boolean tells(String path) {
    return tree.find(path).isPresent();
  }

  void put(String path, double mm) {
    changes.add(new Change.Put(path, Said.yaml(start, mm)));
  }

  /** A size that was left to us, or that came out otherwise. */
  void keep(String path, double is, double was) {
    if (!tells(path) || differs(is, was)) {
      put(path, is);
    }
  }

  void text(String path, String yaml) {
    changes.add(new Change.Put(path, yaml));
  }

  String pair(double first, double second) {
    return "[" + Said.yaml(start, first) + ", " + Said.yaml(start, second) + "]";
  }

  /** Two sizes of a layer, where either differs from what it was. */
  void pair(String path, List<Double> was, List<Double> is) {
    for (int i = 0; i < is.size(); i++) {
      if (differs(is.get(i), was.get(i))) {
        text(path, pair(is.get(0), is.get(1)));
        return;
      }
    }
  }

  /** Makes a shape wider and higher by these factors. */
  void scale(String path, double across, double up) {
    if (!differs(across, 1) && !differs(up, 1) || !tells(path)) {
      return;
    }
    for (String one : List.of("circle", "square")) {
      length(path + "." + one).ifPresent(mm -> put(path + "." + one, mm * larger(across, up)));
    }
    for (String two : List.of("rect", "ellipse", "arch", "rounded")) {
      String pair = path + "." + two;
      length(pair + "[0]").ifPresent(mm -> put(pair + "[0]", mm * across));
      length(pair + "[1]").ifPresent(mm -> put(pair + "[1]", mm * up));
    }
    if (tells(path + ".svg")) {
      length(path + ".width").ifPresent(mm -> put(path + ".width", mm * larger(across, up)));
    }
  }

  /** The factor that was measured where the other is 1. */
  private static double larger(double a, double b) {
    return Math.abs(a - 1) >= Math.abs(b - 1) ? a : b;
  }

  private Optional<Double> length(String path) {
    return tree.find(path)
        .filter(Node.Scalar.class::isInstance)
        .flatMap(n -> mm(((Node.Scalar) n).raw()));
  }

  /** A length as it stands in the design; empty where it is none. */
  private Optional<Double> mm(String raw) {
    return Length.read(raw, start.inputs().design().unit()) instanceof Reading.Read r
        ? Optional.of(r.length().mm())
        : Optional.empty();
  }
}
