package hingeleaf.design;

import hingeleaf.finding.Problem;
import hingeleaf.measure.Unit;
import java.util.List;

/**
 * A bench file that could be read.
 *
 * @param values what it says, under {@link BenchForm#DOCUMENT}
 */
public record BenchDocument(Tree tree, Unit unit, Values values) {
  /** What came of reading a bench. */
  public sealed interface Outcome {
    /** It could be read. */
    record Right(BenchDocument document) implements Outcome {}

    /**
     * It could not.
     *
     * @param problems all that is wrong, at least one, each with its place
     */
    record Wrong(List<Problem> problems) implements Outcome {
      public Wrong {
        problems = List.copyOf(problems);
      }
    }
  }

  /** Reads a bench; see {@link DesignDocument#read}. */
  public static Outcome read(String source, byte[] bytes) {
    TreeReading reading = Tree.read(source, bytes);
    if (reading instanceof TreeReading.Illegible u) {
      return new Outcome.Wrong(u.problems());
    }
    Tree tree = ((TreeReading.Legible) reading).tree();
    if (FileKind.of(tree) != FileKind.BENCH) {
      return new Outcome.Wrong(List.of(FileKind.BENCH.expected(tree)));
    }
    Unit unit = DesignDocument.unitOf(tree);
    FormReader reader = new FormReader(unit);
    Values values = reader.read(BenchForm.DOCUMENT, tree.root());
    return reader.problems().isEmpty()
        ? new Outcome.Right(new BenchDocument(tree, unit, values))
        : new Outcome.Wrong(reader.problems());
  }
}
