package hingeleaf.design;

import hingeleaf.finding.Problem;
import hingeleaf.measure.Unit;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/**
 * A design file that could be read.
 *
 * @param tree the text with the place of everything
 * @param unit how its bare numbers are meant
 * @param values what it says, under {@link DesignForms#document}
 */
public record DesignDocument(Tree tree, Unit unit, Values values) {
  /** What came of reading a design. */
  public sealed interface Outcome {
    /** It could be read. */
    record Right(DesignDocument document) implements Outcome {}

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

  /**
   * Reads a design.
   *
   * @param source name of the file, for places
   * @param bytes UTF-8; more than {@link TreeReading#LIMIT_BYTES} are refused
   */
  public static Outcome read(String source, byte[] bytes, DesignForms forms) {
    TreeReading reading = Tree.read(source, bytes);
    if (reading instanceof TreeReading.Illegible u) {
      return new Outcome.Wrong(u.problems());
    }
    return read(((TreeReading.Legible) reading).tree(), forms);
  }

  /** The same for a text that has been read into its tree. */
  public static Outcome read(Tree tree, DesignForms forms) {
    if (FileKind.of(tree) != FileKind.DESIGN) {
      return new Outcome.Wrong(List.of(FileKind.DESIGN.expected(tree)));
    }
    Unit unit = unitOf(tree);
    FormReader reader = new FormReader(unit);
    Values values = reader.read(forms.document(), tree.root());
    return reader.problems().isEmpty()
        ? new Outcome.Right(new DesignDocument(tree, unit, values))
        : new Outcome.Wrong(reader.problems());
  }

  /** The unit that a file names; millimetres where it names none, or nonsense. */
  static Unit unitOf(Tree tree) {
    return Optional.of(tree.root())
        .filter(Node.Fields.class::isInstance)
        .flatMap(n -> ((Node.Fields) n).get("unit"))
        .filter(Node.Scalar.class::isInstance)
        .flatMap(n -> Unit.named(((Node.Scalar) n).raw()))
        .orElse(Unit.MM);
  }

  public String title() {
    return values.text("title");
  }

  /** The base, by its name and form. */
  public Values.Choice base() {
    return values.choice("base");
  }

  public List<Values.Choice> mechanisms() {
    return values.choices("mechanisms");
  }

  /** Values of {@link Attachments#MAT}. */
  public List<Values> mats() {
    return values.forms("mats");
  }

  /** Values of {@link Attachments#CUT_OUT}. */
  public List<Values> cutOuts() {
    return values.forms("cut-outs");
  }

  /** Values of {@link Attachments#WORDS}. */
  public List<Values> words() {
    return values.forms("words");
  }

  /** Values of {@link Attachments#WINDOW}. */
  public List<Values> windows() {
    return values.forms("windows");
  }

  /** Values of {@link Attachments#MESSAGE}. */
  public Optional<Values> message() {
    return values.has("message") ? Optional.of(values.form("message")) : Optional.empty();
  }

  /** The files that it draws outlines from: every value of a key {@code svg}, in order of name. */
  public Set<String> drawings() {
    Set<String> names = new TreeSet<>();
    collect(tree.root(), names);
    return names;
  }

  private static void collect(Node node, Set<String> names) {
    if (node instanceof Node.Items items) {
      items.items().forEach(i -> collect(i, names));
    } else if (node instanceof Node.Fields fields) {
      for (Node.Entry e : fields.entries()) {
        if (e.key().raw().equals("svg") && e.value() instanceof Node.Scalar s) {
          names.add(s.raw());
        } else {
          collect(e.value(), names);
        }
      }
    }
  }
}
