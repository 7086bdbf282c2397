package hingeleaf.measure;

/** What came of reading a length: the length, or what is wrong. */
public sealed interface Reading {
  /** It could be read. */
  record Read(Length length) implements Reading {}

  /**
   * It could not.
   *
   * @param message what is wrong and what is expected, without place: "`10 km` has a unit that is
   *     not known"
   * @param suggestion the nearest right word or writing; empty where none is near
   */
  record Fault(String message, String suggestion) implements Reading {
    /** Message and suggestion as one sentence. */
    public String sentence() {
      return suggestion.isEmpty() ? message : message + " - did you mean `" + suggestion + "`?";
    }
  }
}
