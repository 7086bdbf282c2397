package hingeleaf.intake;

import hingeleaf.card.Joint;
import hingeleaf.card.Mechanism;
import hingeleaf.finding.Problem;
import hingeleaf.geom.Vec3;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;

/**
 * Reads a mechanism file: a JSON object with {@code panels}, {@code folds}, {@code glue}, {@code
 * fixed}, {@code states} and {@code unit} (or {@code units}). Keys it does not know are left alone.
 *
 * <p>{@code unit} names a length (mm, cm, m, in) and an angle (rad, deg), such as {@code "in,
 * deg"}; mm and rad where not said. A state's {@code drive} and {@code near} give angles by fold.
 */
public final class MechanismText {
  /** Larger files are refused: they would take minutes. */
  public static final int MOST_PANELS = 20_000;

  private static final Map<String, Double> LENGTHS =
      Map.of("mm", 1.0, "cm", 10.0, "m", 1000.0, "in", 25.4, "inch", 25.4, "inches", 25.4);
  private static final Map<String, Double> ANGLES =
      Map.of("rad", 1.0, "deg", Math.PI / 180, "degree", Math.PI / 180, "degrees", Math.PI / 180);

  private final Tree.Obj root;
  private double mm = 1;
  private double rad = 1;
  private final List<Mechanism.Facet> facets = new ArrayList<>();
  private final Map<String, Integer> panel = new LinkedHashMap<>();
  private final List<Joint> joints = new ArrayList<>();
  private final Map<String, Integer> fold = new LinkedHashMap<>();
  private final List<Mechanism.Bond> bonds = new ArrayList<>();
  private final List<Problem> notes = new ArrayList<>();

  private MechanismText(Tree.Obj root) {
    this.root = root;
  }

  /**
   * @param source the name under which the text was given
   * @throws BadInput with the first thing that cannot be used and its place
   */
  public static MechanismFile read(String source, String text) throws BadInput {
    Tree.Obj root = Fields.object(Tree.read(source, text), "the file");
    return new MechanismText(root).read();
  }

  private MechanismFile read() throws BadInput {
    units();
    panels();
    folds();
    glue();
    List<Integer> fixed = fixed();
    List<MechanismFile.State> states = new ArrayList<>();
    for (Tree t : Fields.optionalList(root, "states")) {
      Tree.Obj o = Fields.object(t, "a state");
      Tree near = o.get("near");
      states.add(
          new MechanismFile.State(
              angles(Fields.need(o, "drive", "this state")),
              near == null ? Map.of() : angles(near)));
    }
    return new MechanismFile(new Mechanism(facets, joints, bonds, fixed), states, notes);
  }

  private void units() throws BadInput {
    for (String key : List.of("unit", "units")) {
      Tree t = root.get(key);
      if (t == null) {
        continue;
      }
      List<Tree> words = t instanceof Tree.Arr a ? a.items() : List.of(t);
      for (Tree word : words) {
        for (String w : Fields.text(word, "\"" + key + "\"").split("[\\s,;/]+", -1)) {
          unit(w.toLowerCase(Locale.ROOT), word);
        }
      }
    }
  }

  private void unit(String word, Tree at) throws BadInput {
    Double length = LENGTHS.get(word);
    Double angle = ANGLES.get(word);
    if (length != null) {
      mm = length;
    } else if (angle != null) {
      rad = angle;
    } else if (!word.isEmpty()) {
      throw new BadInput(
          at.place(),
          "\"" + word + "\" is no unit known here: use mm, cm, m or in, and rad or deg");
    }
  }

  private void panels() throws BadInput {
    Tree t = Fields.need(root, "panels", "the file");
    List<Tree> items = Fields.list(t, "\"panels\"");
    if (items.isEmpty()) {
      throw new BadInput(t.place(), "there is no panel");
    }
    if (items.size() > MOST_PANELS) {
      throw new BadInput(
          t.place(), items.size() + " panels are too many: at most " + MOST_PANELS + " are folded");
    }
    for (Tree item : items) {
      panel(Fields.object(item, "a panel"));
    }
  }

  private void panel(Tree.Obj o) throws BadInput {
    String id = name(o, "panel", panel);
    List<Vec3> outline =
        ring(Fields.need(o, "outline", "panel " + id), "the outline of panel " + id);
    Vec3 n = Flatness.normal(outline);
    double around = perimeter(outline);
    if (!(n.length() > 1e-9 * around * around)) {
      throw new BadInput(o.place(), "panel " + id + " has no area");
    }
    List<List<Vec3>> holes = new ArrayList<>();
    List<Vec3> all = new ArrayList<>(outline);
    for (Tree h : Fields.optionalList(o, "holes")) {
      holes.add(ring(h, "a hole of panel " + id));
      all.addAll(holes.get(holes.size() - 1));
    }
    double off = Flatness.off(all, outline.get(0), n.unit());
    if (off > Flatness.TOLERANCE_MM + 1e-9 * around) {
      throw new BadInput(
          o.place(),
          "panel " + id + " is not flat: a point lies " + length(off) + " off its plane");
    }
    Tree thick = o.get("thickness");
    double thickness = thick == null ? 0 : Fields.number(thick, "the thickness") * mm;
    if (thick != null && thickness < 0) {
      throw new BadInput(thick.place(), "panel " + id + " has a thickness below 0");
    }
    panel.put(id, facets.size());
    facets.add(new Mechanism.Facet(id, outline, holes, thickness));
  }

  private List<Vec3> ring(Tree t, String what) throws BadInput {
    List<Vec3> points = new ArrayList<>(Fields.points(t, mm, what));
    int n = points.size();
    if (n > 3 && points.get(0).distance(points.get(n - 1)) == 0) {
      points.remove(n - 1);
    }
    if (points.size() < 3) {
      throw new BadInput(t.place(), what + " needs three points or more, not " + points.size());
    }
    return points;
  }

  private static double perimeter(List<Vec3> ring) {
    double sum = 0;
    for (int i = 0; i < ring.size(); i++) {
      sum += ring.get(i).distance(ring.get((i + 1) % ring.size()));
    }
    return sum;
  }

  private static String name(Tree.Obj o, String what, Map<String, Integer> taken) throws BadInput {
    Tree t = Fields.need(o, "id", "this " + what);
    String id = Fields.text(t, "the id of a " + what);
    if (taken.containsKey(id)) {
      throw new BadInput(t.place(), "there are two " + what + "s \"" + id + "\"");
    }
    return id;
  }

  private void folds() throws BadInput {
    for (Tree item : Fields.optionalList(root, "folds")) {
      Tree.Obj o = Fields.object(item, "a fold");
      String id = name(o, "fold", fold);
      int a = panelNamed(Fields.need(o, "a", "fold " + id), "fold " + id);
      int b = panelNamed(Fields.need(o, "b", "fold " + id), "fold " + id);
      if (a == b) {
        throw new BadInput(o.place(), "fold " + id + " joins a panel with itself");
      }
      Tree t = Fields.need(o, "axis", "fold " + id);
      List<Vec3> axis = Fields.points(t, mm, "the axis of fold " + id);
      if (axis.size() != 2 || !(axis.get(0).distance(axis.get(1)) > 1e-6)) {
        throw new BadInput(
            t.place(), "the axis of fold " + id + " needs two points that are not the same");
      }
      onPanel(t, id, axis, facets.get(a));
      onPanel(t, id, axis, facets.get(b));
      fold.put(id, joints.size());
      joints.add(new Joint.Hinge(id, a, b, axis.get(0), axis.get(1), Double.NaN));
    }
  }

  private static void onPanel(Tree t, String id, List<Vec3> axis, Mechanism.Facet f)
      throws BadInput {
    Vec3 n = Flatness.normal(f.outline()).unit();
    double off = Flatness.off(axis, f.outline().get(0), n);
    if (off <= Flatness.TOLERANCE_MM) {
      off = Flatness.gap(f.outline(), n, axis.get(0), axis.get(1));
    }
    if (off > Flatness.TOLERANCE_MM) {
      throw new BadInput(
          t.place(), "the axis of fold " + id + " lies " + length(off) + " off panel " + f.id());
    }
  }

  private int panelNamed(Tree t, String whose) throws BadInput {
    String id = Fields.text(t, "a panel of " + whose);
    Integer i = panel.get(id);
    if (i == null) {
      throw new BadInput(
          t.place(),
          whose
              + " names a panel \""
              + id
              + "\" that is not there"
              + Fields.nearest(id, panel.keySet()));
    }
    return i;
  }

  private void glue() throws BadInput {
    Set<Long> seen = new java.util.HashSet<>();
    for (Tree item : Fields.optionalList(root, "glue")) {
      List<Tree> pair = Fields.list(item, "glue");
      if (pair.size() != 2) {
        throw new BadInput(item.place(), "glue joins two panels, this names " + pair.size());
      }
      int a = panelNamed(pair.get(0), "this glue");
      int b = panelNamed(pair.get(1), "this glue");
      if (a == b) {
        throw new BadInput(item.place(), "this glue joins a panel with itself");
      }
      if (seen.add((long) Math.min(a, b) * facets.size() + Math.max(a, b))) {
        bonds.add(new Mechanism.Bond(a, b));
      }
    }
    lockedFolds();
  }

  /** Glue round a fold is no fault of form, but nobody means it. */
  private void lockedFolds() {
    int[] up = new int[facets.size()];
    java.util.Arrays.setAll(up, i -> i);
    for (Mechanism.Bond b : bonds) {
      up[root(up, b.a())] = root(up, b.b());
    }
    List<Tree> items = root.get("folds") instanceof Tree.Arr a ? a.items() : List.of();
    for (int j = 0; j < joints.size(); j++) {
      Joint f = joints.get(j);
      if (root(up, f.a()) == root(up, f.b())) {
        notes.add(
            Problem.notes(
                    "locked-fold",
                    f.id(),
                    "",
                    "fold " + f.id() + " cannot fold: glue holds its two sides together")
                .at(items.get(j).place()));
      }
    }
  }

  private static int root(int[] up, int i) {
    int r = i;
    while (up[r] != r) {
      up[r] = up[up[r]];
      r = up[r];
    }
    return r;
  }

  private List<Integer> fixed() throws BadInput {
    Tree t = root.get("fixed");
    if (t == null) {
      return List.of(0);
    }
    List<Integer> out = new ArrayList<>();
    for (Tree item : t instanceof Tree.Arr a ? a.items() : List.of(t)) {
      out.add(panelNamed(item, "\"fixed\""));
    }
    return out.isEmpty() ? List.of(0) : out;
  }

  private Map<String, Double> angles(Tree t) throws BadInput {
    Map<String, Double> out = new LinkedHashMap<>();
    for (Map.Entry<String, Tree> e : Fields.object(t, "a drive").entries().entrySet()) {
      if (!fold.containsKey(e.getKey())) {
        throw new BadInput(
            e.getValue().place(),
            "there is no fold \"" + e.getKey() + "\"" + Fields.nearest(e.getKey(), fold.keySet()));
      }
      out.put(e.getKey(), Fields.number(e.getValue(), "the angle of fold " + e.getKey()) * rad);
    }
    return out;
  }

  private static String length(double mm) {
    return String.format(Locale.ROOT, "%.4g mm", mm);
  }
}
