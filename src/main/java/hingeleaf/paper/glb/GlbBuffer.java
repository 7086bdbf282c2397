package hingeleaf.paper.glb;

import java.io.ByteArrayOutputStream;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.util.List;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/** The binary part of the file and the views and accessors that tell what lies where in it. */
final class GlbBuffer {
  private static final int FLOAT = 5126;
  private static final int UNSIGNED_SHORT = 5123;
  private static final int UNSIGNED_INT = 5125;
  private static final int VERTICES = 34962;
  private static final int INDICES = 34963;

  private final ByteArrayOutputStream bytes = new ByteArrayOutputStream();
  private final ArrayNode views = JsonNodeFactory.instance.arrayNode();
  private final ArrayNode accessors = JsonNodeFactory.instance.arrayNode();

  ArrayNode views() {
    return views;
  }

  ArrayNode accessors() {
    return accessors;
  }

  byte[] bytes() {
    return bytes.toByteArray();
  }

  /** Places of corners, of which the least and the largest must be told. */
  int places(List<float[]> rows) {
    return bounded(rows, VERTICES);
  }

  /** Directions at corners. */
  int vectors(List<float[]> rows) {
    floats(rows, VERTICES);
    return accessors.size() - 1;
  }

  /** Times of an animation, of which the first and the last must be told. */
  int times(List<float[]> rows) {
    return bounded(rows, 0);
  }

  /** Places and turns of an animation. */
  int keys(List<float[]> rows) {
    floats(rows, 0);
    return accessors.size() - 1;
  }

  private ObjectNode floats(List<float[]> rows, int target) {
    int wide = rows.get(0).length;
    ByteBuffer data = buffer(rows.size() * wide * 4);
    rows.forEach(
        row -> {
          for (float v : row) {
            data.putFloat(v);
          }
        });
    String type = wide == 1 ? "SCALAR" : "VEC" + wide;
    return accessor(data, target, FLOAT, rows.size(), type);
  }

  private int bounded(List<float[]> rows, int target) {
    ObjectNode accessor = floats(rows, target);
    int wide = rows.get(0).length;
    ArrayNode least = accessor.putArray("min");
    ArrayNode most = accessor.putArray("max");
    for (int k = 0; k < wide; k++) {
      float lo = Float.POSITIVE_INFINITY;
      float hi = Float.NEGATIVE_INFINITY;
      for (float[] row : rows) {
        lo = Math.min(lo, row[k]);
        hi = Math.max(hi, row[k]);
      }
      least.add(lo);
      most.add(hi);
    }
    return accessors.size() - 1;
  }

  int indices(List<Integer> indices, int corners) {
    boolean small = corners < 65535;
    ByteBuffer data = buffer(indices.size() * (small ? 2 : 4));
    for (int i : indices) {
      if (small) {
        data.putShort((short) i);
      } else {
        data.putInt(i);
      }
    }
    accessor(data, INDICES, small ? UNSIGNED_SHORT : UNSIGNED_INT, indices.size(), "SCALAR");
    return accessors.size() - 1;
  }

  private static ByteBuffer buffer(int size) {
    return ByteBuffer.allocate(size).order(ByteOrder.LITTLE_ENDIAN);
  }

  private ObjectNode accessor(ByteBuffer data, int target, int component, int count, String type) {
    ObjectNode view = views.addObject();
    view.put("buffer", 0);
    view.put("byteOffset", bytes.size());
    view.put("byteLength", data.capacity());
    if (target != 0) {
      view.put("target", target);
    }
    bytes.writeBytes(data.array());
    while (bytes.size() % 4 != 0) {
      bytes.write(0);
    }
    ObjectNode accessor = accessors.addObject();
    accessor.put("bufferView", views.size() - 1);
    accessor.put("componentType", component);
    accessor.put("count", count);
    accessor.put("type", type);
    return accessor;
  }
}
