package hingeleaf.design;

import hingeleaf.finding.Problem;
import hingeleaf.measure.NearestWord;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** What a file is, told by its top key. */
public enum FileKind {
  /** The design of a card. */
  DESIGN("hingeleaf", "a design, which begins with `hingeleaf: 1`"),
  /** What the maker owns. */
  BENCH("bench", "a bench, which begins with `bench: 1`"),
  /** Panels hinged on one another, without a card. */
  PANELS("panels", "a file of panels"),
  /** Rectangles to lay on sheets, without a card. */
  PIECES("pieces", "a file of pieces"),
  /** None of them. */
  OTHER("", "a file of another kind");

  private final String key;
  private final String described;

  FileKind(String key, String described) {
    this.key = key;
    this.described = described;
  }

  /** The top key that tells it. */
  public String key() {
    return key;
  }

  /** The kind of a file. */
  public static FileKind of(Tree tree) {
    if (tree.root() instanceof Node.Fields fields) {
      for (FileKind kind : values()) {
        if (fields.get(kind.key).isPresent() && kind != OTHER) {
          return kind;
        }
      }
    }
    return OTHER;
  }

  /** The problem to tell where a file of this kind was expected and another was given. */
  public Problem expected(Tree tree) {
    FileKind found = of(tree);
    String message =
        "expected " + described + "; found " + (found == OTHER ? found(tree) : found.described);
    return Problem.blocks("wrong-file", "", "", message).at(tree.root().place());
  }

  private static String found(Tree tree) {
    if (!(tree.root() instanceof Node.Fields fields) || fields.entries().isEmpty()) {
      return tree.root().sort();
    }
    String first = fields.entries().get(0).key().raw();
    List<String> keys = Arrays.stream(values()).filter(k -> k != OTHER).map(FileKind::key).toList();
    Optional<String> near = NearestWord.to(first, keys);
    return "the key `" + Wording.shortened(first) + "`" + Wording.didYouMean(near);
  }
}
