package hingeleaf.paper.svg;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hingeleaf.card.Piece;
import hingeleaf.geom.Ring;
import hingeleaf.geom.Vec2;
import hingeleaf.paper.Drawing;
import hingeleaf.paper.Look;
import hingeleaf.paper.Mark;
import hingeleaf.paper.Samples;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.xml.sax.InputSource;

/** What is written is read back by the platform's XML reader and compared with the piece. */
class PieceSvgTest {
  private static final Pattern POINT = Pattern.compile("([ML])(-?[\\d.]+) (-?[\\d.]+)");

  private static Element root(String svg) throws Exception {
    Document document =
        DocumentBuilderFactory.newInstance()
            .newDocumentBuilder()
            .parse(new InputSource(new StringReader(svg)));
    return document.getDocumentElement();
  }

  /** Paths by group, back in the frame of the piece. */
  private static Map<String, List<List<Vec2>>> lines(Element svg) {
    double height = Double.parseDouble(svg.getAttribute("viewBox").split(" ")[3]);
    Map<String, List<List<Vec2>>> groups = new TreeMap<>();
    var paths = svg.getElementsByTagName("path");
    for (int i = 0; i < paths.getLength(); i++) {
      Element path = (Element) paths.item(i);
      String group = ((Element) path.getParentNode()).getAttribute("id");
      List<Vec2> points = new ArrayList<>();
      Matcher m = POINT.matcher(path.getAttribute("d"));
      while (m.find()) {
        points.add(
            new Vec2(Double.parseDouble(m.group(2)), height - Double.parseDouble(m.group(3))));
      }
      groups.computeIfAbsent(group, g -> new ArrayList<>()).add(points);
    }
    return groups;
  }

  private static <T> T in(Map<String, T> map, String key) {
    return Optional.ofNullable(map.get(key)).orElseThrow();
  }

  private static void checkSame(List<Vec2> actual, List<Vec2> expected) {
    assertThat(actual).hasSameSizeAs(expected);
    for (int i = 0; i < actual.size(); i++) {
      // Each coordinate is rounded to 0.0001 mm.
      assertThat(actual.get(i).distance(expected.get(i))).isLessThan(1e-4);
    }
  }

  @Test
  void write_readBack_isThePiece() throws Exception {
    Piece piece = Samples.crooked();
    Map<String, List<List<Vec2>>> groups = lines(root(PieceSvg.write(piece)));
    assertThat(groups.keySet()).containsExactly("Creasing", "Cutting", "ReverseCreasing");
    List<List<Vec2>> cuts = in(groups, "Cutting");
    assertThat(cuts).hasSize(3);
    checkSame(cuts.get(0), List.of(piece.slits().get(0).from(), piece.slits().get(0).to()));
    checkSame(cuts.get(1), piece.shape().holes().get(0).points());
    checkSame(cuts.get(2), piece.shape().outer().points());
    checkSame(in(groups, "ReverseCreasing").get(0), ends(piece, "hinge"));
    checkSame(in(groups, "Creasing").get(0), ends(piece, "back"));
  }

  private static List<Vec2> ends(Piece piece, String score) {
    return List.of(piece.score(score).at().from(), piece.score(score).at().to());
  }

  @Test
  void frame_readBack_keepsItsAreaAndPlace() throws Exception {
    Piece piece = Samples.frame("near", 150, 150, 12, 12, 120);
    List<List<Vec2>> cuts = in(lines(root(PieceSvg.write(piece))), "Cutting");
    assertThat(new Ring(cuts.get(1)).area()).isCloseTo(198 * 150.0, within(1e-6));
    // A regular polygon of 120 corners on a circle of radius 60: n/2 r^2 sin(2 pi / n).
    double expected = -60 * 3600 * Math.sin(2 * Math.PI / 120);
    assertThat(new Ring(cuts.get(0)).area()).isCloseTo(expected, within(0.05));
  }

  // CSS Values and Units: with width in mm and a viewBox of the same numbers a unit is 1 mm.
  @Test
  void size_isTrue() throws Exception {
    Element svg = root(PieceSvg.write(Samples.frame("near", 150, 150, 12, 12, 120)));
    assertThat(svg.getAttribute("width")).isEqualTo("198mm");
    assertThat(svg.getAttribute("height")).isEqualTo("150mm");
    assertThat(svg.getAttribute("viewBox")).isEqualTo("0 0 198 150");
  }

  @Test
  void upIsUp() throws Exception {
    String svg = PieceSvg.write(Samples.crooked());
    // The lowest left corner 0, 0 is written at the bottom, that is at y = height.
    assertThat(svg).contains("M0 41.3L60.1235 41.3L60.1235 9.55L20 0L0 11.3Z");
  }

  @Test
  void mountainAndValley_differWithoutColour() throws Exception {
    Element svg = root(PieceSvg.write(Samples.crooked()));
    Map<String, String> dashes = new TreeMap<>();
    var paths = svg.getElementsByTagName("path");
    for (int i = 0; i < paths.getLength(); i++) {
      Element path = (Element) paths.item(i);
      dashes.put(
          ((Element) path.getParentNode()).getAttribute("id") + i,
          path.getAttribute("stroke-dasharray"));
    }
    assertThat(in(dashes, "Creasing0").split(" ")).hasSize(6);
    assertThat(in(dashes, "ReverseCreasing2").split(" ")).hasSize(2);
    assertThat(dashes.get("Cutting3")).isEmpty();
  }

  @Test
  void names_areEscaped() throws Exception {
    Element svg = root(PieceSvg.write(Samples.crooked()));
    assertThat(svg.getElementsByTagName("title").item(0).getTextContent())
        .isEqualTo("wedge <1> & \"2\"");
  }

  @Test
  void characters_thatXmlForbids_areLeftOut() throws Exception {
    Mark words =
        new Mark.Words(
            "a\u0000b\u000b\uD800c \uD83C\uDF41",
            Vec2.ZERO,
            5,
            Mark.Weight.REGULAR,
            Mark.Anchor.START,
            Look.INK,
            0);
    String svg = SvgWriter.write(Drawing.plain(10, 10, "t", List.of(words)), "");
    assertThat(root(svg).getElementsByTagName("text").item(0).getTextContent())
        .isEqualTo("abc \uD83C\uDF41");
  }
}
