package hingeleaf.pack;

import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/** A value that is worked out when it is first asked for, once, and then kept. */
final class Kept<T> implements Supplier<T> {
  private @Nullable Supplier<T> work;
  private @Nullable T value;

  Kept(Supplier<T> work) {
    this.work = work;
  }

  @Override
  public synchronized T get() {
    T known = value;
    if (known != null) {
      return known;
    }
    Supplier<T> todo = work;
    if (todo == null) {
      throw new IllegalStateException("a stage has asked for itself");
    }
    work = null;
    try {
      T made = todo.get();
      value = made;
      return made;
    } catch (RuntimeException e) {
      work = todo; // whoever asks next is told the true fault, not that it is being worked on
      throw e;
    }
  }

  /** Whether it has been worked out. */
  synchronized boolean known() {
    return value != null;
  }
}
