package hingeleaf.mend;

import hingeleaf.design.Change;
import hingeleaf.design.DesignDocument;
import hingeleaf.design.Node;
import hingeleaf.design.Tree;
import hingeleaf.design.YamlText;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Changes that carry others along: a part's new name goes to all that stands on it; a part that is
 * taken away takes along what stood on it; the depths of stages move with their frames.
 */
public final class Rearrange {
  private static final String FRAMES = ".frames";
  private static final List<String> STANDING =
      List.of("mechanisms", "mats", "windows", "cut-outs", "words");

  private Rearrange() {}

  /** Gives the part at a path, such as {@code mats[0]}, another name. */
  public static List<Change> rename(DesignDocument design, String path, String name) {
    Tree tree = design.tree();
    List<Change> all = new ArrayList<>();
    all.add(new Change.Put(path + ".name", YamlText.of(name)));
    name(tree, path).ifPresent(old -> follow(tree, old, name, all));
    return all;
  }

  private static void follow(Tree tree, String old, String name, List<Change> all) {
    for (Item item : items(tree)) {
      if (text(tree, item.keys() + ".on").equals(Optional.of(old))) {
        all.add(new Change.Put(item.keys() + ".on", YamlText.of(name)));
      }
    }
    if (text(tree, "message.on").equals(Optional.of(old))) {
      all.add(new Change.Put("message.on", YamlText.of(name)));
    }
  }

  /** Moves an item of a list to another place in it. */
  public static List<Change> move(DesignDocument design, String path, int to) {
    List<Change> all = new ArrayList<>();
    all.add(new Change.Move(path, to));
    depths(design.tree(), path).ifPresent(side -> all.add(new Change.Move(side, to)));
    return all;
  }

  /** Takes an item of a list away, and all that stands on it, directly or on what does. */
  public static List<Change> remove(DesignDocument design, String path) {
    Tree tree = design.tree();
    Set<String> gone = new HashSet<>();
    name(tree, path).ifPresent(gone::add);
    List<Item> itself = items(tree).stream().filter(i -> i.path().equals(path)).toList();
    itself.forEach(i -> name(tree, i.keys()).ifPresent(gone::add));
    Set<Item> items = standing(tree, gone);
    List<Change> all = new ArrayList<>();
    if (!itself.isEmpty()) {
      items.addAll(itself);
    } else {
      all.add(new Change.Remove(path));
      depths(tree, path).ifPresent(side -> all.add(new Change.Remove(side)));
    }
    items.stream().sorted(LATER_FIRST).forEach(i -> all.add(new Change.Remove(i.path())));
    if (text(tree, "message.on").filter(gone::contains).isPresent()) {
      all.add(new Change.Remove("message"));
    }
    return all;
  }

  /** Later items first, so that the numbers of those before stay right. */
  private static final Comparator<Item> LATER_FIRST =
      Comparator.comparing(Item::list).thenComparing(Item::index, Comparator.reverseOrder());

  /** All that stands on what goes, directly or not; their names join those that go. */
  private static Set<Item> standing(Tree tree, Set<String> gone) {
    Set<Item> items = new HashSet<>();
    boolean more = true;
    while (more) {
      more = false;
      for (Item item : items(tree)) {
        boolean on = text(tree, item.keys() + ".on").filter(gone::contains).isPresent();
        if (on && items.add(item)) {
          name(tree, item.keys()).ifPresent(gone::add);
          more = true;
        }
      }
    }
    return items;
  }

  /**
   * A part in a list.
   *
   * @param sort the one key that its own keys stand under; empty where they stand in the list
   */
  private record Item(String list, int index, String sort) {
    String path() {
      return list + "[" + index + "]";
    }

    /** The path of its keys. */
    String keys() {
      return sort.isEmpty() ? path() : path() + "." + sort;
    }
  }

  private static List<Item> items(Tree tree) {
    List<Item> all = new ArrayList<>();
    for (String list : STANDING) {
      for (int i = 0; i < count(tree, list); i++) {
        all.add(new Item(list, i, list.equals("mechanisms") ? sort(tree, list, i) : ""));
      }
    }
    return all;
  }

  private static String sort(Tree tree, String list, int index) {
    return tree.find(list + "[" + index + "]").orElse(null) instanceof Node.Fields f
            && !f.entries().isEmpty()
        ? f.entries().get(0).key().raw()
        : "";
  }

  /** The path of the depth that belongs to a frame, where depths are given one by one. */
  private static Optional<String> depths(Tree tree, String path) {
    int at = path.lastIndexOf(FRAMES + "[");
    if (at < 0 || !path.startsWith("base.")) {
      return Optional.empty();
    }
    String side = path.substring(0, at) + ".side" + path.substring(at + FRAMES.length());
    return tree.find(side).map(n -> side);
  }

  /**
   * Adds a frame to a list of frames.
   *
   * @param list its path
   * @param yaml the frame on one line
   */
  public static List<Change> insert(DesignDocument design, String list, int at, String yaml) {
    List<Change> all = new ArrayList<>();
    all.add(new Change.Insert(list, at, yaml));
    if (list.endsWith(FRAMES)) {
      String side = list.substring(0, list.length() - FRAMES.length()) + ".side";
      if (design.tree().find(side).orElse(null) instanceof Node.Items i && !i.items().isEmpty()) {
        String like = text(design.tree(), side + "[" + Math.max(0, at - 1) + "]").orElse("10 mm");
        all.add(new Change.Insert(side, at, YamlText.of(like)));
      }
    }
    return all;
  }

  private static int count(Tree tree, String list) {
    return tree.find(list).orElse(null) instanceof Node.Items i ? i.items().size() : 0;
  }

  private static Optional<String> name(Tree tree, String path) {
    return text(tree, path + ".name");
  }

  private static Optional<String> text(Tree tree, String path) {
    return tree.find(path)
        .filter(Node.Scalar.class::isInstance)
        .map(n -> ((Node.Scalar) n).raw())
        .filter(t -> !t.isEmpty());
  }
}
