package hingeleaf.design;

import org.jspecify.annotations.Nullable;

/**
 * The way from the top of a document to one value, such as {@code
 * base.stacked-frames.frames[1].aperture}; the top itself is the empty trail.
 */
public final class Trail {
  public static final Trail TOP = new Trail(null, "", -1);

  private final @Nullable Trail parent;
  private final String key;
  private final int index;

  private Trail(@Nullable Trail parent, String key, int index) {
    this.parent = parent;
    this.key = key;
    this.index = index;
  }

  public Trail key(String next) {
    return new Trail(this, next, -1);
  }

  public Trail item(int next) {
    return new Trail(this, "", next);
  }

  /** The path as text; made only when asked for, because files may nest deep. */
  @Override
  public String toString() {
    StringBuilder text = new StringBuilder();
    append(text);
    return text.toString();
  }

  private void append(StringBuilder text) {
    if (parent == null) {
      return;
    }
    parent.append(text);
    if (index >= 0) {
      text.append('[').append(index).append(']');
    } else {
      text.append(text.isEmpty() ? "" : ".").append(key);
    }
  }
}
