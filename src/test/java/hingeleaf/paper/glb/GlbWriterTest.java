package hingeleaf.paper.glb;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import de.javagl.jgltf.model.AccessorFloatData;
import de.javagl.jgltf.model.AccessorModel;
import de.javagl.jgltf.model.GltfModel;
import de.javagl.jgltf.model.MeshPrimitiveModel;
import de.javagl.jgltf.model.NodeModel;
import de.javagl.jgltf.model.io.GltfModelReader;
import hingeleaf.geom.Region;
import hingeleaf.geom.Rigid;
import hingeleaf.geom.Ring;
import hingeleaf.geom.Vec2;
import hingeleaf.geom.Vec3;
import hingeleaf.paper.Samples;
import hingeleaf.stock.Stock.Faces;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Random;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/**
 * The file is taken apart by the letter of the glTF 2.0 specification and read by another reader.
 */
class GlbWriterTest {
  private static final Faces FACES = new Faces("#1f4e79", "#ffffff", "#808080");

  private static final Region WINDOW =
      new Region(
          Ring.rectangle(24, 0, 174, 150), List.of(Samples.circle(new Vec2(99, 75), 60, 120)));

  private static final Rigid TILTED =
      Rigid.rotation(new Vec3(24, 0, 0), new Vec3(24, 1, 0), 0.7)
          .then(Rigid.translation(new Vec3(-99, -75, 36)));

  private static final List<Solid> SOLIDS =
      List.of(
          new Solid("near", "panel", WINDOW, 0.356, 0, FACES, false, TILTED),
          new Solid(
              "near",
              "left side",
              Region.of(Ring.rectangle(12, 0, 24, 150)),
              0.356,
              0.356,
              FACES,
              false,
              Rigid.IDENTITY),
          new Solid(
              "window",
              "window",
              Region.of(Ring.rectangle(0, 0, 130, 130)),
              0.2,
              0,
              Faces.alike("#f0f8ff"),
              true,
              Rigid.IDENTITY));

  private record File(JsonNode json, ByteBuffer data) {
    float[][] vectors(int accessor) {
      JsonNode a = json.get("accessors").get(accessor);
      assertThat(a.get("componentType").asInt()).isEqualTo(5126);
      int wide =
          a.get("type").asString().equals("SCALAR") ? 1 : a.get("type").asString().charAt(3) - '0';
      int at = json.get("bufferViews").get(a.get("bufferView").asInt()).get("byteOffset").asInt();
      float[][] rows = new float[a.get("count").asInt()][wide];
      for (int i = 0; i < rows.length; i++) {
        for (int k = 0; k < wide; k++) {
          rows[i][k] = data.getFloat(at + 4 * (i * wide + k));
        }
      }
      return rows;
    }

    int[] indices(int accessor) {
      JsonNode a = json.get("accessors").get(accessor);
      int at = json.get("bufferViews").get(a.get("bufferView").asInt()).get("byteOffset").asInt();
      boolean small = a.get("componentType").asInt() == 5123;
      int[] indices = new int[a.get("count").asInt()];
      for (int i = 0; i < indices.length; i++) {
        indices[i] = small ? data.getShort(at + 2 * i) & 0xffff : data.getInt(at + 4 * i);
      }
      return indices;
    }
  }

  /** By glTF 2.0, 4.4: header of 12 bytes, chunks padded to 4 bytes, JSON first, BIN second. */
  private static File open(byte[] glb) {
    ByteBuffer b = ByteBuffer.wrap(glb).order(ByteOrder.LITTLE_ENDIAN);
    assertThat(new String(glb, 0, 4, StandardCharsets.US_ASCII)).isEqualTo("glTF");
    assertThat(b.getInt(4)).isEqualTo(2);
    assertThat(b.getInt(8)).isEqualTo(glb.length);
    int json = b.getInt(12);
    assertThat(json % 4).isZero();
    assertThat(new String(glb, 16, 4, StandardCharsets.US_ASCII)).isEqualTo("JSON");
    int bin = b.getInt(20 + json);
    assertThat(bin % 4).isZero();
    assertThat(new String(glb, 24 + json, 4, StandardCharsets.US_ASCII)).isEqualTo("BIN\0");
    assertThat(28 + json + bin).isEqualTo(glb.length);
    JsonNode root = JsonMapper.shared().readTree(new String(glb, 20, json, StandardCharsets.UTF_8));
    assertThat(root.get("buffers").get(0).get("byteLength").asInt()).isEqualTo(bin);
    ByteBuffer data = b.slice(28 + json, bin).order(ByteOrder.LITTLE_ENDIAN);
    return new File(root, data);
  }

  private static double[] corner(float[] p) {
    return new double[] {p[0] * 1e3, p[1] * 1e3, p[2] * 1e3};
  }

  /** Volume enclosed by all faces of a mesh, mm3, by the divergence theorem. */
  private static double volume(File file, int mesh) {
    double six = 0;
    for (JsonNode part : file.json().get("meshes").get(mesh).get("primitives")) {
      float[][] at = file.vectors(part.get("attributes").get("POSITION").asInt());
      int[] t = file.indices(part.get("indices").asInt());
      for (int i = 0; i < t.length; i += 3) {
        double[] a = corner(at[t[i]]);
        double[] b = corner(at[t[i + 1]]);
        double[] c = corner(at[t[i + 2]]);
        six +=
            a[0] * (b[1] * c[2] - b[2] * c[1])
                + a[1] * (b[2] * c[0] - b[0] * c[2])
                + a[2] * (b[0] * c[1] - b[1] * c[0]);
      }
    }
    return six / 6;
  }

  @Test
  void boards_areClosed_andHoldAreaTimesThickness() {
    File file = open(GlbWriter.write("Fair winds", SOLIDS, List.of()));
    for (int i = 0; i < SOLIDS.size(); i++) {
      Solid s = SOLIDS.get(i);
      double expected = s.region().area() * s.thickness();
      // Corners are single floats in metres: 0.1 m to about 7 significant digits.
      assertThat(volume(file, i)).isCloseTo(expected, within(expected * 1e-4));
    }
  }

  @Test
  void triangles_coverThePanelOnce_andLookOutwards() {
    File file = open(GlbWriter.write("Fair winds", SOLIDS, List.of()));
    JsonNode front = file.json().get("meshes").get(0).get("primitives").get(0);
    float[][] at = file.vectors(front.get("attributes").get("POSITION").asInt());
    float[][] normals = file.vectors(front.get("attributes").get("NORMAL").asInt());
    int[] t = file.indices(front.get("indices").asInt());
    double area = 0;
    for (int i = 0; i < t.length; i += 3) {
      double[] a = corner(at[t[i]]);
      double[] b = corner(at[t[i + 1]]);
      double[] c = corner(at[t[i + 2]]);
      double twice = (b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0]);
      assertThat(twice).isGreaterThan(0);
      area += twice / 2;
    }
    assertThat(area).isCloseTo(WINDOW.area(), within(0.1));
    for (float[] n : normals) {
      assertThat(n).containsExactly(0, 0, 1);
    }
    // A polygon of n corners with h holes falls into n + 2 h - 2 triangles (Euler).
    assertThat(t.length / 3).isEqualTo(4 + 120 + 2 - 2);
  }

  @Test
  void everyAccessor_keepsToItsViewAndItsBounds() {
    File file = open(GlbWriter.write("Fair winds", SOLIDS, moments(5)));
    JsonNode json = file.json();
    int views = json.get("bufferViews").size();
    int end = 0;
    for (JsonNode v : json.get("bufferViews")) {
      assertThat(v.get("byteOffset").asInt() % 4).isZero();
      assertThat(v.get("byteOffset").asInt()).isGreaterThanOrEqualTo(end);
      end = v.get("byteOffset").asInt() + v.get("byteLength").asInt();
    }
    assertThat(end).isLessThanOrEqualTo(json.get("buffers").get(0).get("byteLength").asInt());
    assertThat(json.get("accessors").size()).isEqualTo(views);
    for (int i = 0; i < views; i++) {
      JsonNode a = json.get("accessors").get(i);
      if (a.has("min")) {
        float[][] rows = file.vectors(i);
        for (int k = 0; k < rows[0].length; k++) {
          float lo = Float.MAX_VALUE;
          float hi = -Float.MAX_VALUE;
          for (float[] row : rows) {
            lo = Math.min(lo, row[k]);
            hi = Math.max(hi, row[k]);
          }
          assertThat(a.get("min").get(k).floatValue()).isEqualTo(lo);
          assertThat(a.get("max").get(k).floatValue()).isEqualTo(hi);
        }
      }
    }
    for (JsonNode mesh : json.get("meshes")) {
      for (JsonNode part : mesh.get("primitives")) {
        int places = part.get("attributes").get("POSITION").asInt();
        // glTF 2.0, 3.6.2.5: positions and times of keys must tell their bounds.
        assertThat(json.get("accessors").get(places).has("min")).isTrue();
        int corners = file.vectors(places).length;
        assertThat(file.vectors(part.get("attributes").get("NORMAL").asInt()))
            .hasNumberOfRows(corners);
        for (int i : file.indices(part.get("indices").asInt())) {
          assertThat(i).isBetween(0, corners - 1);
        }
      }
    }
  }

  @Test
  void timesTellTheirBounds() {
    JsonNode json = open(GlbWriter.write("Fair winds", SOLIDS, moments(5))).json();
    for (JsonNode sampler : json.get("animations").get(0).get("samplers")) {
      assertThat(json.get("accessors").get(sampler.get("input").asInt()).has("max")).isTrue();
    }
  }

  @Test
  void panelsThatLookTheSameShareAMesh() {
    Solid first = SOLIDS.get(0);
    Region beside = first.region().moved(new Vec2(40, -7));
    Rigid back = Rigid.translation(new Vec3(-40, 7, 3));
    Solid twin =
        new Solid(
            "twin",
            "panel",
            beside,
            first.thickness(),
            first.lift(),
            first.faces(),
            first.clear(),
            back);
    Solid thicker =
        new Solid(
            "thick",
            "panel",
            beside,
            first.thickness() + 0.1,
            first.lift(),
            first.faces(),
            first.clear(),
            back);
    JsonNode json =
        open(GlbWriter.write("Fair winds", List.of(first, twin, thicker), List.of())).json();
    assertThat(json.get("nodes").get(0).get("mesh").asInt()).isZero();
    assertThat(json.get("nodes").get(1).get("mesh").asInt()).isZero();
    assertThat(json.get("nodes").get(2).get("mesh").asInt()).isEqualTo(1);
    assertThat(json.get("meshes").size()).isEqualTo(2);
  }

  private static List<Moment> moments(int n) {
    List<Moment> moments = new ArrayList<>();
    for (int i = 0; i < n; i++) {
      Rigid turn = Rigid.rotation(Vec3.ZERO, new Vec3(0, 1, 0), 6.2 * i / (n - 1));
      moments.add(new Moment(2 + 0.5 * i, SOLIDS.stream().map(s -> s.made().then(turn)).toList()));
    }
    return moments;
  }

  @Test
  void animation_stepsAreShort_andTellThePoses() {
    int n = 9;
    File file = open(GlbWriter.write("Fair winds", SOLIDS, moments(n)));
    JsonNode animation = file.json().get("animations").get(0);
    assertThat(animation.get("channels")).hasSize(2 * SOLIDS.size());
    for (JsonNode channel : animation.get("channels")) {
      JsonNode sampler = animation.get("samplers").get(channel.get("sampler").asInt());
      float[][] times = file.vectors(sampler.get("input").asInt());
      assertThat(times).hasNumberOfRows(n);
      assertThat(times[0][0]).isZero();
      assertThat(times[n - 1][0]).isEqualTo(4f);
      float[][] values = file.vectors(sampler.get("output").asInt());
      assertThat(values).hasNumberOfRows(n);
      if (channel.get("target").get("path").asString().equals("rotation")) {
        for (int i = 0; i < n; i++) {
          double length = 0;
          double step = 0;
          for (int k = 0; k < 4; k++) {
            length += values[i][k] * values[i][k];
            step += i == 0 ? 0.25 : values[i][k] * values[i - 1][k];
          }
          assertThat(length).isCloseTo(1, within(1e-6));
          assertThat(step).as("never the long way round").isGreaterThan(0);
        }
      }
    }
  }

  /**
   * Read by an independent library: the world place of every front corner, taken back to the flat.
   */
  @Test
  void anotherReader_unfoldsThePanelsToTheirPieces() throws IOException {
    byte[] glb = GlbWriter.write("Fair winds", SOLIDS, moments(3));
    GltfModel model = new GltfModelReader().readWithoutReferences(new ByteArrayInputStream(glb));
    assertThat(model.getAnimationModels()).hasSize(1);
    for (Solid s : SOLIDS) {
      NodeModel node =
          model.getNodeModels().stream()
              .filter(m -> (s.piece() + "/" + s.panel()).equals(m.getName()))
              .findFirst()
              .orElseThrow();
      float[] m = node.computeGlobalTransform(new float[16]);
      MeshPrimitiveModel front = node.getMeshModels().get(0).getMeshPrimitiveModels().get(0);
      AccessorModel position = Objects.requireNonNull(front.getAttributes().get("POSITION"));
      AccessorFloatData data = (AccessorFloatData) position.getAccessorData();
      List<Vec2> corners = new ArrayList<>(s.region().outer().points());
      s.region().holes().forEach(h -> corners.addAll(h.points()));
      assertThat(data.getNumElements()).isEqualTo(corners.size());
      for (int i = 0; i < data.getNumElements(); i++) {
        double[] w = new double[3];
        for (int r = 0; r < 3; r++) {
          w[r] =
              1e3
                  * (m[r] * data.get(i, 0)
                      + m[4 + r] * data.get(i, 1)
                      + m[8 + r] * data.get(i, 2)
                      + m[12 + r]);
        }
        Vec3 flat = s.made().inverse().apply(new Vec3(w[0], w[1], w[2]));
        assertThat(flat.z()).isCloseTo(s.lift() + s.thickness() / 2, within(1e-3));
        assertThat(corners).anyMatch(c -> c.distance(new Vec2(flat.x(), flat.y())) < 1e-3);
      }
    }
  }

  @Test
  void pieces_holdTheirPanels_andMaterialsAreShared() {
    JsonNode json = open(GlbWriter.write("Fair winds", SOLIDS, List.of())).json();
    JsonNode nodes = json.get("nodes");
    assertThat(nodes.get(3).get("name").asString()).isEqualTo("Fair winds");
    assertThat(nodes.get(4).get("name").asString()).isEqualTo("near");
    assertThat(nodes.get(4).get("children")).hasSize(2);
    assertThat(json.get("materials")).hasSize(4);
    assertThat(json.get("materials").get(3).get("alphaMode").asString()).isEqualTo("BLEND");
    // sRGB 0x80 is 0.2159 in linear light (IEC 61966-2-1).
    JsonNode grey = json.get("materials").get(2).get("pbrMetallicRoughness").get("baseColorFactor");
    assertThat(grey.get(0).asDouble()).isCloseTo(0.2159, within(1e-4));
  }

  @Test
  void turn_ofRandomRotations_turnsLikeTheMatrix() {
    Random random = new Random(5);
    for (int i = 0; i < 2000; i++) {
      Vec3 axis = new Vec3(random.nextGaussian(), random.nextGaussian(), random.nextGaussian());
      double angle = (random.nextDouble() - 0.5) * 2 * Math.PI * (i % 7 == 0 ? 1.0 : 0.999);
      Turn q = Turn.of(Rigid.rotation(Vec3.ZERO, axis, angle));
      // By definition: (sin(a/2) axis, cos(a/2)), either sign.
      Vec3 u = axis.unit().times(Math.sin(angle / 2));
      double dot = q.x() * u.x() + q.y() * u.y() + q.z() * u.z() + q.w() * Math.cos(angle / 2);
      assertThat(Math.abs(dot)).isCloseTo(1, within(1e-12));
    }
  }

  @Test
  void sameInput_sameBytes() {
    assertThat(GlbWriter.write("x", SOLIDS, moments(4)))
        .isEqualTo(GlbWriter.write("x", SOLIDS, moments(4)));
  }

  @Test
  void badInput_isRefusedInWords() {
    assertThatThrownBy(() -> GlbWriter.write("x", List.of(), List.of()))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(
            () -> GlbWriter.write("x", SOLIDS, List.of(new Moment(0, List.of(Rigid.IDENTITY)))))
        .hasMessage("1 poses at 0.0 s for 3 panels");
  }

  /** A board 40 x 30 with a pattern of 20 x 10 that stands up by 0.8. */
  @Test
  void pattern_standsUpOnTheFrontAlone() {
    Region raised = Region.of(Ring.rectangle(10, 10, 30, 20));
    Region board = Region.of(Ring.rectangle(0, 0, 40, 30));
    Solid pressed =
        new Solid(
            "sea", "sea", board, 0.356, 0, FACES, false, Rigid.IDENTITY, List.of(raised), 0.8);
    File file = open(GlbWriter.write("Sea", List.of(pressed), List.of()));
    double flat = 0;
    double top = 0;
    for (JsonNode part : file.json().get("meshes").get(0).get("primitives")) {
      float[][] at = file.vectors(part.get("attributes").get("POSITION").asInt());
      float[][] normals = file.vectors(part.get("attributes").get("NORMAL").asInt());
      int[] t = file.indices(part.get("indices").asInt());
      for (int i = 0; i < t.length; i += 3) {
        double[] a = corner(at[t[i]]);
        double[] b = corner(at[t[i + 1]]);
        double[] c = corner(at[t[i + 2]]);
        double area = ((b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0])) / 2;
        if (normals[t[i]][2] > 0.9f) {
          top += Math.abs(a[2] - 0.978) < 1e-5 ? area : 0;
          flat += Math.abs(a[2] - 0.178) < 1e-5 ? area : 0;
        } else {
          assertThat(Math.min(a[2], Math.min(b[2], c[2]))).isGreaterThan(-0.1781);
        }
      }
    }
    // Half of 0.356, and 0.8 more.
    assertThat(top).isCloseTo(200, within(1e-3));
    assertThat(flat).isCloseTo(1200, within(1e-3));
  }
}
