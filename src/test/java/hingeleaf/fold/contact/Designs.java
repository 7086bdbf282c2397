package hingeleaf.fold.contact;

import hingeleaf.card.Flats;
import hingeleaf.card.MadeCard;
import hingeleaf.card.Rest;
import hingeleaf.design.DesignDocument;
import hingeleaf.fold.FlatStates;
import hingeleaf.fold.FoldForward;
import hingeleaf.measure.MakerUnits;
import hingeleaf.measure.Unit;
import hingeleaf.stock.BuiltInBench;
import hingeleaf.structure.Bearings;
import hingeleaf.structure.Structures;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;

/** Cards for tests, from short designs. */
public final class Designs {
  private Designs() {}

  /** One stage: a back and a frame with sides left and right; further lines as given. */
  public static String stage(
      double width, double height, double side, String aperture, String more) {
    return stack(width, height, side, "    - {name: far, " + aperture + "}\n", more);
  }

  public static String stack(double width, double height, double side, String frames, String more) {
    return "hingeleaf: 1\nbase:\n  stacked-frames:\n    width: "
        + width
        + "\n    height: "
        + height
        + "\n    stock: white-300\n    side: "
        + side
        + "\n    tab: 10\n    frames:\n"
        + frames
        + more;
  }

  public static MadeCard card(String yaml) {
    DesignDocument.Outcome read =
        DesignDocument.read("t", yaml.getBytes(StandardCharsets.UTF_8), Structures.FORMS);
    if (read instanceof DesignDocument.Outcome.Wrong w) {
      throw new IllegalArgumentException(w.problems().toString());
    }
    Bearings bearings =
        new Bearings(BuiltInBench.metric(), MakerUnits.of(Unit.MM), (text, h) -> List.of());
    Structures.Built built =
        Structures.build(((DesignDocument.Outcome.Right) read).document(), bearings, Map.of());
    return FoldForward.of(
        built.card().orElseThrow(() -> new IllegalArgumentException(built.problems().toString())));
  }

  /** The rest in which every stage leans one way: 1 right, -1 left. */
  public static Rest leaning(MadeCard made, int... leans) {
    List<Integer> wanted = java.util.Arrays.stream(leans).boxed().toList();
    Flats flats = FlatStates.of(made, 64);
    return flats.states().stream()
        .filter(r -> r.leans().equals(wanted))
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException("no such rest: " + flats.states()));
  }
}
