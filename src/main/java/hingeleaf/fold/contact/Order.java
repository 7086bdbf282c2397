package hingeleaf.fold.contact;

/** In which order hands lay the stages of a card flat. */
public enum Order {
  /** All at once, each by the same share of its way. */
  TOGETHER,
  /** One after the other from the front. */
  FRONT_FIRST,
  /** One after the other from the back. */
  BACK_FIRST
}
