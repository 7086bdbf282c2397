package hingeleaf.outline;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.fail;
import static org.assertj.core.api.Assertions.within;

import hingeleaf.finding.Problem;
import hingeleaf.geom.Overlay;
import hingeleaf.geom.Region;
import hingeleaf.geom.Vec2;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Random;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class OutlineTest {
  private static final Offset<Double> TINY = within(1e-6);

  private static String svg(String attributes, String inside) {
    return "<?xml version=\"1.0\"?>\n<svg xmlns=\"http://www.w3.org/2000/svg\" "
        + attributes
        + ">\n"
        + inside
        + "\n</svg>\n";
  }

  /** A drawing in which one unit is one mm. */
  private static String mm(String inside) {
    return svg("width=\"100mm\" height=\"100mm\" viewBox=\"0 0 100 100\"", inside);
  }

  private static Outline.Reading read(String svg, double width) {
    OptionalDouble asked = width > 0 ? OptionalDouble.of(width) : OptionalDouble.empty();
    return Outline.read("boat.svg", svg.getBytes(StandardCharsets.UTF_8), asked);
  }

  private static Outline outline(String svg, double width) {
    Outline.Reading reading = read(svg, width);
    if (reading instanceof Outline.Reading.Read r) {
      assertThat(r.outline().regions()).allMatch(Overlay::valid);
      return r.outline();
    }
    return fail("not read: " + reading);
  }

  private static Region only(String svg) {
    List<Region> all = outline(svg, 0).regions();
    assertThat(all).hasSize(1);
    return all.get(0);
  }

  private static Problem refusal(String svg) {
    Outline.Reading reading = read(svg, 0);
    if (reading instanceof Outline.Reading.Refused r) {
      assertThat(r.problem().place()).isNotNull();
      assertThat(r.problem().message()).isNotBlank().doesNotContain("Exception");
      return r.problem();
    }
    return fail("was read: " + reading);
  }

  private static void checkBox(Region region, double width, double height, double chord) {
    assertThat(region.box().width()).isCloseTo(width, within(chord));
    assertThat(region.box().height()).isCloseTo(height, within(chord));
    assertThat(region.box().centre().length()).isLessThan(1e-9);
  }

  /** CSS Values and Units, absolute lengths: 1 in = 25.4 mm = 96 px = 72 pt = 6 pc = 101.6 Q. */
  @ParameterizedTest
  @CsvSource({
    "25.4mm, 25.4",
    "2.54cm, 25.4",
    "1in, 25.4",
    "96px, 25.4",
    "96, 25.4",
    "72pt, 25.4",
    "6pc, 25.4",
    "101.6Q, 25.4"
  })
  void units(String size, double mm) {
    checkBox(only(svg("", "<rect width=\"" + size + "\" height=\"" + size + "\"/>")), mm, mm, 1e-9);
    checkBox(
        only(
            svg(
                "width=\"" + size + "\" height=\"" + size + "\" viewBox=\"5 5 10 10\"",
                "<rect x=\"5\" y=\"5\" width=\"10\" height=\"10\"/>")),
        mm,
        mm,
        1e-9);
  }

  @Test
  void withoutSize_aUnitIsAPixel() {
    checkBox(only(svg("", "<rect width='96' height='48'/>")), 25.4, 12.7, 1e-9);
    checkBox(only(svg("viewBox='0 0 10 10'", "<rect width='96' height='48'/>")), 25.4, 12.7, 1e-9);
    checkBox(
        only(svg("width='100%' viewBox='0 0 9 9'", "<rect width='96' height='48'/>")),
        25.4,
        12.7,
        1e-9);
  }

  @Test
  void widthAskedFor_isMetExactlyAndChordsFollowTheFinalSize() {
    for (double width : new double[] {5, 55, 400}) {
      Outline o = outline(mm("<circle cx='7' cy='7' r='3'/>"), width);
      assertThat(o.box().width()).isCloseTo(width, within(1e-9));
      double exact = Math.PI * width * width / 4;
      assertThat(o.regions().get(0).area())
          .isCloseTo(exact, within(Math.PI * width * 0.01))
          .isNotCloseTo(exact, within(1e-6));
      for (Vec2 p : o.regions().get(0).outer().points()) {
        assertThat(p.length()).isCloseTo(width / 2, within(0.01));
      }
    }
  }

  @Test
  void yTurnsUp() {
    Region r = only(mm("<path d='M0 0 H10 V1 H1 V20 H0 Z'/>"));
    assertThat(r.contains(new Vec2(4.5, 9.5))).isTrue();
    assertThat(r.contains(new Vec2(4.5, -9.5))).isFalse();
    assertThat(r.outer().area()).isPositive();
  }

  /** W3C SVG 1.1 (Second Edition), section 8.3.2: the triangle example. */
  @Test
  void path_triangle01() {
    Region r = only(mm("<path d=\"M 100 100 L 300 100 L 200 300 z\"/>"));
    assertThat(r.area()).isCloseTo(200 * 200 / 2.0, TINY);
  }

  /**
   * W3C SVG 1.1, section 8.3.8 (arcs), example arcs01: a pie of three quarters, and of one; areas
   * of circular sectors, r = 150.
   */
  @Test
  void path_arcs01() {
    Region threeQuarters = only(mm("<path d=\"M300,200 h-150 a150,150 0 1,0 150,-150 z\"/>"));
    Region quarter = only(mm("<path d=\"M275,175 v-150 a150,150 0 0,0 -150,150 z\"/>"));
    double circle = Math.PI * 150 * 150;
    assertThat(threeQuarters.area()).isCloseTo(circle * 3 / 4, within(7.1));
    assertThat(quarter.area()).isCloseTo(circle / 4, within(2.4));
    checkBox(threeQuarters, 300, 300, 0.02);
    checkBox(quarter, 150, 150, 0.02);
  }

  /**
   * W3C SVG 1.1, section 8.3.9: "M 0.6.5" is M 0.6 0.5; and M 100 100 L 200 200 may be written M100
   * 100L200 200; superfluous commands and separators may go.
   */
  @Test
  void path_grammarOfNumbersAndFlags() {
    assertThat(only(mm("<path d='M0.5.5h10v10h-10z'/>")).area()).isCloseTo(100, TINY);
    assertThat(only(mm("<path d='M100 100L200 100L200 200z'/>")).area()).isCloseTo(5000, TINY);
    assertThat(only(mm("<path d='M 100 100 200 100 200 200 z'/>")).area()).isCloseTo(5000, TINY);
    assertThat(only(mm("<path d='m100,100 100,0 0,100z'/>")).area()).isCloseTo(5000, TINY);
    assertThat(only(mm("<path d='M1e1-1E1l+10,0,0 10-10-0z'/>")).area()).isCloseTo(100, TINY);
    Region packed = only(mm("<path d='M0 0a1 1 0 01.5.5z'/>"));
    Region spaced = only(mm("<path d='M 0 0 a 1 1 0 0 1 0.5 0.5 z'/>"));
    assertThat(packed).isEqualTo(spaced);
    Region both = only(mm("<path d='M10 0a10 10 0 1020 0a10 10 0 10-20 0z'/>"));
    assertThat(both.area()).isCloseTo(Math.PI * 100, within(0.7));
  }

  /**
   * A cubic with handles at the third points of a line, and the area under a parabola: Archimedes,
   * Quadrature of the Parabola, prop. 24: 4/3 of the triangle with the same base and height.
   */
  @Test
  void path_curves() {
    assertThat(only(mm("<path d='M0 0Q15 30 30 0Z'/>")).area())
        .isCloseTo(4.0 / 3 * (30 * 15 / 2.0), within(0.7));
    assertThat(only(mm("<path d='M0 0C10 20 20 20 30 0Z'/>")).area())
        .isCloseTo(only(mm("<path d='M0 0Q15 30 30 0Z'/>")).area(), within(1e-6));
    assertThat(only(mm("<path d='M0 0q15 30 30 0t30 0v40h-60z'/>")).area())
        .isCloseTo(60 * 40, within(1.5));
    assertThat(only(mm("<path d='M0 0c10 20 20 20 30 0s20-20 30 0v40h-60z'/>")).area())
        .isCloseTo(60 * 40, within(1.5));
  }

  /** W3C SVG 1.1, appendix F.6.2 and F.6.6: a radius of 0 is a line; small radii are enlarged. */
  @Test
  void path_arcsOutOfRange() {
    assertThat(only(mm("<path d='M0 0A0 5 0 0 1 10 0V10H0Z'/>")).area()).isCloseTo(100, TINY);
    assertThat(only(mm("<path d='M0 0A1 1 0 0 1 20 0Z'/>")).area())
        .isCloseTo(Math.PI * 100 / 2, within(0.4));
    assertThat(only(mm("<path d='M0 0A-10-10 0 0 1 20 0Z'/>")).area())
        .isCloseTo(Math.PI * 100 / 2, within(0.4));
  }

  /** A tilted half ellipse has half of pi a b whatever its tilt. */
  @Test
  void path_tiltedArc() {
    double x = 20 * Math.cos(Math.toRadians(30));
    double y = 20 * Math.sin(Math.toRadians(30));
    String d = String.format(java.util.Locale.ROOT, "M0 0A10 5 30 0 1 %.9f %.9fZ", x, y);
    assertThat(only(mm("<path d='" + d + "'/>")).area())
        .isCloseTo(Math.PI * 10 * 5 / 2, within(0.3));
  }

  @Test
  void basicShapes() {
    assertThat(only(mm("<rect x='5' y='5' width='30' height='20' rx='4'/>")).area())
        .isCloseTo(600 - (4 - Math.PI) * 16, within(0.3));
    assertThat(only(mm("<rect width='30' height='20' rx='40' ry='40'/>")).area())
        .isCloseTo(Math.PI * 15 * 10, within(0.8));
    assertThat(only(mm("<ellipse cx='50' cy='50' rx='30' ry='20'/>")).area())
        .isCloseTo(Math.PI * 600, within(1.6));
    assertThat(only(mm("<polygon points='0,0 30,0 30,40'/>")).area()).isCloseTo(600, TINY);
    assertThat(only(mm("<polyline points='0,0 30,0 30,40 0,0'/>")).area()).isCloseTo(600, TINY);
  }

  /** W3C SVG 1.1, section 7.5 and 7.6: nested transforms; the determinant scales areas. */
  @Test
  void transforms() {
    String rect = "<rect width='10' height='5'/>";
    checkBox(only(mm("<g transform='rotate(90)'>" + rect + "</g>")), 5, 10, 1e-9);
    checkBox(
        only(mm("<g transform='translate(50 90), rotate(-45) scale(2,3)'>" + rect + "</g>")),
        35 / Math.sqrt(2),
        35 / Math.sqrt(2),
        1e-9);
    assertThat(only(mm("<g transform='matrix(1 2 3 4 5 6)'>" + rect + "</g>")).area())
        .isCloseTo(2 * 50, TINY);
    checkBox(only(mm("<g transform='skewX(45)'>" + rect + "</g>")), 15, 5, 1e-9);
    checkBox(only(mm("<g transform='skewY(45)'>" + rect + "</g>")), 10, 15, 1e-9);
    checkBox(only(mm("<rect width='10' height='5' transform='rotate(90 3 4)'/>")), 5, 10, 1e-9);
    checkBox(
        only(mm("<g transform='scale(2)'><g transform='scale(-3)'>" + rect + "</g></g>")),
        60,
        30,
        1e-9);
  }

  /**
   * W3C SVG 1.1, section 11.3, the figures of fill-rule: two squares one in the other, run the same
   * way and opposite ways.
   */
  @Test
  void fillRules() {
    String same = "M0 0H30V30H0ZM10 10H20V20H10Z";
    String opposite = "M0 0H30V30H0ZM10 10V20H20V10Z";
    assertThat(only(mm("<path d='" + same + "'/>")).area()).isCloseTo(900, TINY);
    assertThat(only(mm("<path d='" + opposite + "'/>")).area()).isCloseTo(800, TINY);
    assertThat(only(mm("<path fill-rule='evenodd' d='" + same + "'/>")).area())
        .isCloseTo(800, TINY);
    assertThat(only(mm("<g style='fill-rule: evenodd'><path d='" + same + "'/></g>")).holes())
        .hasSize(1);
  }

  @Test
  void linesToCut_makeHolesAndFilledElementsDoNot() {
    String two = "<rect width='30' height='30'/><circle cx='15' cy='15' r='5'/>";
    assertThat(only(mm("<g fill='none'>" + two + "</g>")).holes()).hasSize(1);
    assertThat(only(mm(two)).area()).isCloseTo(900, TINY);
    assertThat(
            outline(mm("<rect width='3' height='3'/><rect x='9' width='3' height='3'/>"), 0)
                .regions())
        .hasSize(2);
    assertThat(only(mm("<rect width='3' height='3'/><rect x='2' width='3' height='3'/>")).area())
        .isCloseTo(15, TINY);
  }

  @Test
  void islandsInHoles_areRegions() {
    List<Region> all =
        outline(
                mm("<path fill-rule='evenodd' d='M0 0H50V50H0ZM10 10H40V40H10ZM20 20H30V30H20Z'/>"),
                0)
            .regions();
    assertThat(all).hasSize(2);
    assertThat(Overlay.area(all)).isCloseTo(2500 - 900 + 100, TINY);
  }

  @Test
  void whatDrawsNothing_isPassedOver() {
    String rest =
        "<defs><circle r='50'/></defs><clipPath id='c'><circle r='50'/></clipPath>"
            + "<g display='none'><circle r='50'/></g><g style='display:none'><circle r='50'/></g>"
            + "<x:thing xmlns:x='urn:other'><circle r='50'/></x:thing><title>Boat</title>";
    checkBox(only(mm(rest + "<rect width='9' height='9'/>")), 9, 9, 1e-9);
  }

  @Test
  void whatIsLeftOut_isNoted() {
    Outline.Reading reading =
        read(
            mm(
                "<rect width='9' height='9'/><text>hi</text><style>*{}</style>"
                    + "<image href='http://example.org/x.png' width='50' height='50'/>"),
            0);
    assertThat(reading).isInstanceOf(Outline.Reading.Read.class);
    assertThat(((Outline.Reading.Read) reading).notes())
        .extracting(Problem::message)
        .anySatisfy(m -> assertThat(m).contains("lettering"))
        .anySatisfy(m -> assertThat(m).contains("style sheet"))
        .anySatisfy(m -> assertThat(m).contains("picture"));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '~',
      value = {
        "<path d='M0 0H10V10'/>|open-outline|begins at (0.0, 0.0) and ends at (10.0, 10.0)",
        "<polyline points='0,0 9,0 9,9'/>|open-outline|`polyline` is open",
        "<line x2='9' y2='9'/><rect width='2' height='2'/>|open-outline|`line`",
        "<path d='M0 0L10 10H0L10 0Z'/>|crossing-outline|(5.0, 5.0)",
        "<path d='M0 0H10V10H0ZM5 5H15V15H5Z'/>|crossing-outline|`path`",
        "<path d='M0 0H10V10H0ZM0 0H10V10H0Z'/>|crossing-outline|`path`",
        "<path d=''/>|empty-drawing|no outline",
        "~~|empty-drawing|no outline",
        "<path d='M0 0H10Z'/>|empty-drawing|no area",
        "<rect width='9' height='0.0001'/>|empty-drawing|0.1 mm",
        "<rect width='99999' height='9'/>|too-large|10 m",
        "<path d='M0 0X'/>|bad-drawing|a path command at character 5",
        "<path d='L0 0'/>|bad-drawing|`M` at the beginning",
        "<path d='M0 0L5'/>|bad-drawing|a number",
        "<path d='M0 0L5,,5Z'/>|bad-drawing|a number",
        "<path d='M0 0a1 1 0 2 1 5 5z'/>|bad-drawing|a flag",
        "<path d='M0 0L1e309 5Z'/>|bad-drawing|too large",
        "<path d='M0 0L1e999999999 5Z'/>|bad-drawing|too large",
        "<path d='M0 0LNaN 5Z'/>|bad-drawing|a number",
        "<rect width='-5' height='5'/>|bad-drawing|less than 0",
        "<rect width='5em' height='5'/>|bad-drawing|unit",
        "<g transform='spin(3)'><circle r='3'/></g>|bad-drawing|transform",
        "<g transform='scale(1e9)'><circle r='3'/></g>|bad-drawing|too large",
        "<g transform='scale('><circle r='3'/></g>|bad-drawing|not closed",
        "<polygon points='1 2 3'/>|bad-drawing|odd",
        "<use href='#a'/>|external|use",
        "<svg><circle r='3'/></svg>|bad-drawing|drawing within"
      })
  void faults(String inside, String kind, String says) {
    Problem p = refusal(mm(inside));
    assertThat(p.kind()).isEqualTo(kind);
    assertThat(p.message()).contains(says);
  }

  @Test
  void faults_haveTheLineOfTheirElement() {
    Problem p = refusal(mm("<rect width='9' height='9'/>\n<path d='M0 0H10V10'/>"));
    assertThat(p.place()).extracting(pl -> pl.line()).isEqualTo(4);
  }

  /** What XML allows a hostile file to ask for: nothing of it is opened. */
  @Test
  void doctypesAndEntities_areRefused() {
    String body = "<svg xmlns='http://www.w3.org/2000/svg'><rect width='9' height='9'/></svg>";
    assertThat(refusal("<!DOCTYPE svg>" + body).kind()).isEqualTo("doctype");
    assertThat(
            refusal(
                    "<?xml version='1.0'?><!DOCTYPE svg PUBLIC '-//W3C//DTD SVG 1.1//EN'"
                        + " 'http://www.w3.org/Graphics/SVG/1.1/DTD/svg11.dtd'>"
                        + body)
                .message())
        .contains("DOCTYPE");
    assertThat(
            refusal(
                    "<!DOCTYPE svg [<!ENTITY a SYSTEM 'file:///etc/hostname'>]>"
                        + body.replace("<rect", "&a;<rect"))
                .kind())
        .isEqualTo("doctype");
    StringBuilder laughs = new StringBuilder("<!DOCTYPE svg [<!ENTITY a 'ha'>");
    for (int i = 1; i < 20; i++) {
      laughs.append("<!ENTITY a").append(i).append(" '");
      laughs.append(("&a" + (i == 1 ? "" : i - 1) + ";").repeat(10)).append("'>");
    }
    assertThat(refusal(laughs + "]>" + body.replace("<rect", "&a19;<rect")).kind())
        .isEqualTo("doctype");
    assertThat(refusal(body.replace("<rect", "&a;<rect")).kind()).isIn("not-svg", "doctype");
  }

  @Test
  void notSvg_isRefused() {
    assertThat(refusal("").kind()).isEqualTo("empty-file");
    assertThat(refusal("boat").kind()).isEqualTo("not-svg");
    assertThat(refusal("<html/>").message()).contains("`html`");
    assertThat(refusal("<svg><rect").kind()).isEqualTo("not-svg");
    assertThat(refusal("\u0089PNG\r\n\u001a").kind()).isEqualTo("not-svg");
    assertThat(refusal(svg("viewBox='0 0 0 5'", "<circle r='3'/>")).kind())
        .isEqualTo("bad-drawing");
    assertThat(refusal(svg("viewBox='0 0 5 5' width='-3'", "<circle r='3'/>")).kind())
        .isEqualTo("bad-drawing");
  }

  @Test
  void tooMuch_isRefused() {
    assertThat(refusal("<svg>" + " ".repeat(2_000_000) + "</svg>").kind()).isEqualTo("too-large");
    assertThat(refusal(mm("<path d='M0 0" + "h1".repeat(900_000) + "z'/>")).kind())
        .isEqualTo("too-many-points");
    assertThat(refusal(mm("<polygon points='" + "1 ".repeat(900_000) + "'/>")).kind())
        .isEqualTo("too-many-points");
    assertThat(refusal(mm("<g>".repeat(300))).kind()).isEqualTo("too-deep");
    assertThat(refusal(mm("<path d='" + "M0 0h1v1z".repeat(60_000) + "'/>")).kind())
        .isEqualTo("too-many-points");
    assertThat(refusal(mm("<circle r='1'/>".repeat(20_000))).kind()).isEqualTo("too-many-points");
  }

  /** A drawing with signs knocked out is read or refused, never thrown. Seed 9. */
  @Test
  void damagedDrawing_neverThrows() {
    String whole =
        mm(
            "<g transform='translate(5,5) rotate(10)'><path fill-rule='evenodd'"
                + " d='M0 0H50V50H0ZM10 10a5 5 0 1010 0a5 5 0 10-10 0zM30 30C31 32 35 33 30 40Z'/>"
                + "<rect x='60' width='9mm' height='9'/></g>");
    Random random = new Random(9);
    String signs = "0123456789.,-+eE<>'\"/=()MZmzAaCc &;#";
    int refused = 0;
    for (int i = 0; i < 3000; i++) {
      StringBuilder text = new StringBuilder(whole);
      for (int n = random.nextInt(3); n >= 0; n--) {
        int at = 60 + random.nextInt(text.length() - 60);
        text.replace(at, at + 1, "" + signs.charAt(random.nextInt(signs.length())));
      }
      Outline.Reading reading = read(text.toString(), random.nextBoolean() ? 55 : 0);
      if (reading instanceof Outline.Reading.Refused) {
        refused++;
      } else {
        assertThat(((Outline.Reading.Read) reading).outline().regions()).isNotEmpty();
      }
    }
    assertThat(refused).isBetween(500, 2900);
  }
}
