package hingeleaf.paper.figure;

import hingeleaf.geom.Box;
import hingeleaf.geom.Region;
import hingeleaf.geom.Vec2;
import hingeleaf.paper.Drawing;
import hingeleaf.paper.Hatch;
import hingeleaf.paper.Look;
import hingeleaf.paper.Mark;
import hingeleaf.paper.Path;
import hingeleaf.paper.Pen;
import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;

/**
 * Inks what is seen of a card: areas from back to front, then lines. Nothing is hidden here; what
 * comes in is what is visible.
 */
public final class CardPicture {
  /** What an area is made of. */
  public enum Kind {
    PAPER,
    INK,
    /** A slope of an embossed pattern towards the light. */
    LIT,
    /** A slope of an embossed pattern away from the light. */
    SHADED,
    GLUE,
    WINDOW
  }

  /** How heavily a line is drawn, heaviest first. */
  public enum Stroke {
    SILHOUETTE,
    EDGE,
    INNER
  }

  /**
   * A visible area.
   *
   * @param region in view coordinates, mm, y up
   * @param colour {@code #rrggbb} of the paper or ink
   * @param facing cosine between the face's normal and the line of sight, 0 to 1
   * @param fresh whether it belongs to what is new at this step
   */
  public record Area(Region region, Kind kind, String colour, double facing, boolean fresh) {}

  /** A visible line, in view coordinates, mm, y up; two points or more. */
  public record Line(List<Vec2> points, boolean closed, Stroke stroke) {
    public Line {
      points = List.copyOf(points);
    }
  }

  /** How a card is inked. */
  public enum Manner {
    /** In the colours of its papers, shaded by facing. */
    COLOUR,
    /** White paper, the new piece toned, for steps: clear in black and white. */
    STEP
  }

  private static final double MARGIN = 4;
  private static final String FRESH = "#f6e5d9";
  private static final Pen SILHOUETTE = new Pen(0.5, List.of(), Look.INK, true);
  private static final Pen GLUE = Pen.solid(0.25, Look.ACCENT);
  private static final Pen GLINT = new Pen(0.35, List.of(), "#dfe8ea", true);

  private final Manner manner;
  private final double scale;
  private final UnaryOperator<Vec2> place;
  private final List<Mark> marks = new ArrayList<>();

  private static final double PALE = 0.5;

  /** How much white a slope towards the light takes. */
  private static final double LIT = 0.35;

  /** How much black one away from it takes: as little as a pale contour needs. */
  private static final double SHADE = 0.2;

  private CardPicture(Manner manner, double scale, UnaryOperator<Vec2> place) {
    this.manner = manner;
    this.scale = scale;
    this.place = place;
  }

  /** All that goes into a picture; {@code ground} is what the card stands on, empty for none. */
  public record View(List<Area> areas, List<Line> lines, List<Region> ground, Box box) {
    public View {
      areas = List.copyOf(areas);
      lines = List.copyOf(lines);
      ground = List.copyOf(ground);
    }
  }

  /**
   * The picture, as large as fits and no larger than life.
   *
   * @param width most that it may have, mm, more than 20
   * @param height most that it may have, mm, more than 20
   * @param background of the picture, for the shadow to run out into
   */
  public static Drawing of(
      View view, String title, Manner manner, double width, double height, String background) {
    return of(view, title, manner, fit(view.box(), width, height, 1), background);
  }

  /** The picture for a screen: as large as fits, however small the card is. */
  public static Drawing filling(
      View view, String title, Manner manner, double width, double height, String background) {
    double scale = fit(view.box(), width, height, Double.MAX_VALUE);
    Drawing tight = of(view, title, manner, scale, background);
    Vec2 middle = new Vec2((width - tight.width()) / 2, (height - tight.height()) / 2);
    return Drawing.plain(width, height, title, List.of(tight.moved(middle)));
  }

  private static double fit(Box box, double width, double height, double most) {
    double across = (width - 2 * MARGIN) / Math.max(box.width(), 1);
    double up = (height - 2 * MARGIN) / Math.max(box.height(), 1);
    return Math.min(most, Math.min(across, up));
  }

  private static Drawing of(
      View view, String title, Manner manner, double scale, String background) {
    Box box = view.box();
    UnaryOperator<Vec2> place =
        p -> new Vec2((p.x() - box.minX()) * scale + MARGIN, (p.y() - box.minY()) * scale + MARGIN);
    CardPicture picture = new CardPicture(manner, scale, place);
    if (manner == Manner.COLOUR) {
      for (Region ground : view.ground()) {
        picture.marks.addAll(Shadow.of(ground.map(place), 7 * scale, background));
      }
    }
    view.areas().forEach(picture::area);
    view.lines().forEach(picture::line);
    return Drawing.plain(
        box.width() * scale + 2 * MARGIN, box.height() * scale + 2 * MARGIN, title, picture.marks);
  }

  private void area(Area a) {
    Region region = a.region().map(place);
    switch (a.kind()) {
      case PAPER -> marks.add(new Mark.Fill(Path.of(region), paper(a)));
      case INK -> marks.add(new Mark.Fill(Path.of(region), ink(a)));
      case LIT -> marks.add(new Mark.Fill(Path.of(region), slope(a, "#ffffff", LIT)));
      case SHADED -> marks.add(new Mark.Fill(Path.of(region), slope(a, "#000000", SHADE)));
      case GLUE -> marks.add(new Mark.Stroke(Hatch.of(region, 1.5), GLUE));
      case WINDOW -> marks.add(new Mark.Stroke(Hatch.of(region, 6 * Math.min(1, scale)), GLINT));
    }
  }

  /** Pale letters for a dark card would not show on the white of a step's drawing. */
  private String ink(Area a) {
    boolean pale = manner == Manner.STEP && Tone.lightness(a.colour()) > PALE;
    return pale ? Look.QUIET : a.colour();
  }

  private String paper(Area a) {
    return switch (manner) {
      case COLOUR -> Tone.shaded(a.colour(), 0.74 + 0.26 * a.facing());
      case STEP -> Tone.shaded(a.fresh() ? FRESH : "#ffffff", 0.92 + 0.08 * a.facing());
    };
  }

  /** A slope takes its paper's tone, with some light or shade. */
  private String slope(Area a, String towards, double share) {
    return Tone.mixed(paper(a), towards, share);
  }

  private void line(Line line) {
    List<Vec2> points = line.points().stream().map(place).toList();
    Pen pen =
        switch (line.stroke()) {
          case SILHOUETTE -> SILHOUETTE;
          case EDGE -> Pen.EDGE;
          case INNER -> Pen.FINE_EDGE;
        };
    marks.add(new Mark.Stroke(new Path(List.of(points), line.closed()), pen));
  }
}
