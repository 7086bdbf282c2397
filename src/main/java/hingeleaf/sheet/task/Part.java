package hingeleaf.sheet.task;

import java.util.List;

/** A part of a sheet in the units of a {@link Task}. */
public sealed interface Part {
  /** Width. */
  int w();

  /** Height. */
  int h();

  /** A piece of a type, as it lies. */
  record Laid(int type, boolean turned, int w, int h) implements Part {}

  /** Nothing. */
  record Free(int w, int h) implements Part {}

  /** Cut into parts that lie side by side (across) or stacked, and fill it exactly. */
  record Split(boolean across, int w, int h, List<Part> parts) implements Part {
    public Split {
      parts = List.copyOf(parts);
    }
  }
}
