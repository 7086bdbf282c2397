package hingeleaf.intake;

import hingeleaf.geom.Vec3;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/** Typed reading of a located tree; whatever is not as it should be is told with its place. */
final class Fields {
  private Fields() {}

  static Tree.Obj object(Tree t, String what) throws BadInput {
    if (t instanceof Tree.Obj o) {
      return o;
    }
    throw new BadInput(t.place(), what + " should be an object { ... }, not " + t.told());
  }

  static List<Tree> list(Tree t, String what) throws BadInput {
    if (t instanceof Tree.Arr a) {
      return a.items();
    }
    throw new BadInput(t.place(), what + " should be a list [ ... ], not " + t.told());
  }

  static String text(Tree t, String what) throws BadInput {
    if (t instanceof Tree.Text s) {
      return s.value();
    }
    throw new BadInput(t.place(), what + " should be a text in quotes, not " + t.told());
  }

  static double number(Tree t, String what) throws BadInput {
    if (t instanceof Tree.Num n && Double.isFinite(n.value())) {
      return n.value();
    }
    throw new BadInput(t.place(), what + " should be a finite number, not " + t.told());
  }

  static Tree need(Tree.Obj o, String key, String what) throws BadInput {
    Tree t = o.get(key);
    if (t == null) {
      throw new BadInput(o.place(), what + " has no \"" + key + "\"");
    }
    return t;
  }

  static List<Tree> optionalList(Tree.Obj o, String key) throws BadInput {
    Tree t = o.get(key);
    return t == null ? List.of() : list(t, "\"" + key + "\"");
  }

  /** A point as three numbers, times {@code mm}. */
  static Vec3 point(Tree t, double mm, String what) throws BadInput {
    List<Tree> items = list(t, what);
    if (items.size() != 3) {
      throw new BadInput(t.place(), what + " should be three numbers [x, y, z], not " + t.told());
    }
    return new Vec3(
            number(items.get(0), what + "'s x"),
            number(items.get(1), what + "'s y"),
            number(items.get(2), what + "'s z"))
        .times(mm);
  }

  static List<Vec3> points(Tree t, double mm, String what) throws BadInput {
    List<Vec3> out = new ArrayList<>();
    for (Tree item : list(t, what)) {
      out.add(point(item, mm, "a point of " + what));
    }
    return out;
  }

  /** The known name most like a wrong one, as the end of a sentence; empty where none is. */
  static String nearest(String wrong, Iterable<String> names) {
    @Nullable String best = null;
    int least = Math.max(2, wrong.length() / 3) + 1;
    List<String> sorted = new ArrayList<>();
    names.forEach(sorted::add);
    sorted.sort(Comparator.naturalOrder());
    for (String name : sorted.subList(0, Math.min(2000, sorted.size()))) {
      int d = distance(wrong.toLowerCase(Locale.ROOT), name.toLowerCase(Locale.ROOT));
      if (d < least) {
        least = d;
        best = name;
      }
    }
    return best == null ? "" : "; did you mean \"" + best + "\"?";
  }

  /** Edit distance (Levenshtein). */
  private static int distance(String a, String b) {
    int[] row = new int[b.length() + 1];
    java.util.Arrays.setAll(row, i -> i);
    for (int i = 1; i <= a.length(); i++) {
      int diagonal = row[0];
      row[0] = i;
      for (int j = 1; j <= b.length(); j++) {
        int same = diagonal + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
        diagonal = row[j];
        row[j] = Math.min(same, Math.min(row[j], row[j - 1]) + 1);
      }
    }
    return row[b.length()];
  }
}
