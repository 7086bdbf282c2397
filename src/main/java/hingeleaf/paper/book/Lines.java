package hingeleaf.paper.book;

import hingeleaf.geom.Vec2;
import hingeleaf.paper.Fonts;
import hingeleaf.paper.Look;
import hingeleaf.paper.Mark;
import hingeleaf.paper.Mark.Anchor;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Words of several voices broken into lines, one slab each, without widows and orphans. */
final class Lines {
  /** From the top of a line of body type to its baseline. */
  static final double BASE = Look.LEAD * 0.74;

  private static final Pattern UNIT =
      Pattern.compile(" (?:mm|cm²?|in|ft|m|g|oz|minutes?|seconds|hours|%)(?![\\p{L}\\d])");

  private final double width;
  private final Fonts fonts;
  private final List<List<Mark>> lines = new ArrayList<>();
  private double x;
  private double space;

  /** Whether the last word can take the next one on: it is of the same span and line. */
  private boolean running;

  private Lines(double width, Fonts fonts) {
    this.width = width;
    this.fonts = fonts;
    lines.add(new ArrayList<>());
  }

  static List<Slab> set(List<Span> spans, double width, Fonts fonts, double before) {
    Lines setting = new Lines(width, fonts);
    double size = 0;
    for (Span span : spans) {
      setting.add(span);
      size = Math.max(size, span.voice().size());
    }
    double lead = Look.LEAD * Math.min(1, size / Look.BODY);
    return setting.slabs(before, size == 0 ? Look.LEAD : lead);
  }

  /** Breaks at spaces; words that follow a span without a space stay at it where they can. */
  private void add(Span span) {
    Span.Voice voice = span.voice();
    String text = fonts.set(span.text());
    double blank = fonts.width(" ", voice.weight(), voice.size());
    running = false;
    int i = 0;
    while (i < text.length()) {
      int end = text.indexOf(' ', i);
      if (end == i) {
        space = x > 0 ? blank : 0;
        i++;
        continue;
      }
      String word = text.substring(i, unitEnd(text, i, end < 0 ? text.length() : end));
      place(word, voice);
      i += word.length();
    }
  }

  /** Where a word ends together with the unit that follows a number: the two are not parted. */
  private static int unitEnd(String text, int from, int end) {
    char last = text.charAt(end - 1);
    boolean number = Character.isDigit(last) || Character.getType(last) == Character.OTHER_NUMBER;
    Matcher unit = UNIT.matcher(text).region(end, text.length());
    if (!number || !unit.lookingAt()) {
      return end;
    }
    // What clings to the unit, such as a full stop, stays with it.
    int next = text.indexOf(' ', unit.end());
    return next < 0 ? text.length() : next;
  }

  private void place(String word, Span.Voice voice) {
    double length = fonts.width(word, voice.weight(), voice.size());
    if (x > 0 && x + space + length > width) {
      lines.add(new ArrayList<>());
      x = 0;
      space = 0;
      running = false;
    }
    if (length > width) {
      List<String> parts =
          hingeleaf.paper.Wrapping.lines(word, voice.weight(), voice.size(), width, fonts);
      for (String part : parts.subList(0, parts.size() - 1)) {
        mark(part, voice);
        lines.add(new ArrayList<>());
        running = false;
      }
      place(parts.get(parts.size() - 1), voice);
      return;
    }
    x += space;
    mark(word, voice);
    space = 0;
    x += length;
  }

  /** Words of a span are set as one, so that a reader of the file finds them as one. */
  private void mark(String word, Span.Voice voice) {
    List<Mark> line = lines.get(lines.size() - 1);
    if (running && line.get(line.size() - 1) instanceof Mark.Words w) {
      String all = w.text() + (space > 0 ? " " : "") + word;
      line.set(
          line.size() - 1,
          new Mark.Words(all, w.at(), w.size(), w.weight(), w.anchor(), w.colour(), w.turn()));
      return;
    }
    running = true;
    line.add(
        new Mark.Words(
            word, new Vec2(x, 0), voice.size(), voice.weight(), Anchor.START, voice.colour(), 0));
  }

  private List<Slab> slabs(double before, double lead) {
    Vec2 base = new Vec2(0, -BASE * lead / Look.LEAD);
    List<Slab> slabs = new ArrayList<>();
    int n = lines.size();
    for (int i = 0; i < n; i++) {
      List<Mark> marks = lines.get(i).stream().map(m -> m.moved(base)).toList();
      boolean stays = i + 1 < n && (n <= 3 || i == 0 || i == n - 2);
      slabs.add(Slab.of(i == 0 ? before : 0, lead, marks).staying(stays));
    }
    return slabs;
  }
}
