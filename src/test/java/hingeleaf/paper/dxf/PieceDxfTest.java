package hingeleaf.paper.dxf;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hingeleaf.card.Piece;
import hingeleaf.geom.Ring;
import hingeleaf.geom.Vec2;
import hingeleaf.paper.Samples;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Read back by a small reader of its own, by the rules of the R12 format. */
class PieceDxfTest {
  private record Pair(int code, String value) {}

  private record Entity(String kind, String layer, boolean closed, List<Vec2> points) {}

  private static List<Pair> pairs(String dxf) {
    String[] lines = dxf.split("\n", -1);
    List<Pair> pairs = new ArrayList<>();
    for (int i = 0; i + 1 < lines.length; i += 2) {
      pairs.add(new Pair(Integer.parseInt(lines[i].strip()), lines[i + 1]));
    }
    assertThat(lines.length % 2).as("pairs of lines and a last line break").isEqualTo(1);
    return pairs;
  }

  private static List<Entity> entities(String dxf) {
    List<Pair> pairs = pairs(dxf);
    int i = pairs.indexOf(new Pair(2, "ENTITIES")) + 1;
    List<Entity> entities = new ArrayList<>();
    while (!pairs.get(i).value().equals("ENDSEC")) {
      Pair start = pairs.get(i++);
      assertThat(start.code()).isZero();
      String layer = "";
      boolean closed = false;
      List<Vec2> points = new ArrayList<>();
      double x = 0;
      for (; pairs.get(i).code() != 0; i++) {
        Pair p = pairs.get(i);
        switch (p.code()) {
          case 8 -> layer = p.value();
          case 10, 11 -> x = Double.parseDouble(p.value());
          case 20, 21 -> points.add(new Vec2(x, Double.parseDouble(p.value())));
          case 70 -> closed = (Integer.parseInt(p.value()) & 1) == 1;
          case 30, 31, 66 -> {}
          default -> throw new AssertionError("a group code " + p.code() + " among entities");
        }
      }
      switch (start.value()) {
        case "LINE" -> entities.add(new Entity("LINE", layer, false, points));
        case "POLYLINE" -> entities.add(new Entity("POLYLINE", layer, closed, new ArrayList<>()));
        case "VERTEX" -> entities.get(entities.size() - 1).points().addAll(points);
        case "SEQEND" -> assertThat(layer).isEqualTo(entities.get(entities.size() - 1).layer());
        default -> throw new AssertionError(start.value() + " is not R12 line work");
      }
    }
    assertThat(pairs.get(pairs.size() - 1)).isEqualTo(new Pair(0, "EOF"));
    return entities;
  }

  private static void checkSame(List<Vec2> actual, List<Vec2> expected) {
    assertThat(actual).hasSameSizeAs(expected);
    for (int i = 0; i < actual.size(); i++) {
      assertThat(actual.get(i).distance(expected.get(i))).isLessThan(1e-4);
    }
  }

  @Test
  void write_readBack_isThePiece() {
    Piece piece = Samples.crooked();
    List<Entity> all = entities(PieceDxf.write(piece));
    List<Entity> rings = all.stream().filter(e -> e.kind().equals("POLYLINE")).toList();
    assertThat(rings)
        .hasSize(2)
        .allMatch(Entity::closed)
        .allMatch(e -> e.layer().equals("CUTTING"));
    checkSame(rings.get(0).points(), piece.shape().holes().get(0).points());
    checkSame(rings.get(1).points(), piece.shape().outer().points());
    List<Entity> valleys = all.stream().filter(e -> e.layer().equals("REVERSECREASING")).toList();
    assertThat(valleys).hasSize(1);
    checkSame(
        valleys.get(0).points(),
        List.of(piece.score("hinge").at().from(), piece.score("hinge").at().to()));
    assertThat(all).filteredOn(e -> e.layer().equals("CREASING")).hasSize(2);
    assertThat(all)
        .filteredOn(e -> e.layer().equals("CUTTING") && e.kind().equals("LINE"))
        .hasSize(1);
  }

  // Case A of the trade notes.
  @Test
  void frame_hasItsSize() {
    List<Entity> all = entities(PieceDxf.write(Samples.frame("near", 150, 150, 12, 12, 120)));
    Entity outline = all.get(all.size() - 1);
    assertThat(new Ring(outline.points()).area()).isCloseTo(198 * 150, within(1e-6));
    assertThat(
            all.stream().filter(e -> e.layer().equals("CREASING")).map(e -> e.points().get(0).x()))
        .containsExactly(12.0, 24.0, 174.0, 186.0);
  }

  // R12: AC1009; layer names at most 31 characters of A-Z 0-9 $ _ -.
  @Test
  void head_saysR12_andMillimetres_inAscii() {
    String dxf = PieceDxf.write(Samples.crooked());
    List<Pair> pairs = pairs(dxf);
    int version = pairs.indexOf(new Pair(9, "$ACADVER"));
    assertThat(pairs.get(version + 1)).isEqualTo(new Pair(1, "AC1009"));
    assertThat(pairs.get(1).code()).isEqualTo(999);
    assertThat(pairs.get(1).value()).contains("millimetre");
    assertThat(pairs)
        .filteredOn(p -> p.code() == 8)
        .allMatch(p -> p.value().matches("[A-Z0-9$_-]{1,31}"));
    assertThat(dxf.chars().allMatch(c -> c == '\n' || (c >= 32 && c < 127))).isTrue();
  }

  @Test
  void name_cannotBreakTheFile() {
    Piece plain = Samples.crooked();
    Piece named =
        Piece.flat(
            "x",
            "boat\n0\nEOF\n \u00e9\uD83C\uDF41",
            plain.stock(),
            plain.grain(),
            plain.shape(),
            plain.labels().get(0),
            "x");
    assertThat(pairs(PieceDxf.write(named)).get(0).value()).isEqualTo("boat?0?EOF? ??");
    assertThat(entities(PieceDxf.write(named))).hasSize(2);
  }

  @Test
  void everyLayer_inTheTable_hasALineTypeThatIsThere() {
    List<Pair> pairs = pairs(PieceDxf.write(Samples.crooked()));
    List<String> types = new ArrayList<>();
    for (int i = 0; i < pairs.size(); i++) {
      if (pairs.get(i).equals(new Pair(0, "LTYPE"))) {
        types.add(pairs.get(i + 1).value());
      }
    }
    assertThat(types).containsExactly("CONTINUOUS", "MOUNTAIN", "VALLEY");
    assertThat(pairs)
        .filteredOn(p -> p.code() == 6)
        .extracting(Pair::value)
        .isSubsetOf(types)
        .hasSize(3);
  }
}
