package hingeleaf.paper;

import hingeleaf.geom.Box;
import hingeleaf.geom.Vec2;
import java.util.List;
import java.util.function.UnaryOperator;

/**
 * One mark of a drawing, in mm, y up. A closed family: a {@link Painter} must know all of them.
 *
 * <p>Colours are {@code #rrggbb}.
 */
public sealed interface Mark {
  /** This mark moved; nothing about it is scaled. */
  default Mark moved(Vec2 by) {
    return mapped(p -> p.plus(by), 0);
  }

  /**
   * Every point through {@code f}, a rigid motion without mirror that turns by {@code turn} rad, so
   * that words stand along with what they name.
   */
  Mark mapped(UnaryOperator<Vec2> f, double turn);

  /** Calls the one method of the painter that is for this kind of mark. */
  void paint(Painter painter);

  /** What a writer does with each kind of mark. */
  interface Painter {
    void stroke(Stroke stroke);

    void fill(Fill fill);

    void words(Words words);

    void window(Window window);

    void group(Group group);
  }

  /** A line along a path. */
  record Stroke(Path path, Pen pen) implements Mark {
    @Override
    public Mark mapped(UnaryOperator<Vec2> f, double turn) {
      return new Stroke(path.map(f), pen);
    }

    @Override
    public void paint(Painter painter) {
      painter.stroke(this);
    }
  }

  /** A closed path filled by the even-odd rule. */
  record Fill(Path path, String colour) implements Mark {
    @Override
    public Mark mapped(UnaryOperator<Vec2> f, double turn) {
      return new Fill(path.map(f), colour);
    }

    @Override
    public void paint(Painter painter) {
      painter.fill(this);
    }
  }

  /**
   * A line of words.
   *
   * @param at on the baseline: its start, middle or end by {@code anchor}
   * @param size of type, mm (em)
   * @param turn anticlockwise, rad
   */
  record Words(
      String text, Vec2 at, double size, Weight weight, Anchor anchor, String colour, double turn)
      implements Mark {
    @Override
    public Mark mapped(UnaryOperator<Vec2> f, double more) {
      return new Words(text, f.apply(at), size, weight, anchor, colour, turn + more);
    }

    @Override
    public void paint(Painter painter) {
      painter.words(this);
    }
  }

  /** Marks seen through an upright window. Only moved and turned by quarters. */
  record Window(Box box, List<Mark> marks) implements Mark {
    public Window {
      marks = List.copyOf(marks);
    }

    @Override
    public Mark mapped(UnaryOperator<Vec2> f, double turn) {
      Box b =
          Box.around(
              List.of(
                  f.apply(new Vec2(box.minX(), box.minY())),
                  f.apply(new Vec2(box.maxX(), box.maxY()))));
      return new Window(b, marks.stream().map(m -> m.mapped(f, turn)).toList());
    }

    @Override
    public void paint(Painter painter) {
      painter.window(this);
    }
  }

  /**
   * Marks that are moved as one: a figure is set on a line, in a slab and on a page, and its points
   * need not be made anew each time.
   *
   * @param by where the origin of the marks lies
   */
  record Group(List<Mark> marks, Vec2 by) implements Mark {
    public Group {
      marks = List.copyOf(marks);
    }

    @Override
    public Mark moved(Vec2 more) {
      return new Group(marks, by.plus(more));
    }

    @Override
    public Mark mapped(UnaryOperator<Vec2> f, double turn) {
      UnaryOperator<Vec2> there = p -> f.apply(p.plus(by));
      return new Group(marks.stream().map(m -> m.mapped(there, turn)).toList(), Vec2.ZERO);
    }

    @Override
    public void paint(Painter painter) {
      painter.group(this);
    }
  }

  /** Where on its baseline a line of words is held. */
  enum Anchor {
    START,
    MIDDLE,
    END
  }

  /** The three cuts of the text face. */
  enum Weight {
    REGULAR,
    SEMIBOLD,
    ITALIC
  }
}
