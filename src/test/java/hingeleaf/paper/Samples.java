package hingeleaf.paper;

import hingeleaf.card.Face;
import hingeleaf.card.Label;
import hingeleaf.card.Patch;
import hingeleaf.card.Piece;
import hingeleaf.card.Score;
import hingeleaf.geom.Region;
import hingeleaf.geom.Ring;
import hingeleaf.geom.Segment;
import hingeleaf.geom.Vec2;
import hingeleaf.stock.Grain;
import hingeleaf.stock.Stock;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;

/** Pieces in scenarios of our own, and the text face as a door would bring it. */
public final class Samples {
  public static final Fonts FONTS = Fonts.read(Samples::file);

  private Samples() {}

  private static byte[] file(String name) {
    try (InputStream in = Fonts.class.getResourceAsStream("fonts/" + name)) {
      if (in == null) {
        throw new IllegalStateException("no font file " + name);
      }
      return in.readAllBytes();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  public static Stock white() {
    return new Stock(
        "white-300",
        "white card 300 g/m²",
        Stock.Kind.CARD,
        300,
        0.356,
        Stock.Faces.alike("#fbfaf6"),
        List.of(),
        5);
  }

  /** A frame: tab, side, panel with a round aperture, side, tab; sides and tabs folded in. */
  public static Piece frame(String id, double w, double h, double side, double tab, double round) {
    double total = w + 2 * (side + tab);
    List<Score> scores = new ArrayList<>();
    double[] at = {tab, tab + side, tab + side + w, tab + 2 * side + w};
    for (int i = 0; i < at.length; i++) {
      scores.add(new Score("s" + (i + 1), Segment.of(at[i], 0, at[i], h), -Math.PI / 2));
    }
    Ring hole = circle(new Vec2(total / 2, h / 2), round / 2, 120);
    List<Label> labels =
        List.of(
            new Label("left tab", new Vec2(tab / 2, h / 2)),
            new Label("left side", new Vec2(tab + side / 2, h / 2)),
            new Label("panel", new Vec2(total / 2, (h - round) / 4)),
            new Label("right side", new Vec2(tab + side * 1.5 + w, h / 2)),
            new Label("right tab", new Vec2(total - tab / 2, h / 2)));
    return new Piece(
        id,
        id + " frame",
        white(),
        Grain.HEIGHT,
        new Region(Ring.rectangle(0, 0, total, h), List.of(hole)),
        List.of(),
        scores,
        labels,
        List.of(),
        "base.frames." + id);
  }

  /** The front of the two tabs of such a frame. */
  public static List<Patch> tabs(Piece piece, double tab) {
    double w = piece.width();
    double h = piece.height();
    return List.of(
        new Patch(
            piece.id(),
            "left tab",
            Face.FRONT,
            Region.of(Ring.rectangle(0, 0, tab, h)),
            Vec2.ZERO,
            new Vec2(1, 0)),
        new Patch(
            piece.id(),
            "right tab",
            Face.FRONT,
            Region.of(Ring.rectangle(w - tab, 0, w, h)),
            Vec2.ZERO,
            new Vec2(1, 0)));
  }

  /** A small ornament with no symmetry at all, a slit, a valley and a mountain. */
  public static Piece crooked() {
    Ring outer =
        new Ring(
            List.of(
                new Vec2(0, 0),
                new Vec2(60.12345, 0),
                new Vec2(60.12345, 31.75),
                new Vec2(20, 41.3),
                new Vec2(0, 30)));
    Ring hole = Ring.rectangle(40, 5, 50, 10);
    return new Piece(
        "wedge",
        "wedge <1> & \"2\"",
        white(),
        Grain.WIDTH,
        new Region(outer, List.of(hole)),
        List.of(Segment.of(10, 5, 10, 25)),
        List.of(
            new Score("hinge", Segment.of(15, 5, 15, 25), Math.PI / 2),
            new Score("back", Segment.of(30, 0, 30, 38.9), -Math.PI / 3),
            new Score("spare", Segment.of(35, 0, 35, 37), 0)),
        List.of(new Label("wing", new Vec2(22, 15))),
        List.of(),
        "cut-outs.wedge");
  }

  public static Ring circle(Vec2 c, double r, int chords) {
    List<Vec2> points = new ArrayList<>();
    for (int i = 0; i < chords; i++) {
      double a = 2 * Math.PI * i / chords;
      points.add(new Vec2(c.x() + r * Math.cos(a), c.y() + r * Math.sin(a)));
    }
    return new Ring(points);
  }
}
