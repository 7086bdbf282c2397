package hingeleaf.paper.figure;

import hingeleaf.geom.Vec2;
import hingeleaf.paper.Drawing;
import hingeleaf.paper.Fonts;
import hingeleaf.paper.Look;
import hingeleaf.paper.Mark;
import hingeleaf.paper.Mark.Anchor;
import hingeleaf.paper.Mark.Weight;
import hingeleaf.paper.Path;
import hingeleaf.paper.Pen;
import hingeleaf.paper.Wrapping;
import hingeleaf.sheet.Axis;
import hingeleaf.sheet.Cut;
import hingeleaf.sheet.PlacedPiece;
import hingeleaf.sheet.PlannedSheet;
import hingeleaf.sheet.SheetJob;
import java.util.ArrayList;
import java.util.List;

/** A sheet with the pieces that are cut from it, and its cuts numbered in the order of cutting. */
public final class SheetFigure {
  private static final double NM = 1e6;
  private static final double ROOM = 5;
  private static final int MOST_NUMBERS = 9;
  private static final Pen CUT = Pen.solid(0.25, Look.ACCENT);

  private SheetFigure() {}

  /**
   * The sheet as it lies on the trimmer.
   *
   * @param width most that the figure may have, mm
   * @param height most that the figure may have, mm
   */
  public static Drawing of(
      SheetJob job, PlannedSheet sheet, double width, double height, Fonts fonts) {
    double w = sheet.w() / NM;
    double h = sheet.h() / NM;
    double scale = Math.min((width - 2 * ROOM) / w, (height - 2 * ROOM) / h);
    List<Mark> marks = new ArrayList<>();
    marks.add(
        new Mark.Fill(Path.rectangle(ROOM, ROOM, ROOM + w * scale, ROOM + h * scale), Look.WASH));
    for (PlacedPiece p : sheet.pieces()) {
      piece(job, p, scale, marks, fonts);
    }
    marks.add(
        new Mark.Stroke(Path.rectangle(ROOM, ROOM, ROOM + w * scale, ROOM + h * scale), Pen.EDGE));
    int n = 1;
    for (Cut c : sheet.cuts()) {
      cut(c, numbered(sheet) ? n++ : 0, scale, marks);
    }
    return Drawing.plain(w * scale + 2 * ROOM, h * scale + 2 * ROOM, "sheet", marks);
  }

  /** Whether the cuts are few enough to be told apart; small parts are cut out in any order. */
  public static boolean numbered(PlannedSheet sheet) {
    return sheet.cuts().size() <= MOST_NUMBERS;
  }

  private static void piece(
      SheetJob job, PlacedPiece p, double scale, List<Mark> marks, Fonts fonts) {
    double x = ROOM + p.x() / NM * scale;
    double y = ROOM + p.y() / NM * scale;
    double w = p.w() / NM * scale;
    double h = p.h() / NM * scale;
    marks.add(new Mark.Fill(Path.rectangle(x, y, x + w, y + h), "#ffffff"));
    marks.add(new Mark.Stroke(Path.rectangle(x, y, x + w, y + h), Pen.FINE_EDGE));
    String name = job.pieces().get(p.piece()).name();
    boolean upright = h > w && w < 24;
    double room = (upright ? h : w) - 2;
    if (room < 6 || Math.min(w, h) < Look.TINY * 1.2) {
      return;
    }
    String words = Wrapping.shortened(name, Weight.REGULAR, Look.TINY, room, fonts);
    double down = Look.TINY * 0.33;
    Vec2 at =
        upright ? new Vec2(x + w / 2 + down, y + h / 2) : new Vec2(x + w / 2, y + h / 2 - down);
    marks.add(
        new Mark.Words(
            words,
            at,
            Look.TINY,
            Weight.REGULAR,
            Anchor.MIDDLE,
            Look.INK,
            upright ? Math.PI / 2 : 0));
  }

  /** The cut's line, a little longer than the part, and its number at one end. */
  private static void cut(Cut c, int number, double scale, List<Mark> marks) {
    double at = ROOM + c.at() / NM * scale;
    double from = ROOM + c.from() / NM * scale;
    double to = ROOM + c.to() / NM * scale;
    boolean x = c.axis() == Axis.X;
    Vec2 a = x ? new Vec2(at, from) : new Vec2(from, at);
    Vec2 b = x ? new Vec2(at, to + 1.2) : new Vec2(to + 1.2, at);
    marks.add(new Mark.Stroke(Path.line(a, b), number > 0 ? CUT : Pen.FINE_EDGE));
    if (number == 0) {
      return;
    }
    Vec2 words = x ? new Vec2(at, to + 1.6) : new Vec2(to + 1.7, at - Look.TINY * 0.33);
    marks.add(
        new Mark.Words(
            Integer.toString(number),
            words,
            Look.TINY,
            Weight.SEMIBOLD,
            x ? Anchor.MIDDLE : Anchor.START,
            Look.ACCENT,
            0));
  }
}
