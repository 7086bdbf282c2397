package hingeleaf.outline;

/** A reason to refuse a drawing, on its way to {@link SvgReader}, which adds the place. */
final class Refusal extends Exception {
  private static final long serialVersionUID = 1L;
  private final String kind;
  private final String sentence;

  Refusal(String kind, String sentence) {
    super(sentence, null, false, false);
    this.kind = kind;
    this.sentence = sentence;
  }

  String kind() {
    return kind;
  }

  String sentence() {
    return sentence;
  }
}
