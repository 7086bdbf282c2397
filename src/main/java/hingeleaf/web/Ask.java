package hingeleaf.web;

import hingeleaf.pack.Pack;
import hingeleaf.pack.Stopped;
import java.util.HashSet;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.concurrent.atomic.AtomicBoolean;
import org.jspecify.annotations.Nullable;

/**
 * One thing that is being reckoned, and the packs that it works on. Packs are shared; the work on
 * one stops when everybody who wanted it has stopped wanting it.
 */
final class Ask {
  private static final ThreadLocal<@Nullable Ask> CURRENT = new ThreadLocal<>();

  private final Set<Held> uses = new HashSet<>();
  private boolean over;

  /** A pack, who works on it, and whether that work is to stop. */
  static final class Held {
    private final AtomicBoolean halt;
    final Pack pack;
    private final Set<Ask> users = new HashSet<>();

    /**
     * @param halt what the pack asks whether to stop
     */
    Held(Pack pack, AtomicBoolean halt) {
      this.pack = pack;
      this.halt = halt;
    }

    /** Whether its work was stopped, so that a fresh one must take its place. */
    boolean halted() {
      return halt.get();
    }
  }

  /** Notes that the ask of this thread, if there is one, works on a pack. */
  static void uses(Held held) {
    Ask ask = CURRENT.get();
    if (ask != null) {
      ask.use(held);
    }
  }

  private void use(Held held) {
    synchronized (Ask.class) {
      if (over) {
        throw new Stopped();
      }
      uses.add(held);
      held.users.add(this);
    }
  }

  /** Makes this the ask of the thread while the work is done. */
  <T> T during(Callable<T> work) throws Exception {
    CURRENT.set(this);
    try {
      return work.call();
    } finally {
      CURRENT.remove();
      end(false);
    }
  }

  /** Stops the work that nobody else is waiting for. */
  void stop() {
    end(true);
  }

  private void end(boolean stop) {
    synchronized (Ask.class) {
      over |= stop;
      for (Held held : uses) {
        if (held.users.remove(this) && stop && held.users.isEmpty()) {
          held.halt.set(true);
        }
      }
      uses.clear();
    }
  }
}
