package hingeleaf.geom;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.Comparator;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.locationtech.jts.algorithm.Area;
import org.locationtech.jts.algorithm.PointLocation;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.noding.NodedSegmentString;

/**
 * The faces into which the rings of overlapping shapes divide the plane, with the shapes that cover
 * each.
 *
 * <p>The rings are cut at their crossings, pieces that coincide are made one edge, and the two
 * sides of every edge are walked round: each walk keeps one face on its left (the half edges of
 * Muller &amp; Preparata 1978). Whoever crosses an edge leaves or enters the shapes that end along
 * it, so that one look at where a connected part lies tells the cover of all its faces.
 */
final class Faces {
  /** A ring, and the shapes that it bounds. */
  record Border(Coordinate[] ring, BitSet shapes) {}

  /**
   * A face that something covers.
   *
   * @param outer closed, anticlockwise; it may touch itself
   * @param holes closed, clockwise: the outlines of what lies inside and does not touch
   */
  record Face(Coordinate[] outer, List<Coordinate[]> holes, BitSet cover) {}

  private final List<Border> borders;

  /** The lines of half edges: that of number 2 n runs forwards, that of 2 n + 1 back. */
  private final List<Coordinate[]> lines = new ArrayList<>();

  /** The shapes that end along an edge. */
  private final List<BitSet> ends = new ArrayList<>();

  /** The edges of each border. */
  private final List<List<Integer>> edges = new ArrayList<>();

  private final Map<Coordinate, List<Integer>> leaving = new HashMap<>();
  private final List<Loop> loops = new ArrayList<>();

  /** A walk with a face on its left. */
  private static final class Loop {
    private final List<Integer> halves = new ArrayList<>();
    private final List<Loop> inside = new ArrayList<>();
    private Coordinate[] line = {};
    private Envelope box = new Envelope();
    private double area;
    private BitSet cover = new BitSet();

    /** Number of its connected part. */
    private int part = -1;
  }

  private Faces(List<Border> borders) {
    this.borders = borders;
    borders.forEach(b -> edges.add(new ArrayList<>()));
  }

  /**
   * The faces that anything covers, in an order fixed by the input.
   *
   * @param borders rings in any direction; those of one shape do not cross, nor do two have one
   *     ring
   * @param tolerance distance, mm, within which points become one
   */
  static List<Face> of(List<Border> borders, double tolerance) {
    Faces faces = new Faces(borders);
    faces.cut(tolerance);
    faces.walk();
    return faces.covered();
  }

  private void cut(double tolerance) {
    List<NodedSegmentString> strings = new ArrayList<>();
    for (int i = 0; i < borders.size(); i++) {
      strings.add(new NodedSegmentString(borders.get(i).ring, i));
    }
    SnapNoder noder = new SnapNoder(tolerance);
    noder.computeNodes(strings);
    for (Object o : noder.getNodedSubstrings()) {
      NodedSegmentString s = (NodedSegmentString) o;
      add(s.getCoordinates(), (Integer) s.getData());
    }
  }

  /** Adds a piece of a border; where it lies on an edge already, it ends along that. */
  private void add(Coordinate[] line, int border) {
    BitSet shapes = borders.get(border).shapes;
    for (int half : leaving.getOrDefault(line[0], List.of())) {
      if (lines.get(half)[1].equals2D(line[1])) {
        ends.get(half / 2).xor(shapes);
        edges.get(border).add(half / 2);
        return;
      }
    }
    edges.get(border).add(ends.size());
    ends.add((BitSet) shapes.clone());
    leave(line);
    leave(reversed(line));
  }

  private void leave(Coordinate[] line) {
    leaving.computeIfAbsent(line[0], p -> new ArrayList<>()).add(lines.size());
    lines.add(line);
  }

  private static Coordinate[] reversed(Coordinate[] line) {
    Coordinate[] back = new Coordinate[line.length];
    for (int i = 0; i < back.length; i++) {
      back[i] = line[back.length - 1 - i];
    }
    return back;
  }

  private void walk() {
    int[] next = turns();
    Loop[] left = new Loop[lines.size()];
    for (int h = 0; h < left.length; h++) {
      if (left[h] == null && !ends.get(h / 2).isEmpty()) {
        loops.add(loop(h, next, left));
      }
    }
    List<Loop> rims = parts(left);
    for (Loop rim : rims) {
      lay(rim);
    }
  }

  /** For each half edge the one that goes on with the same face on its left. */
  private int[] turns() {
    int[] next = new int[lines.size()];
    for (List<Integer> all : leaving.values()) {
      List<Integer> out = new ArrayList<>();
      for (int h : all) {
        if (!ends.get(h / 2).isEmpty()) { // coincident borders of one shape part nothing
          out.add(h);
        }
      }
      out.sort(Comparator.comparingDouble(this::angle));
      for (int i = 0; i < out.size(); i++) {
        int clockwise = out.get((i + out.size() - 1) % out.size());
        next[out.get(i) ^ 1] = clockwise;
      }
    }
    return next;
  }

  private double angle(int half) {
    Coordinate[] line = lines.get(half);
    return Math.atan2(line[1].y - line[0].y, line[1].x - line[0].x);
  }

  private Loop loop(int first, int[] next, Loop[] left) {
    Loop loop = new Loop();
    List<Coordinate> points = new ArrayList<>();
    int h = first;
    do {
      left[h] = loop;
      loop.halves.add(h);
      Coordinate[] line = lines.get(h);
      points.addAll(Arrays.asList(line).subList(0, line.length - 1));
      h = next[h];
    } while (h != first);
    points.add(points.get(0));
    loop.line = points.toArray(Coordinate[]::new);
    loop.area = -Area.ofRingSigned(loop.line);
    points.forEach(loop.box::expandToInclude);
    return loop;
  }

  /** Tells connected parts apart and what covers their faces; returns the outline of each. */
  private List<Loop> parts(Loop[] left) {
    List<List<Loop>> parts = new ArrayList<>();
    for (Loop loop : loops) {
      if (loop.part < 0) {
        parts.add(connected(loop, parts.size(), left));
      }
    }
    List<Loop> rims = new ArrayList<>();
    for (List<Loop> part : parts) {
      Loop rim = part.stream().min(Comparator.comparingDouble(l -> l.area)).orElseThrow();
      rim.cover = around(rim, left);
      spread(rim, left);
      rims.add(rim);
    }
    return rims;
  }

  private static List<Loop> connected(Loop first, int number, Loop[] left) {
    List<Loop> part = new ArrayList<>(List.of(first));
    first.part = number;
    for (int i = 0; i < part.size(); i++) {
      for (int h : part.get(i).halves) {
        Loop beyond = left[h ^ 1];
        if (beyond.part < 0) {
          beyond.part = number;
          part.add(beyond);
        }
      }
    }
    return part;
  }

  /** The shapes whose other borders, those that are not of this part, go round it. */
  private BitSet around(Loop rim, Loop[] left) {
    BitSet cover = new BitSet();
    Coordinate at = rim.line[0];
    for (int i = 0; i < borders.size(); i++) {
      int part = part(i, left);
      if (part >= 0 && part != rim.part && within(at, borders.get(i).ring)) {
        cover.xor(borders.get(i).shapes);
      }
    }
    return cover;
  }

  /** The part that a border belongs to; -1 if it parts nothing. */
  private int part(int border, Loop[] left) {
    for (int edge : edges.get(border)) {
      if (left[2 * edge] != null) {
        return left[2 * edge].part;
      }
    }
    return -1;
  }

  private static boolean within(Coordinate at, Coordinate[] ring) {
    boolean reached = false;
    boolean below = false;
    boolean above = false;
    for (Coordinate c : ring) { // most rings lie elsewhere
      reached |= c.x >= at.x;
      below |= c.y <= at.y;
      above |= c.y >= at.y;
    }
    return reached && below && above && PointLocation.isInRing(at, ring);
  }

  /** From the outline of a part to all its faces, edge by edge. */
  private void spread(Loop rim, Loop[] left) {
    Deque<Loop> todo = new ArrayDeque<>(List.of(rim));
    BitSet known = new BitSet();
    known.set(rim.halves.get(0));
    while (!todo.isEmpty()) {
      Loop here = todo.remove();
      for (int h : here.halves) {
        Loop beyond = left[h ^ 1];
        int mark = beyond.halves.get(0);
        if (!known.get(mark)) {
          known.set(mark);
          beyond.cover = (BitSet) here.cover.clone();
          beyond.cover.xor(ends.get(h / 2));
          todo.add(beyond);
        }
      }
    }
  }

  /** Puts a part into the face of another in which it lies, if that is one of those wanted. */
  private void lay(Loop rim) {
    Loop smallest = null;
    for (Loop face : loops) {
      if (face.area > 0
          && face.part != rim.part
          && (smallest == null || face.area < smallest.area)
          && face.box.covers(rim.line[0])
          && face.cover.equals(rim.cover)
          && PointLocation.isInRing(rim.line[0], face.line)) {
        smallest = face;
      }
    }
    if (smallest != null) {
      smallest.inside.add(rim);
    }
  }

  private List<Face> covered() {
    List<Face> faces = new ArrayList<>();
    for (Loop loop : loops) {
      if (loop.area > 0 && !loop.cover.isEmpty()) {
        faces.add(new Face(loop.line, loop.inside.stream().map(l -> l.line).toList(), loop.cover));
      }
    }
    return faces;
  }
}
