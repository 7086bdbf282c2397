package hingeleaf.pack;

import static org.assertj.core.api.Assertions.assertThat;

import hingeleaf.card.Face;
import hingeleaf.card.Join;
import hingeleaf.plan.Step;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * What the hands can reach, on whole examples (rules of the trade; common practice, no source):
 * nothing is glued behind a layer that has closed, windows and mats go on while a piece is flat,
 * words are written before anything is glued to their piece.
 */
class ReachTest {
  private static final List<String> EXAMPLES =
      List.of("fair-winds.yaml", "harvest-supper.yaml", "into-the-wood.yaml");

  private static List<Join.Glue> glues(Pack pack) {
    List<Join.Glue> glues = new ArrayList<>();
    for (Join j : pack.card().joins()) {
      if (j instanceof Join.Glue g) {
        glues.add(g);
      }
    }
    return glues;
  }

  /** For each join the number of the step that closes it; every join is closed by one step. */
  private static Map<String, Integer> closed(Pack pack) {
    Map<String, Integer> closed = new HashMap<>();
    for (Step s : pack.work().steps()) {
      s.joins().forEach(j -> assertThat(closed.put(j, s.number())).as(j).isNull());
    }
    assertThat(closed).hasSize(pack.card().joins().size());
    return closed;
  }

  private static boolean folded(Pack pack, String piece) {
    return !pack.card().piece(piece).scores().isEmpty();
  }

  @ParameterizedTest
  @ValueSource(strings = {"fair-winds.yaml", "harvest-supper.yaml", "into-the-wood.yaml"})
  void nothingIsGluedBehindALayerThatHasClosed(String example) {
    assertThat(EXAMPLES).contains(example);
    Pack pack = SamplePacks.example(example);
    Map<String, Integer> at = closed(pack);
    for (Join.Glue layer : glues(pack)) {
      for (Join.Glue part : glues(pack)) {
        boolean behind =
            folded(pack, layer.a().piece())
                && !folded(pack, part.a().piece())
                && part.b().piece().equals(layer.b().piece())
                && part.b().face() == Face.FRONT;
        if (behind) {
          assertThat(at.get(part.id())).as(part.id()).isLessThan(at.get(layer.id()));
        }
      }
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"fair-winds.yaml", "harvest-supper.yaml", "into-the-wood.yaml"})
  void flatPartsWithoutFoamGoOnBeforeFolding_raisedOnesOnceTheLayerStands(String example) {
    Pack pack = SamplePacks.example(example);
    Map<String, Integer> at = closed(pack);
    for (Join.Glue part : glues(pack)) {
      String base = part.b().piece();
      if (folded(pack, part.a().piece()) || !folded(pack, base)) {
        continue;
      }
      int fold = step(pack, Step.Kind.FOLD, base);
      if (part.raisedBy() == 0) {
        assertThat(at.get(part.id())).as(part.id()).isLessThan(fold);
      } else {
        for (Join.Glue tab : glues(pack)) {
          if (tab.a().piece().equals(base)) {
            assertThat(at.get(part.id())).as(part.id()).isGreaterThan(at.get(tab.id()));
          }
        }
      }
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"fair-winds.yaml", "harvest-supper.yaml", "into-the-wood.yaml"})
  void cutThenScoreThenWriteThenGlue(String example) {
    Pack pack = SamplePacks.example(example);
    for (var piece : pack.card().pieces()) {
      int cut =
          pack.work().steps().stream()
              .filter(s -> CUTTING.contains(s.kind()) && s.pieces().contains(piece.id()))
              .findFirst()
              .orElseThrow(() -> new AssertionError(piece.id() + " is cut by no step"))
              .number();
      for (Step s : pack.work().steps()) {
        if (s.pieces().contains(piece.id()) && !CUTTING.contains(s.kind())) {
          assertThat(s.number()).as(piece.id() + " " + s.kind()).isGreaterThan(cut);
        }
      }
      if (!piece.inks().isEmpty()) {
        int write = step(pack, Step.Kind.WRITE, piece.id());
        Map<String, Integer> at = closed(pack);
        for (Join.Glue g : glues(pack)) {
          if (g.a().piece().equals(piece.id()) || g.b().piece().equals(piece.id())) {
            assertThat(at.get(g.id())).as(g.id()).isGreaterThan(write);
          }
        }
      }
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"fair-winds.yaml", "harvest-supper.yaml", "into-the-wood.yaml"})
  void everyStepSaysANumberAndWhatToCheck(String example) {
    for (Step s : SamplePacks.example(example).work().steps()) {
      assertThat(s.whole()).as(s.title()).matches("(?s).*\\d.*");
      assertThat(s.check()).as(s.title()).isNotBlank();
      assertThat(s.hands()).isPositive();
    }
  }

  private static final Set<Step.Kind> CUTTING = Set.of(Step.Kind.CUT, Step.Kind.SHAPE);

  private static int step(Pack pack, Step.Kind kind, String piece) {
    return pack.work().steps().stream()
        .filter(s -> s.kind() == kind && s.pieces().contains(piece))
        .findFirst()
        .orElseThrow(() -> new AssertionError(piece + " has no step " + kind))
        .number();
  }
}
