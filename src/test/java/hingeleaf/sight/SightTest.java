package hingeleaf.sight;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import hingeleaf.card.Card;
import hingeleaf.card.Face;
import hingeleaf.card.Ink;
import hingeleaf.card.Panel;
import hingeleaf.card.Patch;
import hingeleaf.card.Piece;
import hingeleaf.card.Score;
import hingeleaf.geom.Box;
import hingeleaf.geom.Region;
import hingeleaf.geom.Rigid;
import hingeleaf.geom.Ring;
import hingeleaf.geom.Segment;
import hingeleaf.geom.Vec2;
import hingeleaf.geom.Vec3;
import hingeleaf.stock.Grain;
import hingeleaf.stock.Stock;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Closed forms and rules of sight, each with a scene of its own. */
class SightTest {
  private static final Stock WHITE = Stacks.paper("white", "#ffffff", "#eeeeee");
  private static final Stock NAVY = Stacks.paper("navy", "#000080", "#000060");
  private static final Vec3 X = new Vec3(1, 0, 0);
  private static final Vec3 Y = new Vec3(0, 1, 0);

  private static Region box(double width, double height) {
    return Region.of(Ring.rectangle(0, 0, width, height));
  }

  /** A rectangle that one corner and two unit directions place, its front towards x cross y. */
  private static void place(Stacks s, String id, Stock stock, Region r, Vec3 at, Vec3 x, Vec3 y) {
    s.loose(id, stock, r, Vec3.ZERO);
    s.panels.set(s.panels.size() - 1, new Panel(id, id, r, Rigid.frame(at, x, y, x.cross(y))));
  }

  private static double area(View view, String part, VisiblePolygon.Kind kind) {
    return view.polygons().stream()
        .filter(p -> p.part().equals(part) && p.kind() == kind)
        .mapToDouble(p -> p.region().area())
        .sum();
  }

  private static double paper(View view, String part) {
    return area(view, part, VisiblePolygon.Kind.PAPER);
  }

  private static double length(View view, VisibleLine.Stroke stroke) {
    return view.lines().stream()
        .filter(l -> l.stroke() == stroke)
        .mapToDouble(l -> l.at().length())
        .sum();
  }

  /**
   * ISO 5456-3, isometric axonometry: a cube's edges along all three axes are shortened alike, by
   * the square root of 2/3, and the outline is a regular hexagon.
   */
  @Test
  void aCubeInIsometry() {
    Look isometric = new Look.Parallel(Vec3.ZERO, new Vec3(1, 1, 1), Y);
    View view = Sight.look(cube(), isometric);
    assertThat(view.polygons()).hasSize(3);
    for (VisiblePolygon p : view.polygons()) {
      assertThat(p.region().area()).isCloseTo(60 * 60 / Math.sqrt(3), within(1e-6));
      assertThat(p.onPiece().area()).isCloseTo(60 * 60, within(1e-6));
      assertThat(p.facing()).isCloseTo(1 / Math.sqrt(3), within(1e-9));
    }
    double edge = 60 * Math.sqrt(2.0 / 3);
    assertThat(view.lines()).hasSize(9);
    assertThat(view.lines()).allMatch(l -> Math.abs(l.at().length() - edge) < 1e-9);
    assertThat(length(view, VisibleLine.Stroke.SILHOUETTE)).isCloseTo(6 * edge, within(1e-9));
    assertThat(length(view, VisibleLine.Stroke.EDGE)).isCloseTo(3 * edge, within(1e-9));
    assertThat(view.box().height()).isCloseTo(2 * edge, within(1e-9));
  }

  private static Scene cube() {
    Stacks s = new Stacks();
    Vec3 z = new Vec3(0, 0, 1);
    Region side = box(60, 60);
    place(s, "front", WHITE, side, new Vec3(0, 0, 60), X, Y);
    place(s, "back", WHITE, side, Vec3.ZERO, X, Y);
    place(s, "right", WHITE, side, new Vec3(60, 0, 0), Y, z);
    place(s, "left", WHITE, side, Vec3.ZERO, Y, z);
    place(s, "top", WHITE, side, new Vec3(0, 60, 0), z, X);
    place(s, "bottom", WHITE, side, Vec3.ZERO, z, X);
    return s.scene();
  }

  /** Similar triangles: a square at half the distance from the eye looks twice as wide. */
  @Test
  void nearThingsLookLargerFromAnEye() {
    Stacks s = new Stacks();
    place(s, "half way", WHITE, box(10, 10), new Vec3(5, 5, 200), X, Y);
    View view = Sight.look(s.scene(), Look.fromEye(Vec3.ZERO, 400, 0, 0));
    assertThat(view.box()).isEqualTo(new Box(10, 10, 30, 30));
    VisiblePolygon seen = view.polygons().get(0);
    assertThat(seen.onPiece().area()).isCloseTo(100, within(1e-9));
    assertThat(seen.depth()).isCloseTo(-200, within(1e-9));
  }

  /** Two squares through each other at 45 degrees either way: each shows the half in front. */
  @Test
  void crossingPanelsAreCutWhereTheyCross() {
    Stacks s = new Stacks();
    double c = Math.sqrt(0.5);
    place(s, "a", WHITE, box(100, 80), new Vec3(-50 * c, 0, -50 * c), new Vec3(c, 0, c), Y);
    place(s, "b", NAVY, box(100, 80), new Vec3(-50 * c, 0, 50 * c), new Vec3(c, 0, -c), Y);
    View view = Sight.look(s.scene(), Look.straightOn());
    assertThat(paper(view, "a/a")).isCloseTo(50 * c * 80, within(1e-6));
    assertThat(paper(view, "b/b")).isCloseTo(50 * c * 80, within(1e-6));
    List<VisibleLine> crossing =
        view.lines().stream().filter(l -> l.kind() == VisibleLine.Kind.CROSSING).toList();
    assertThat(crossing).hasSize(1);
    assertThat(crossing.get(0).at().length()).isCloseTo(80, within(1e-3));
    assertThat(crossing.get(0).at().middle().x()).isCloseTo(0, within(1e-9));
  }

  /** Three strips, each over the next: no order of depth exists, and each hides one square. */
  @Test
  void stripsThatOverlapInARing() {
    Stacks s = new Stacks();
    Random none = new Random(0);
    List<Integer> turns = new ArrayList<>(List.of(0, 1, 2));
    Collections.shuffle(turns, none);
    for (int turn : turns) {
      Rigid third = Rigid.rotation(Vec3.ZERO, new Vec3(0, 0, 1), turn * 2 * Math.PI / 3);
      Vec3 x = new Vec3(1, 0, 0.2).unit();
      place(s, "strip " + turn, WHITE, box(120, 10), Vec3.ZERO, x, Y);
      int last = s.panels.size() - 1;
      Panel p = s.panels.get(last);
      Rigid aside = Rigid.translation(new Vec3(-60, 15, -60 * 0.2));
      s.panels.set(
          last, new Panel(p.piece(), p.name(), p.region(), p.made().then(aside).then(third)));
    }
    View view = Sight.look(s.scene(), Look.straightOn());
    double whole = 120 / Math.sqrt(1.04) * 10;
    // Strips that cross at 60 degrees share a rhombus of 10 x 10 / sin 60.
    double shared = 100 / Math.sin(Math.PI / 3);
    for (int i = 0; i < 3; i++) {
      String part = "strip " + i + "/strip " + i;
      assertThat(paper(view, part)).isCloseTo(whole - shared, within(1e-6));
    }
  }

  @Test
  void whatIsGluedOnAFaceHidesItFromThatSideOnly() {
    Stacks s = new Stacks();
    s.loose("cut-out", NAVY, box(20, 20), new Vec3(10, 10, 0));
    s.loose("base", WHITE, box(100, 100), Vec3.ZERO);
    s.glue("cut-out", "cut-out", "base", "base", Face.FRONT);
    View front = Sight.look(s.scene(), Look.straightOn());
    assertThat(paper(front, "cut-out/cut-out")).isCloseTo(400, within(1e-6));
    assertThat(paper(front, "base/base")).isCloseTo(9600, within(1e-6));
    View back = Sight.look(s.scene(), Look.fromBehind());
    assertThat(paper(back, "base/base")).isCloseTo(10000, within(1e-6));
    assertThat(back.polygons()).hasSize(1);
    assertThat(back.polygons().get(0).face()).isEqualTo(Face.BACK);
    assertThat(back.polygons().get(0).colour()).isEqualTo("#eeeeee");
  }

  @Test
  void whatIsGluedLaterLiesOver() {
    Stacks s = new Stacks();
    s.loose("later", NAVY, box(20, 20), new Vec3(15, 15, 0));
    s.loose("sooner", NAVY, box(20, 20), new Vec3(5, 5, 0));
    s.loose("behind", NAVY, box(20, 20), new Vec3(5, 5, 0));
    s.loose("base", WHITE, box(100, 100), Vec3.ZERO);
    s.glue("sooner", "sooner", "base", "base", Face.FRONT);
    s.glue("behind", "behind", "base", "base", Face.BACK);
    s.glue("later", "later", "base", "base", Face.FRONT);
    View view = Sight.look(s.scene(), Look.straightOn());
    assertThat(paper(view, "later/later")).isCloseTo(400, within(1e-6));
    assertThat(paper(view, "sooner/sooner")).isCloseTo(300, within(1e-6));
    assertThat(paper(view, "behind/behind")).isZero();
  }

  @Test
  void aMatGluedBeforeItsFrameStillLiesOnTheFrame() {
    Stacks s = Stacks.caseA();
    s.loose("star", NAVY, box(8, 8), new Vec3(-70, 0, 36));
    s.loose("mat", NAVY, box(9, 60), new Vec3(-74, -30, 36));
    s.glue("mat", "mat", "near", "panel", Face.FRONT);
    s.glue("near", "tab 1", "middle", "panel", Face.FRONT);
    s.glue("star", "star", "mat", "mat", Face.FRONT);
    View view = Sight.look(s.scene(), Look.straightOn());
    assertThat(paper(view, "star/star")).isCloseTo(64, within(1e-6));
    assertThat(paper(view, "mat/mat")).isCloseTo(9 * 60 - 5 * 8, within(1e-6));
  }

  @Test
  void tabsLieOnTheLayerBehind() {
    Stacks s = Stacks.caseA();
    s.glue("near", "tab 1", "middle", "panel", Face.FRONT);
    View view = Sight.look(s.scene(), Look.straightOn());
    assertThat(paper(view, "near/tab 1")).isCloseTo(260, within(1e-6));
  }

  /** The worked card leaning flat to the left: 186 wide, the near frame on top of all. */
  @Test
  void aFlatStackShowsItsLastLayer() {
    Stacks s = Stacks.caseA(Math.PI / 2);
    List<String> names = List.of("back", "far", "middle", "near");
    for (int i = 1; i < names.size(); i++) {
      String on = i == 1 ? "back" : "panel";
      s.glue(names.get(i), "tab 1", names.get(i - 1), on, Face.FRONT);
      s.glue(names.get(i), "tab 2", names.get(i - 1), on, Face.FRONT);
    }
    View front = Sight.look(s.scene(), Look.straightOn());
    assertThat(front.box().width()).isCloseTo(186, within(1e-6));
    assertThat(paper(front, "near/panel")).isCloseTo(150 * 150 - 130 * 130, within(1e-4));
    assertThat(paper(front, "near/side 2")).isCloseTo(12 * 150, within(1e-4));
    // Its left side lies under it from -111 to -99; its opening begins at -36 - 65 = -101.
    assertThat(paper(front, "near/side 1")).isCloseTo(2 * 130, within(1e-4));
    View behind = Sight.look(s.scene(), Look.fromBehind());
    assertThat(paper(behind, "back/back")).isCloseTo(150 * 150, within(1e-4));
    for (String frame : names.subList(1, 4)) {
      assertThat(paper(behind, frame + "/side 1")).isCloseTo(12 * 150, within(1e-4));
    }
  }

  @Test
  void layersToldByHandDecide() {
    Stacks s = new Stacks();
    s.loose("a", NAVY, box(10, 10), Vec3.ZERO);
    s.loose("b", WHITE, box(10, 10), Vec3.ZERO);
    Scene scene = s.scene().withLayers(List.of(5, 3));
    View front = Sight.look(scene, Look.straightOn());
    assertThat(front.polygons()).extracting(VisiblePolygon::part).containsExactly("a/a");
    View back = Sight.look(scene, Look.fromBehind());
    assertThat(back.polygons()).extracting(VisiblePolygon::part).containsExactly("b/b");
  }

  @Test
  void windowsTintAndDoNotHide() {
    Stacks s = new Stacks();
    s.loose("base", WHITE, box(100, 100), Vec3.ZERO);
    s.loose("pane", Stacks.acetate(), box(50, 50), new Vec3(10, 10, 5));
    s.loose("cut-out", NAVY, box(20, 20), new Vec3(20, 20, 10));
    View view = Sight.look(s.scene(), Look.straightOn());
    assertThat(paper(view, "base/base")).isCloseTo(9600, within(1e-6));
    assertThat(area(view, "pane/pane", VisiblePolygon.Kind.WINDOW)).isCloseTo(2100, within(1e-6));
    assertThat(view.polygons())
        .extracting(VisiblePolygon::part)
        .containsExactly("base/base", "cut-out/cut-out", "pane/pane");
  }

  @Test
  void wordsAreSeenWhereTheirFaceIs() {
    Stacks s = new Stacks();
    s.loose("base", WHITE, box(100, 100), Vec3.ZERO);
    s.loose("cover", NAVY, box(40, 100), new Vec3(0, 0, 5));
    Ink words =
        new Ink(
            "greeting",
            Face.FRONT,
            List.of(
                Region.of(Ring.rectangle(10, 10, 30, 20)),
                Region.of(Ring.rectangle(35, 10, 60, 20))),
            "#aa0000",
            "");
    s.pieces.set(0, s.pieces.get(0).withInks(List.of(words)));
    Scene scene = s.scene();
    View view = Sight.look(scene, Look.straightOn());
    assertThat(area(view, "greeting", VisiblePolygon.Kind.INK)).isCloseTo(200, within(1e-6));
    assertThat(view.polygons())
        .extracting(VisiblePolygon::colour)
        .containsExactly("#ffffff", "#aa0000", "#000080");
    Seen seen = Seen.of(scene, view).get(2);
    assertThat(seen.part()).isEqualTo("greeting");
    assertThat(seen.share()).isCloseTo(200.0 / 450, within(1e-9));
    View back = Sight.look(scene, Look.fromBehind());
    assertThat(area(back, "greeting", VisiblePolygon.Kind.INK)).isZero();
  }

  @Test
  void marksPointOutNewPiecesAndGlue() {
    Stacks s = new Stacks();
    s.loose("base", WHITE, box(100, 100), Vec3.ZERO);
    s.loose("cover", NAVY, box(40, 100), new Vec3(0, 0, 5));
    Patch front = new Patch("base", "base", Face.FRONT, box(60, 10), Vec2.ZERO, new Vec2(1, 0));
    Patch back = new Patch("cover", "cover", Face.BACK, box(40, 10), Vec2.ZERO, new Vec2(1, 0));
    Marks marks = new Marks(Set.of("cover"), List.of(front, back));
    View view = Sight.look(s.scene(), Look.straightOn(), marks);
    assertThat(area(view, "base/base", VisiblePolygon.Kind.GLUE)).isCloseTo(200, within(1e-6));
    assertThat(area(view, "cover/cover", VisiblePolygon.Kind.GLUE)).isZero();
    assertThat(view.polygons())
        .allMatch(p -> p.fresh() == p.piece().equals("cover"))
        .anyMatch(VisiblePolygon::fresh);
    assertThat(view.lines()).anyMatch(l -> l.fresh() && l.part().equals("cover/cover"));
    View behind = Sight.look(s.scene(), Look.fromBehind(), marks);
    assertThat(area(behind, "cover/cover", VisiblePolygon.Kind.GLUE)).isZero();
    assertThat(paper(behind, "cover/cover")).isZero();
  }

  /** A door that stands open square to the view is a line, hidden where something is before it. */
  @Test
  void aPanelSeenEdgeOnIsALine() {
    Stacks s = new Stacks();
    s.loose("base", WHITE, box(100, 100), Vec3.ZERO);
    place(s, "door", NAVY, box(30, 140), new Vec3(50, 0, 0), new Vec3(0, 0, 1), Y);
    s.loose("cover", WHITE, box(100, 20), new Vec3(0, 10, 40));
    View view = Sight.look(s.scene(), Look.straightOn());
    List<VisibleLine> door =
        view.lines().stream().filter(l -> l.part().equals("door/door")).toList();
    assertThat(door).allMatch(l -> Math.abs(l.at().middle().x() - 50) < 1e-9);
    assertThat(door.stream().mapToDouble(l -> l.at().length()).sum())
        .isCloseTo(140 - 20, within(1e-6));
    assertThat(
            door.stream()
                .filter(l -> l.stroke() == VisibleLine.Stroke.SILHOUETTE)
                .mapToDouble(l -> l.at().length())
                .sum())
        .isCloseTo(40, within(1e-6));
    assertThat(view.polygons()).noneMatch(p -> p.piece().equals("door"));
  }

  @Test
  void anEyeAmongThePanelsSeesOnlyWhatIsBeforeIt() {
    Stacks s = new Stacks();
    place(s, "floor", WHITE, box(200, 1000), new Vec3(-100, -50, 500), X, new Vec3(0, 0, -1));
    s.loose("behind", NAVY, box(500, 500), new Vec3(-250, -250, 450));
    View view = Sight.look(s.scene(), Look.fromEye(Vec3.ZERO, 400, 0, 0));
    assertThat(view.polygons()).extracting(VisiblePolygon::part).containsOnly("floor/floor");
    // Similar triangles: the floor 50 below the eye ends 900 away, at 50 * 400 / 900 below.
    assertThat(view.box().maxY()).isCloseTo(-50 * 400.0 / 900, within(1e-9));
    RayModel rays = new RayModel(s.scene(), Look.fromEye(Vec3.ZERO, 400, 0, 0));
    assertThat(rays.hits(new Vec2(0, -30))).hasSize(1);
    assertThat(view.polygons().get(0).region().contains(new Vec2(0, -30))).isTrue();
  }

  @Test
  void aFingerFindsWhatIsOnTop() {
    Scene scene = Stacks.caseA().scene();
    View view = Sight.look(scene, Look.straightOn());
    assertThat(view.at(new Vec2(0, 0)).orElseThrow().part()).isEqualTo("back/back");
    assertThat(view.at(new Vec2(50, 0)).orElseThrow().part()).isEqualTo("far/panel");
    assertThat(view.at(new Vec2(60, 0)).orElseThrow().part()).isEqualTo("middle/panel");
    assertThat(view.at(new Vec2(64, 0)).orElseThrow().part()).isEqualTo("near/tab 2");
    assertThat(view.at(new Vec2(70, 0)).orElseThrow().part()).isEqualTo("near/panel");
    assertThat(view.at(new Vec2(80, 0))).isEmpty();
  }

  /** Similar triangles again; beside or behind the eye there is no picture. */
  @Test
  void pointsHaveAPlaceInThePicture() {
    Look eye = Look.fromEye(Vec3.ZERO, 400, 0, 0);
    assertThat(eye.picture(new Vec3(10, -20, 200))).contains(new Vec2(20, -40));
    assertThat(eye.picture(new Vec3(10, -20, 400))).isEmpty();
    assertThat(eye.picture(new Vec3(10, -20, 500))).isEmpty();
    assertThat(Look.straightOn().picture(new Vec3(10, -20, 500))).contains(new Vec2(10, -20));
  }

  @Test
  void nothingToSee() {
    View view = Sight.look(new Scene(List.of()), Look.threeQuarter());
    assertThat(view.polygons()).isEmpty();
    assertThat(view.lines()).isEmpty();
    assertThat(view.box()).isEqualTo(new Box(0, 0, 0, 0));
  }

  @Test
  void badQuestionsAreRefused() {
    assertThatThrownBy(() -> new Look.Parallel(Vec3.ZERO, Y, Y))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("line of sight");
    Card card = new Card("none", List.of(), List.of(), List.of());
    assertThatThrownBy(() -> Scene.of(card, List.of(), List.of(Rigid.IDENTITY)))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("0 panels have 1 poses");
  }

  private enum Direction {
    FRONT,
    ASIDE,
    BEHIND;

    Look look() {
      return switch (this) {
        case FRONT -> Look.straightOn();
        case ASIDE -> Look.threeQuarter();
        case BEHIND -> Look.fromBehind();
      };
    }
  }

  @ParameterizedTest
  @EnumSource
  void theSameAgainAndInAnyOrder(Direction direction) {
    Scene scene = RandomScenes.scene(new Random(31), 12);
    View view = Sight.look(scene, direction.look());
    assertThat(Sight.look(scene, direction.look())).isEqualTo(view);
    List<Placed> shuffled = new ArrayList<>(scene.parts());
    Collections.shuffle(shuffled, new Random(4));
    View other = Sight.look(new Scene(shuffled), direction.look());
    for (Placed p : scene.parts()) {
      assertThat(paper(other, p.id())).isCloseTo(paper(view, p.id()), within(1e-3));
    }
  }

  @Test
  void foldsAreDrawnOnceAndCurvesInOneGo() {
    View view = Sight.look(Stacks.caseA().scene(), Look.threeQuarter());
    List<VisibleLine> folds =
        view.lines().stream()
            .filter(l -> l.kind() == VisibleLine.Kind.FOLD && l.part().startsWith("near/"))
            .toList();
    assertThat(folds).extracting(VisibleLine::name).contains("s3").doesNotHaveDuplicates();
    VisibleLine s3 = folds.stream().filter(l -> l.name().equals("s3")).findFirst().orElseThrow();
    assertThat(s3.stroke()).isEqualTo(VisibleLine.Stroke.INNER);
    double up = 150 * Math.cos(Look.THREE_QUARTER_RISE);
    assertThat(s3.at().length()).isCloseTo(up, within(1e-6));
    // The front's opening is wholly seen: four edges that join into one closed path.
    assertThat(view.paths())
        .anyMatch(p -> p.part().equals("near/panel") && p.closed() && p.points().size() == 4);
    double lines = view.lines().stream().mapToDouble(l -> l.at().length()).sum();
    assertThat(view.paths().stream().mapToDouble(SightTest::length).sum())
        .isCloseTo(lines, within(1e-6));
    assertThat(view.paths().size()).isLessThan(view.lines().size() / 2);
  }

  private static double length(VisiblePath path) {
    double sum = path.closed() ? path.points().get(0).distance(last(path)) : 0;
    for (int i = 1; i < path.points().size(); i++) {
      sum += path.points().get(i).distance(path.points().get(i - 1));
    }
    return sum;
  }

  private static Vec2 last(VisiblePath path) {
    return path.points().get(path.points().size() - 1);
  }

  /** A door shut in its frame: the slit about it is drawn once, lightly, and so is its fold. */
  @Test
  void slitsBetweenPanelsAreDrawnOnce() {
    Stacks s = new Stacks();
    s.loose("base", WHITE, box(100, 100), Vec3.ZERO);
    List<Segment> slits =
        List.of(Segment.of(30, 30, 70, 30), Segment.of(70, 30, 70, 80), Segment.of(70, 80, 30, 80));
    slit(s, slits, List.of(new Score("hinge", Segment.of(30, 30, 30, 80), 0)));
    Region door = Region.of(Ring.rectangle(30, 30, 70, 80));
    Region around = new Region(Ring.rectangle(0, 0, 100, 100), List.of(door.outer()));
    s.panels.set(0, new Panel("base", "around", around, Rigid.IDENTITY));
    s.panels.add(new Panel("base", "door", door, Rigid.IDENTITY));
    View view = Sight.look(s.scene(), Look.straightOn());
    assertThat(length(view, VisibleLine.Stroke.INNER)).isCloseTo(2 * 40 + 2 * 50, within(1e-6));
    assertThat(length(view, VisibleLine.Stroke.SILHOUETTE)).isCloseTo(400, within(1e-6));
    assertThat(length(view, VisibleLine.Stroke.EDGE)).isZero();
    assertThat(view.lines()).filteredOn(l -> l.name().equals("hinge")).hasSize(1);
  }

  private static void slit(Stacks s, List<Segment> slits, List<Score> scores) {
    Piece p = s.pieces.get(0);
    s.pieces.set(
        0,
        new Piece(
            p.id(),
            p.name(),
            p.stock(),
            Grain.ANY,
            p.shape(),
            slits,
            scores,
            p.labels(),
            List.of(),
            ""));
  }

  @Test
  void aSlitThatEndsInsideItsPanelIsALine() {
    Stacks s = new Stacks();
    s.loose("base", WHITE, box(100, 100), Vec3.ZERO);
    slit(s, List.of(Segment.of(20, 50, 60, 50)), List.of());
    s.loose("cover", NAVY, box(30, 60), new Vec3(0, 0, 10));
    View view = Sight.look(s.scene(), Look.straightOn());
    assertThat(length(view, VisibleLine.Stroke.INNER)).isCloseTo(30, within(1e-6));
    assertThat(view.lines()).extracting(VisibleLine::name).containsOnly("");
  }
}
