package hingeleaf.design;

import hingeleaf.finding.Problem;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.api.lowlevel.Parse;
import org.snakeyaml.engine.v2.events.AliasEvent;
import org.snakeyaml.engine.v2.events.CollectionStartEvent;
import org.snakeyaml.engine.v2.events.DocumentStartEvent;
import org.snakeyaml.engine.v2.events.Event;
import org.snakeyaml.engine.v2.events.MappingEndEvent;
import org.snakeyaml.engine.v2.events.MappingStartEvent;
import org.snakeyaml.engine.v2.events.NodeEvent;
import org.snakeyaml.engine.v2.events.ScalarEvent;
import org.snakeyaml.engine.v2.events.SequenceEndEvent;
import org.snakeyaml.engine.v2.exceptions.Mark;
import org.snakeyaml.engine.v2.exceptions.MarkedYamlEngineException;
import org.snakeyaml.engine.v2.exceptions.YamlEngineException;

/**
 * Builds the located tree from the events of the YAML parser. It follows events and not composed
 * nodes because those no longer tell an alias from a copy; and it stops by itself at the deepest
 * and the most values that any design needs.
 */
final class TreeBuilder {
  private static final int DEEPEST = 40;
  private static final int MOST_NODES = 100_000;
  private static final int LONGEST_KEY = 100;
  private static final int MOST_PROBLEMS = 100;

  private final SourceText source;
  private final int start;
  private final List<Problem> problems = new ArrayList<>();
  private final CodePoints offsets;
  private int nodes;

  TreeBuilder(SourceText source) {
    this.source = source;
    this.start = source.text().startsWith("\uFEFF") ? 1 : 0;
    this.offsets = new CodePoints(source.text(), start);
  }

  List<Problem> problems() {
    return problems;
  }

  /** Nothing more can be read; the reason is among the problems. */
  private static final class Stop extends RuntimeException {
    private static final long serialVersionUID = 1L;

    Stop() {
      super(null, null, false, false);
    }
  }

  Optional<Node> build() {
    String text = withoutJsonTabs(source.text().substring(start));
    LoadSettings settings =
        LoadSettings.builder()
            .setUseMarks(true)
            .setParseComments(false)
            .setCodePointLimit(TreeReading.LIMIT_BYTES + 1)
            // all at once: the parser trips over an emoji that straddles two of its buffers
            .setBufferSize(text.length() + 2)
            .build();
    try {
      return document(new Parse(settings).parseString(text).iterator());
    } catch (Stop stop) {
      return Optional.empty();
    } catch (MarkedYamlEngineException e) {
      add("yaml", at(e.getProblemMark().or(e::getContextMark)), YamlWords.plain(e));
      return Optional.empty();
    } catch (YamlEngineException e) {
      add("yaml", 0, "this cannot be read as YAML: " + YamlWords.firstLine(e));
      return Optional.empty();
    }
  }

  /**
   * Text in brackets may be indented with tabs, as JSON often is, though the parser takes none at
   * the start of a line; spaces in their stead keep every offset.
   */
  private static String withoutJsonTabs(String text) {
    if (!text.stripLeading().startsWith("{") || text.indexOf('\t') < 0) {
      return text;
    }
    StringBuilder out = new StringBuilder(text);
    boolean indentation = true;
    for (int i = 0; i < out.length(); i++) {
      char c = out.charAt(i);
      if (indentation && c == '\t') {
        out.setCharAt(i, ' ');
      }
      indentation = c == '\n' || c == '\r' || (indentation && (c == ' ' || c == '\t'));
    }
    return out.toString();
  }

  private Optional<Node> document(Iterator<Event> events) {
    Optional<Node> root = Optional.empty();
    boolean seen = false;
    while (events.hasNext()) {
      Event e = events.next();
      if (e instanceof DocumentStartEvent d) {
        if (seen) {
          stop(
              "several-documents",
              at(e.getStartMark()),
              "a second document starts here; a file" + " holds one");
        }
        seen = true;
        if (!d.getTags().isEmpty()) {
          add("tag", at(e.getStartMark()), "tags are not used in these files");
        }
        root = Optional.of(node(events.next(), events, Trail.TOP, 1));
      }
    }
    return root;
  }

  private Node node(Event e, Iterator<Event> events, Trail trail, int depth) {
    if (++nodes > MOST_NODES) {
      stop("too-large", at(e.getStartMark()), "this file holds more than 100,000 values");
    }
    if (depth > DEEPEST) {
      stop("too-deep", at(e.getStartMark()), "values are nested more than 40 deep here");
    }
    checkPlain(e);
    if (e instanceof ScalarEvent s) {
      return scalar(s, trail);
    }
    if (e instanceof CollectionStartEvent c) {
      return c instanceof MappingStartEvent
          ? fields(c, events, trail, depth)
          : items(c, events, trail, depth);
    }
    return new Node.Scalar(
        "", Node.Style.PLAIN, span(e), source.place(at(e.getStartMark())), trail);
  }

  private void checkPlain(Event e) {
    int at = at(e.getStartMark());
    if (e instanceof AliasEvent) {
      add("alias", at, "aliases (*name) are not used in these files; write the value out");
    } else if (e instanceof NodeEvent n && n.getAnchor().isPresent()) {
      add("anchor", at, "anchors (&name) are not used in these files; leave it out");
    }
    boolean tagged =
        e instanceof ScalarEvent s
            ? s.getTag().isPresent()
            : e instanceof CollectionStartEvent c && c.getTag().isPresent();
    if (tagged) {
      add("tag", at, "tags (!name) are not used in these files; leave it out");
    }
  }

  private Node.Scalar scalar(ScalarEvent s, Trail trail) {
    Node.Style style =
        s.isPlain()
            ? Node.Style.PLAIN
            : s.isLiteral() || s.isFolded() ? Node.Style.BLOCK : Node.Style.QUOTED;
    Span span = span(s);
    return new Node.Scalar(s.getValue(), style, span, source.place(span.from()), trail);
  }

  private Node items(CollectionStartEvent c, Iterator<Event> events, Trail trail, int depth) {
    List<Node> items = new ArrayList<>();
    Event e = events.next();
    while (!(e instanceof SequenceEndEvent)) {
      items.add(node(e, events, trail.item(items.size()), depth + 1));
      e = events.next();
    }
    int from = at(c.getStartMark());
    int to = c.isFlow() ? at(e.getEndMark()) : lastEnd(items, from);
    int dashes = c.isFlow() ? -1 : from - source.lineStart(from);
    return new Node.Items(items, c.isFlow(), dashes, new Span(from, to), source.place(from), trail);
  }

  private static int lastEnd(List<Node> items, int from) {
    return items.isEmpty() ? from : items.get(items.size() - 1).span().to();
  }

  private Node fields(CollectionStartEvent c, Iterator<Event> events, Trail trail, int depth) {
    List<Node.Entry> entries = new ArrayList<>();
    Map<String, Node.Scalar> seen = new HashMap<>();
    Event e = events.next();
    while (!(e instanceof MappingEndEvent)) {
      Node.Scalar key = key(e, trail);
      Node value = node(events.next(), events, trail.key(key.raw()), depth + 1);
      Node.Scalar twin = seen.putIfAbsent(key.raw(), key);
      if (twin == null) {
        entries.add(new Node.Entry(key, value));
      } else {
        twice(key, twin);
      }
      e = events.next();
    }
    int from = at(c.getStartMark());
    int to =
        c.isFlow()
            ? at(e.getEndMark())
            : entries.isEmpty() ? from : entries.get(entries.size() - 1).value().span().to();
    return new Node.Fields(
        entries, c.isFlow(), new Span(from, Math.max(from, to)), source.place(from), trail);
  }

  private Node.Scalar key(Event e, Trail trail) {
    checkPlain(e);
    if (!(e instanceof ScalarEvent s)) {
      return stop("yaml", at(e.getStartMark()), "a key must be a plain word");
    }
    if (s.getValue().length() > LONGEST_KEY) {
      return stop("yaml", at(e.getStartMark()), "this key is longer than 100 characters");
    }
    return scalar(s, trail.key(s.getValue()));
  }

  private void twice(Node.Scalar key, Node.Scalar twin) {
    add(
        "key-twice",
        key.span().from(),
        "`"
            + key.raw()
            + "` is given twice; it stands in line "
            + twin.place().line()
            + " already");
  }

  private void add(String kind, int offset, String message) {
    if (problems.size() < MOST_PROBLEMS) {
      problems.add(TreeReader.problem(kind, source, offset, message));
    }
  }

  private Node.Scalar stop(String kind, int offset, String message) {
    add(kind, offset, message);
    throw new Stop();
  }

  private Span span(Event e) {
    int from = at(e.getStartMark());
    return new Span(from, Math.max(from, at(e.getEndMark())));
  }

  private int at(Optional<Mark> mark) {
    return mark.map(m -> offsets.unit(m.getIndex())).orElse(0);
  }
}
