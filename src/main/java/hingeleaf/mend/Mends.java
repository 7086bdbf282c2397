package hingeleaf.mend;

import hingeleaf.design.Change;
import hingeleaf.design.DesignDocument;
import hingeleaf.design.Node;
import hingeleaf.design.Tree;
import hingeleaf.finding.Problem;
import hingeleaf.finding.Want;
import hingeleaf.measure.Length;
import hingeleaf.measure.MakerUnits;
import hingeleaf.measure.Marks;
import hingeleaf.measure.Reading;
import hingeleaf.measure.Unit;
import hingeleaf.pack.Pack;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Turns what a finding wants into changes, and keeps those that prove to cure it. */
public final class Mends {
  private static final String SECOND = "[1]";
  private static final String ACROSS = ".at[0]";
  private static final String UP = ".at[1]";
  private static final String ALONG = ".at";
  private static final String RAISED_BY = ".raised-by";
  private static final String SECOND_SET_IN = ".set-in" + SECOND;

  private final Pack pack;
  private final Problem finding;
  private final DesignDocument design;
  private final Tree tree;
  private final Marks marks;

  private Mends(Pack pack, Problem finding) {
    this.pack = pack;
    this.finding = finding;
    this.design = pack.inputs().design();
    this.tree = design.tree();
    this.marks = new Marks(MakerUnits.of(design.unit()).step());
  }

  /**
   * The mends of a finding of this pack, at most one for each of its wants; none where nothing that
   * was tried cures it. A card that leans is given a stay.
   */
  public static List<Mend> of(Pack pack, Problem finding) {
    return new Mends(pack, finding).mends();
  }

  /** Whether trying may find a mend: cheap, so that a door need not try all findings. */
  public static boolean hoped(Problem finding) {
    return !finding.wants().isEmpty() || AddStay.answers(finding);
  }

  private List<Mend> mends() {
    List<Mend> all = new ArrayList<>();
    for (Want want : finding.wants()) {
      candidates(want).stream().filter(this::cures).findFirst().ifPresent(all::add);
    }
    if (all.isEmpty() && finding.wants().size() > 1) {
      all.addAll(together());
    }
    all.addAll(AddStay.of(pack, finding));
    return all;
  }

  /** All wants at once, where none by itself cures. */
  private List<Mend> together() {
    List<String> words = new ArrayList<>();
    List<Change> changes = new ArrayList<>();
    for (Want want : finding.wants()) {
      List<Mend> some = candidates(want);
      if (some.isEmpty()) {
        return List.of();
      }
      words.add(some.get(0).words());
      changes.addAll(some.get(0).changes());
    }
    Mend all = new Mend(String.join(" and ", words), changes);
    return cures(all) ? List.of(all) : List.of();
  }

  private boolean cures(Mend mend) {
    return Trial.of(tree, mend.changes()) instanceof Trial.Read r
        && Trial.cures(pack, finding, Trial.pack(pack, r.design()));
  }

  private List<Mend> candidates(Want want) {
    String path = want.parameter();
    if (path.endsWith(SECOND_SET_IN)) {
      return List.of(gluedFlat(path, want));
    }
    if (path.endsWith(ACROSS) || path.endsWith(UP)) {
      return moves(path, want);
    }
    if (path.endsWith(ALONG)) {
      return slides(path, want);
    }
    if (path.endsWith(RAISED_BY)) {
      return raises(path, want);
    }
    Optional<Node> there = tree.find(path);
    if (there.isPresent() && there.get() instanceof Node.Fields shape) {
      return shapes(shape, want);
    }
    return sizes(want).stream()
        .map(l -> new Mend("make " + named(path, say(l)), put(path, l)))
        .toList();
  }

  /** What gets a new size, and the size: "the tab 8 mm", "it 38.5 mm high". */
  private static String named(String path, String size) {
    if (path.contains(".outline.")) {
      return "it " + size + (path.endsWith("[0]") ? " wide" : path.endsWith(SECOND) ? " high" : "");
    }
    String last = path.substring(path.lastIndexOf('.') + 1).replaceFirst("\\[\\d+]$", "");
    return "the " + (path.contains(".aperture") ? "opening" : last.replace('-', ' ')) + " " + size;
  }

  /** Another place, on the ruler's marks; the other half of the offset stays. */
  private List<Mend> moves(String path, Want want) {
    boolean across = path.endsWith(ACROSS);
    String at = path.substring(0, path.length() - SECOND.length());
    double x = offset(at + "[0]");
    double y = offset(at + "[1]");
    double now = across ? x : y;
    boolean more = Double.isFinite(want.least());
    double to = more ? marks.up(want.least()) : marks.down(want.most());
    List<Mend> all = new ArrayList<>();
    for (int further = 0; further < 2; further++) {
      double then = to + (more ? 1 : -1) * further * marks.step().mm();
      String where =
          then > now ? (across ? "to the right" : "up") : across ? "to the left" : "down";
      String pair =
          across
              ? "[" + number(then) + ", " + number(y) + "]"
              : "[" + number(x) + ", " + number(then) + "]";
      all.add(
          new Mend(
              "move it " + say(exact(Math.abs(then - now))) + " " + where,
              List.of(new Change.Put(at, pair))));
    }
    return all;
  }

  /** Another place along an edge, on the ruler's marks. */
  private List<Mend> slides(String path, Want want) {
    boolean more = Double.isFinite(want.least());
    double to = more ? marks.up(want.least()) : marks.down(want.most());
    String words = "move it " + say(exact(Math.abs(to - offset(path)))) + " along its edge";
    return List.of(new Mend(words, List.of(new Change.Put(path, number(to)))));
  }

  private double offset(String path) {
    return tree.find(path)
        .filter(Node.Scalar.class::isInstance)
        .flatMap(n -> length((Node.Scalar) n))
        .map(Length::mm)
        .orElse(0.0);
  }

  private String number(double mm) {
    return MakerUnits.of(design.unit()).number(mm);
  }

  /** Less foam, on the ruler's marks, down to none; or more. */
  private List<Mend> raises(String path, Want want) {
    if (!Double.isFinite(want.most())) {
      return sizes(want).stream()
          .map(l -> new Mend("raise it by " + say(l), put(path, l)))
          .toList();
    }
    Length most = exact(Math.max(0, marks.down(want.most())));
    String words = most.signum() > 0 ? "raise it by " + say(most) : "glue it on without foam";
    return List.of(new Mend(words, put(path, most)));
  }

  /** The second tab glued where it falls; no mark of a ruler is asked of it. */
  private Mend gluedFlat(String path, Want want) {
    String pair = path.substring(0, path.length() - SECOND.length());
    String first = tree.find(pair + "[0]").orElse(null) instanceof Node.Scalar s ? s.raw() : "0";
    String second =
        BigDecimal.valueOf(want.most() / design.unit().mm().toDouble())
            .setScale(4, RoundingMode.HALF_EVEN)
            .stripTrailingZeros()
            .toPlainString();
    return new Mend(
        "glue its second tab with the frame laid flat, where it falls",
        List.of(new Change.Put(pair, "[" + first + ", " + second + "]")));
  }

  /** The makeable length nearest to the bound, and one mark further in. */
  private List<Length> sizes(Want want) {
    List<Length> all = new ArrayList<>();
    if (Double.isFinite(want.most())) {
      Length most = exact(marks.down(want.most()));
      all.add(most);
      all.add(most.minus(marks.step()));
    } else if (Double.isFinite(want.least())) {
      Length least = exact(marks.up(want.least()));
      all.add(least);
      all.add(least.plus(marks.step()));
    }
    return all.stream().filter(l -> l.signum() > 0).toList();
  }

  private Length exact(double mm) {
    return marks.nearest(MakerUnits.of(design.unit()).nearest(mm));
  }

  private List<Change> put(String path, Length to) {
    return List.of(new Change.Put(path, written(to)));
  }

  /** Openings: a single size is set; of a width and a height either one, then both. */
  private List<Mend> shapes(Node.Fields shape, Want want) {
    List<Mend> all = new ArrayList<>();
    for (Length size : sizes(want)) {
      String words = "make the opening " + say(size);
      for (Node.Entry e : shape.entries()) {
        String path = want.parameter() + "." + e.key().raw();
        if (e.value() instanceof Node.Scalar s && length(s).isPresent()) {
          all.add(new Mend(words, put(path, size)));
        } else if (e.value() instanceof Node.Items i && i.items().size() >= 2 && sizeKey(e)) {
          all.add(new Mend(words + " wide", put(path + "[0]", size)));
          all.add(new Mend(words + " high", put(path + "[1]", size)));
          List<Change> both = new ArrayList<>(put(path + "[0]", size));
          both.addAll(put(path + "[1]", size));
          all.add(new Mend(words + " both ways", both));
        }
      }
    }
    return all;
  }

  private static boolean sizeKey(Node.Entry e) {
    return !e.key().raw().equals("at");
  }

  private Optional<Length> length(Node.Scalar s) {
    return Length.read(s.raw(), design.unit()) instanceof Reading.Read r
        ? Optional.of(r.length())
        : Optional.empty();
  }

  /** As it stands in the design: a bare number in its unit. */
  private String written(Length l) {
    return MakerUnits.of(design.unit()).number(l.mm());
  }

  private String say(Length l) {
    MakerUnits shown = pack.inputs().wants().units();
    boolean same = shown.unit().metric() == design.unit().metric();
    Unit unit = same ? design.unit() : shown.unit();
    return MakerUnits.of(unit).rounded(l.mm());
  }
}
