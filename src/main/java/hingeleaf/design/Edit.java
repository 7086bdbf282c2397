package hingeleaf.design;

/** What came of a change to a text. */
public sealed interface Edit {
  /** It was made; every other character is as it was. */
  record Done(Tree tree) implements Edit {
    /** The new text. */
    public String text() {
      return tree.source().text();
    }
  }

  /** It was not, and why, as a sentence. */
  record Refused(String reason) implements Edit {}
}
