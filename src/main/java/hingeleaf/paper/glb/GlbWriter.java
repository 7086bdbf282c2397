package hingeleaf.paper.glb;

import hingeleaf.geom.Region;
import hingeleaf.geom.Rigid;
import hingeleaf.geom.Ring;
import hingeleaf.geom.Vec2;
import hingeleaf.geom.Vec3;
import java.io.StringWriter;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import tools.jackson.core.JsonGenerator;
import tools.jackson.core.ObjectWriteContext;
import tools.jackson.core.json.JsonFactory;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/**
 * Boards and, if wanted, their motion as one GLB file (Khronos glTF 2.0 Specification, chapter 4,
 * GLB file format).
 *
 * <p>Nodes: the card, in it one for each piece by its id, in that one for each panel, named {@code
 * piece/panel}. Panels that look the same share one mesh. A mesh has its origin in the middle of
 * its panel, so that straight steps between the keys of an animation stray least.
 */
public final class GlbWriter {
  private static final JsonFactory FACTORY = new JsonFactory();
  private static final double METRES = 1e-3;
  private static final double THINNEST = 0.05;
  private static final int MAGIC = 0x46546C67;
  private static final int JSON = 0x4E4F534A;
  private static final int BIN = 0x004E4942;

  private final GlbBuffer buffer = new GlbBuffer();
  private final ObjectNode root = JsonNodeFactory.instance.objectNode();
  private final Map<String, Integer> materials = new LinkedHashMap<>();
  private final Map<List<Long>, Integer> meshes = new LinkedHashMap<>();
  private final List<Solid> solids;

  private GlbWriter(List<Solid> solids) {
    this.solids = solids;
  }

  /**
   * The file's bytes.
   *
   * @param moments at least two for an animation, none for a still card; each has a pose for every
   *     board
   * @throws IllegalArgumentException where there is no board, or a moment has too few poses
   */
  public static byte[] write(String title, List<Solid> solids, List<Moment> moments) {
    if (solids.isEmpty()) {
      throw new IllegalArgumentException("a card without panels has no shape");
    }
    for (Moment m : moments) {
      if (m.poses().size() != solids.size()) {
        throw new IllegalArgumentException(
            m.poses().size() + " poses at " + m.seconds() + " s for " + solids.size() + " panels");
      }
    }
    GlbWriter writer = new GlbWriter(solids);
    writer.describe(title);
    writer.animate(moments);
    return writer.file();
  }

  private void describe(String title) {
    ObjectNode asset = root.putObject("asset");
    asset.put("version", "2.0");
    asset.put("generator", "Hingeleaf");
    root.put("scene", 0);
    root.putArray("scenes").addObject().put("name", title).putArray("nodes").add(solids.size());
    ArrayNode nodes = root.putArray("nodes");
    root.putArray("meshes");
    root.putArray("materials");
    Map<String, List<Integer>> pieces = new LinkedHashMap<>();
    for (int i = 0; i < solids.size(); i++) {
      Solid s = solids.get(i);
      node(nodes.addObject(), s, mesh(s));
      pieces.computeIfAbsent(s.piece(), p -> new ArrayList<>()).add(i);
    }
    ArrayNode children = nodes.addObject().put("name", title).putArray("children");
    pieces.forEach(
        (id, panels) -> {
          children.add(nodes.size());
          ArrayNode own = nodes.addObject().put("name", id).putArray("children");
          panels.forEach(own::add);
        });
  }

  private static void node(ObjectNode node, Solid s, int mesh) {
    node.put("name", s.piece() + "/" + s.panel());
    node.put("mesh", mesh);
    ArrayNode place = node.putArray("translation");
    for (float v : place(s, s.made())) {
      place.add(v);
    }
    ArrayNode turn = node.putArray("rotation");
    for (float v : row(Turn.of(s.made()))) {
      turn.add(v);
    }
  }

  private static float[] place(Solid s, Rigid pose) {
    Vec3 p = pose.apply(s.region().box().centre());
    return new float[] {
      (float) (p.x() * METRES), (float) (p.y() * METRES), (float) (p.z() * METRES)
    };
  }

  private static float[] row(Turn t) {
    return new float[] {(float) t.x(), (float) t.y(), (float) t.z(), (float) t.w()};
  }

  /** The number of a panel's mesh, which it shares with all that look the same. */
  private int mesh(Solid s) {
    List<Long> alike = alike(s);
    Integer known = meshes.get(alike);
    if (known == null) {
      known = meshes.size();
      meshes.put(alike, known);
      mesh(root.withArray("meshes").addObject(), s);
    }
    return known;
  }

  /** Numbers that are the same for boards which look the same: sizes in nanometres, colours. */
  private static List<Long> alike(Solid s) {
    List<Long> all = new ArrayList<>();
    Vec2 centre = s.region().box().centre();
    for (double v : new double[] {s.thickness(), s.lift(), s.raises()}) {
      all.add(Math.round(v * 1e6));
    }
    for (String colour : List.of(s.faces().front(), s.faces().back(), s.faces().core())) {
      all.add(Long.parseLong(colour.substring(1), 16));
    }
    all.add(s.clear() ? 1L : 0L);
    rings(s.region(), centre, all);
    s.raised().forEach(r -> rings(r, centre, all));
    return all;
  }

  private static void rings(Region region, Vec2 centre, List<Long> all) {
    List<Ring> rings = new ArrayList<>(List.of(region.outer()));
    rings.addAll(region.holes());
    for (Ring ring : rings) {
      all.add((long) ring.points().size());
      for (Vec2 p : ring.points()) {
        all.add(Math.round((p.x() - centre.x()) * 1e6));
        all.add(Math.round((p.y() - centre.y()) * 1e6));
      }
    }
  }

  private void mesh(ObjectNode mesh, Solid s) {
    mesh.put("name", s.piece() + "/" + s.panel());
    double half = Math.max(s.thickness(), THINNEST) / 2;
    Board board = new Board(s.region(), s.lift() - half, s.lift() + half);
    ArrayNode parts = mesh.putArray("primitives");
    Vec2 centre = s.region().box().centre();
    part(parts, board.front(), centre, material(s.faces().front(), s.clear()));
    part(parts, board.back(), centre, material(s.faces().back(), s.clear()));
    part(parts, board.edge(), centre, material(s.faces().core(), s.clear()));
    if (s.raises() > 0) {
      for (Region raised : s.raised()) {
        // What stands up is the good face itself, its slopes too; nothing of it is seen from below.
        Board top = new Board(raised, s.lift() + half, s.lift() + half + s.raises());
        part(parts, top.front(), centre, material(s.faces().front(), s.clear()));
        part(parts, top.edge(), centre, material(s.faces().front(), s.clear()));
      }
    }
  }

  private void part(ArrayNode parts, Board.Faces faces, Vec2 centre, int material) {
    List<float[]> corners = new ArrayList<>();
    for (double[] c : faces.corners()) {
      corners.add(
          new float[] {
            (float) ((c[0] - centre.x()) * METRES),
            (float) ((c[1] - centre.y()) * METRES),
            (float) (c[2] * METRES)
          });
    }
    List<float[]> normals = new ArrayList<>();
    for (double[] n : faces.normals()) {
      normals.add(new float[] {(float) n[0], (float) n[1], (float) n[2]});
    }
    ObjectNode part = parts.addObject();
    ObjectNode attributes = part.putObject("attributes");
    attributes.put("POSITION", buffer.places(corners));
    attributes.put("NORMAL", buffer.vectors(normals));
    part.put("indices", buffer.indices(faces.triangles(), corners.size()));
    part.put("material", material);
  }

  private int material(String colour, boolean clear) {
    return materials.computeIfAbsent(
        colour + (clear ? " clear" : ""),
        name -> {
          ArrayNode all = root.withArray("materials");
          ObjectNode m = all.addObject();
          m.put("name", name);
          ObjectNode look = m.putObject("pbrMetallicRoughness");
          ArrayNode c = look.putArray("baseColorFactor");
          int rgb = Integer.parseInt(colour.substring(1), 16);
          for (int shift : new int[] {16, 8, 0}) {
            c.add(linear((rgb >> shift & 0xff) / 255.0));
          }
          c.add(clear ? 0.25f : 1f);
          look.put("metallicFactor", 0f);
          look.put("roughnessFactor", clear ? 0.2f : 0.95f);
          if (clear) {
            m.put("alphaMode", "BLEND");
          }
          return all.size() - 1;
        });
  }

  /** sRGB to linear light (IEC 61966-2-1). */
  private static float linear(double c) {
    return (float) (c <= 0.04045 ? c / 12.92 : Math.pow((c + 0.055) / 1.055, 2.4));
  }

  private void animate(List<Moment> moments) {
    if (moments.size() < 2) {
      return;
    }
    ObjectNode animation = root.putArray("animations").addObject();
    animation.put("name", "fold");
    ArrayNode channels = animation.putArray("channels");
    ArrayNode samplers = animation.putArray("samplers");
    double start = moments.get(0).seconds();
    int times =
        buffer.times(
            moments.stream().map(m -> new float[] {(float) (m.seconds() - start)}).toList());
    for (int i = 0; i < solids.size(); i++) {
      List<float[]> places = new ArrayList<>();
      List<float[]> turns = new ArrayList<>();
      Turn last = Turn.of(solids.get(i).made());
      for (Moment m : moments) {
        Rigid pose = m.poses().get(i);
        places.add(place(solids.get(i), pose));
        last = Turn.of(pose).near(last);
        turns.add(row(last));
      }
      channel(channels, samplers, i, "translation", times, buffer.keys(places));
      channel(channels, samplers, i, "rotation", times, buffer.keys(turns));
    }
  }

  private static void channel(
      ArrayNode channels, ArrayNode samplers, int node, String path, int times, int values) {
    ObjectNode channel = channels.addObject();
    channel.put("sampler", samplers.size());
    channel.putObject("target").put("node", node).put("path", path);
    ObjectNode sampler = samplers.addObject();
    sampler.put("input", times);
    sampler.put("interpolation", "LINEAR");
    sampler.put("output", values);
  }

  /** A node's own way of writing itself sets up all of data binding first, for nothing. */
  private static String text(JsonNode node) {
    StringWriter text = new StringWriter();
    try (JsonGenerator g = FACTORY.createGenerator(ObjectWriteContext.empty(), text)) {
      write(node, g);
    }
    return text.toString();
  }

  private static void write(JsonNode node, JsonGenerator g) {
    if (node instanceof ObjectNode object) {
      g.writeStartObject();
      for (Map.Entry<String, JsonNode> e : object.properties()) {
        g.writeName(e.getKey());
        write(e.getValue(), g);
      }
      g.writeEndObject();
    } else if (node instanceof ArrayNode array) {
      g.writeStartArray();
      for (JsonNode entry : array) {
        write(entry, g);
      }
      g.writeEndArray();
    } else if (node.isString()) {
      g.writeString(node.stringValue());
    } else if (node.isIntegralNumber()) {
      g.writeNumber(node.longValue());
    } else if (node.isFloat()) {
      g.writeNumber(node.floatValue());
    } else if (node.isNumber()) {
      g.writeNumber(node.doubleValue());
    } else {
      g.writeBoolean(node.booleanValue());
    }
  }

  private byte[] file() {
    byte[] data = buffer.bytes();
    root.set("accessors", buffer.accessors());
    root.set("bufferViews", buffer.views());
    root.putArray("buffers").addObject().put("byteLength", data.length);
    byte[] json = text(root).getBytes(StandardCharsets.UTF_8);
    int padded = (json.length + 3) / 4 * 4;
    int length = 12 + 8 + padded + 8 + data.length;
    ByteBuffer file = ByteBuffer.allocate(length).order(ByteOrder.LITTLE_ENDIAN);
    file.putInt(MAGIC).putInt(2).putInt(length);
    file.putInt(padded).putInt(JSON).put(json);
    for (int i = json.length; i < padded; i++) {
      file.put((byte) ' ');
    }
    file.putInt(data.length).putInt(BIN).put(data);
    return file.array();
  }
}
