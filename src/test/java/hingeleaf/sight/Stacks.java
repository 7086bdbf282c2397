package hingeleaf.sight;

import hingeleaf.card.Card;
import hingeleaf.card.Face;
import hingeleaf.card.Join;
import hingeleaf.card.Label;
import hingeleaf.card.Panel;
import hingeleaf.card.Patch;
import hingeleaf.card.Piece;
import hingeleaf.card.Score;
import hingeleaf.geom.Region;
import hingeleaf.geom.Rigid;
import hingeleaf.geom.Ring;
import hingeleaf.geom.Segment;
import hingeleaf.geom.Vec2;
import hingeleaf.geom.Vec3;
import hingeleaf.stock.Grain;
import hingeleaf.stock.Stock;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/**
 * Stacks of frames posed by hand, for tests: a back 150 x 150 about the origin of the plane z = 0,
 * frames with sides and tabs of 12 that fold back and in, so that frame k stands at z = 12 k when
 * upright.
 */
final class Stacks {
  static final double SIZE = 150;
  static final double SIDE = 12;
  static final double TAB = 12;

  final List<Piece> pieces = new ArrayList<>();
  final List<Panel> panels = new ArrayList<>();
  final List<Join> joins = new ArrayList<>();

  /** How far each frame leans to the left, rad: 0 stands, a quarter turn is flat. */
  double lean = 0;

  private Vec3 middle = Vec3.ZERO;

  static Stock paper(String name, String front, String back) {
    var faces = new Stock.Faces(front, back, front);
    return new Stock(name, name, Stock.Kind.CARD, 300, 0.356, faces, List.of(), 3);
  }

  static Stock acetate() {
    var faces = Stock.Faces.alike("#eeeeff");
    return new Stock("clear", "clear", Stock.Kind.ACETATE, 200, 0.15, faces, List.of(), 3);
  }

  /** Trade case A: round 90, round 110, square 130. */
  static Stacks caseA() {
    return caseA(0);
  }

  /** The same with every frame leaning to the left. */
  static Stacks caseA(double lean) {
    Stacks s = new Stacks();
    s.lean = lean;
    s.back();
    s.frame("far", circle(45, 120));
    s.frame("middle", circle(55, 120));
    s.frame("near", Ring.rectangle(-65, -65, 65, 65));
    return s;
  }

  Scene scene() {
    Card card = new Card("stack", List.of(), pieces, joins);
    return Scene.of(card, panels, panels.stream().map(Panel::made).toList());
  }

  static Ring circle(double radius, int corners) {
    return star(radius, radius, corners);
  }

  /** A ring about the origin whose corners lie on two circles by turns. */
  static Ring star(double even, double odd, int corners) {
    List<Vec2> points = new ArrayList<>();
    for (int i = 0; i < corners; i++) {
      double a = 2 * Math.PI * i / corners;
      double r = i % 2 == 0 ? even : odd;
      points.add(new Vec2(r * Math.cos(a), r * Math.sin(a)));
    }
    return new Ring(points);
  }

  void back() {
    Region shape = Region.of(Ring.rectangle(0, 0, SIZE, SIZE));
    loose("back", paper("kraft", "#a08060", "#907050"), shape, new Vec3(-75, -75, 0));
  }

  /** A piece without scores, front to the viewer, its origin at a place. */
  void loose(String id, Stock stock, Region shape, Vec3 at) {
    Label label = new Label(id, new Vec2(1, 1));
    pieces.add(Piece.flat(id, id, stock, Grain.ANY, shape, label, ""));
    panels.add(new Panel(id, id, shape, Rigid.translation(at)));
  }

  /** A frame with an aperture given about the panel's centre. */
  void frame(String id, Ring aperture) {
    double x1 = TAB;
    double x2 = TAB + SIDE;
    double x3 = x2 + SIZE;
    double x4 = x3 + SIDE;
    double x5 = x4 + TAB;
    Ring hole = aperture.moved(new Vec2(x2 + SIZE / 2, SIZE / 2));
    Region shape = new Region(Ring.rectangle(0, 0, x5, SIZE), List.of(hole));
    List<Score> scores =
        List.of(score("s1", x1), score("s2", x2), score("s3", x3), score("s4", x4));
    Stock stock = paper("white", "#ffffff", "#f0f0f0");
    List<Label> labels = List.of();
    pieces.add(
        new Piece(id, id, stock, Grain.ANY, shape, List.of(), scores, labels, List.of(), ""));
    Vec3 behind = middle;
    middle = behind.plus(new Vec3(-SIDE * Math.sin(lean), 0, SIDE * Math.cos(lean)));
    Rigid front = Rigid.translation(middle.plus(new Vec3(-x2 - SIZE / 2, -SIZE / 2, 0)));
    Rigid right = front.then(turn(middle, SIZE / 2, Math.PI / 2 - lean));
    Rigid left = front.then(turn(middle, -SIZE / 2, -Math.PI / 2 - lean));
    Rigid rightTab = right.then(turn(behind, SIZE / 2, Math.PI / 2 + lean));
    Rigid leftTab = left.then(turn(behind, -SIZE / 2, -Math.PI / 2 + lean));
    strip(id, "tab 1", 0, x1, leftTab);
    strip(id, "side 1", x1, x2, left);
    panels.add(
        new Panel(id, "panel", new Region(Ring.rectangle(x2, 0, x3, SIZE), List.of(hole)), front));
    strip(id, "side 2", x3, x4, right);
    strip(id, "tab 2", x4, x5, rightTab);
  }

  private static Score score(String name, double x) {
    return new Score(name, Segment.of(x, 0, x, SIZE), -Math.PI / 2);
  }

  private static Rigid turn(Vec3 about, double aside, double angle) {
    Vec3 on = about.plus(new Vec3(aside, 0, 0));
    return Rigid.rotation(on, on.plus(new Vec3(0, 1, 0)), angle);
  }

  private void strip(String piece, String name, double x0, double x1, Rigid pose) {
    panels.add(new Panel(piece, name, Region.of(Ring.rectangle(x0, 0, x1, SIZE)), pose));
  }

  /** Glues the whole of one panel on the front of another. */
  void glue(String piece, String panel, String onPiece, String onPanel, Face face) {
    Region any = Region.of(Ring.rectangle(0, 0, 1, 1));
    Vec2 x = new Vec2(1, 0);
    Patch a = new Patch(piece, panel, Face.BACK, any, Vec2.ZERO, x);
    Patch b = new Patch(onPiece, onPanel, face, any, Vec2.ZERO, x);
    joins.add(new Join.Glue("glue " + joins.size(), a, b, 0, "glue", ""));
  }

  /** Twelve frames and forty cut-outs of 60 to 200 points, as large as cards get. */
  static Stacks large() {
    Random random = new Random(12);
    Stacks s = new Stacks();
    s.back();
    for (int k = 1; k <= 12; k++) {
      s.frame("frame " + k, circle(25 + 3 * k, 120));
    }
    for (int i = 0; i < 40; i++) {
      int corners = 60 + 2 * random.nextInt(71);
      double radius = 8 + 10 * random.nextDouble();
      Region shape = Region.of(star(radius, radius * 0.8, corners));
      double x = -50 + 100 * random.nextDouble();
      double y = -50 + 100 * random.nextDouble();
      double z = SIDE * (i % 13) + 2;
      Stock stock = paper("navy", "#203060", "#203060");
      s.loose("cut-out " + i, stock, shape, new Vec3(x, y, z));
    }
    return s;
  }
}
