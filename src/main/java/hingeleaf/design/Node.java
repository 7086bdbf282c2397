package hingeleaf.design;

import hingeleaf.finding.Place;
import java.util.List;
import java.util.Optional;

/** A value in a document as it was written, with where it stands. */
public sealed interface Node {
  /** Where it stands in the text: quotes and brackets included, spaces around it not. */
  Span span();

  /** Line and column of its first character. */
  Place place();

  Trail trail();

  /** Its path, such as {@code base.stacked-frames.frames[1].aperture}. */
  default String path() {
    return trail().toString();
  }

  /** How a maker would call this sort of value. */
  String sort();

  /** How a scalar is written. */
  enum Style {
    PLAIN,
    QUOTED,
    /** Over several lines after a bar or an angle. */
    BLOCK
  }

  /**
   * A single value.
   *
   * @param raw the text without its quotes; numbers as they were written; empty where nothing
   *     stands
   */
  record Scalar(String raw, Style style, Span span, Place place, Trail trail) implements Node {
    /** Whether nothing at all stands here, not even quotes. */
    public boolean blank() {
      return raw.isEmpty() && style == Style.PLAIN;
    }

    @Override
    public String sort() {
      return blank() ? "nothing" : "`" + Wording.shortened(raw) + "`";
    }
  }

  /**
   * A list.
   *
   * @param flow whether written in square brackets
   * @param dashes column of the dashes, from 0, where written as lines; else -1
   */
  record Items(List<Node> items, boolean flow, int dashes, Span span, Place place, Trail trail)
      implements Node {
    public Items {
      items = List.copyOf(items);
    }

    @Override
    public String sort() {
      return "a list";
    }
  }

  /**
   * Keys with their values, in the order written.
   *
   * @param flow whether written in curly brackets
   */
  record Fields(List<Entry> entries, boolean flow, Span span, Place place, Trail trail)
      implements Node {
    public Fields {
      entries = List.copyOf(entries);
    }

    /** The value of a key. */
    public Optional<Node> get(String key) {
      return entry(key).map(Entry::value);
    }

    /** A key with its value. */
    public Optional<Entry> entry(String key) {
      for (Entry e : entries) {
        if (e.key().raw().equals(key)) {
          return Optional.of(e);
        }
      }
      return Optional.empty();
    }

    @Override
    public String sort() {
      return "keys with values";
    }
  }

  /** One key and what stands behind it. */
  record Entry(Scalar key, Node value) {}
}
