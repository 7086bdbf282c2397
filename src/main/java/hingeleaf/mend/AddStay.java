package hingeleaf.mend;

import hingeleaf.design.Change;
import hingeleaf.design.DesignDocument;
import hingeleaf.design.Node;
import hingeleaf.design.Values;
import hingeleaf.design.YamlText;
import hingeleaf.finding.Level;
import hingeleaf.finding.Problem;
import hingeleaf.pack.Pack;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/** Adds a stay to a card that leans: the first of the sorts that makes it stand. */
final class AddStay {
  /** From the quickest to make to what fits where no border is left. */
  private static final List<String> SORTS = List.of("base-tab", "belly-strip", "slot-lock");

  private final Pack pack;
  private final DesignDocument design;

  private AddStay(Pack pack) {
    this.pack = pack;
    this.design = pack.inputs().design();
  }

  /** Empty where the finding does not ask for a stay, or no stay helps. */
  static List<Mend> of(Pack pack, Problem finding) {
    if (!answers(finding) || !design(pack).base().form().has("stock")) {
      return List.of();
    }
    AddStay add = new AddStay(pack);
    return add.candidates().stream().filter(m -> add.cures(finding, m)).limit(1).toList();
  }

  static boolean answers(Problem finding) {
    return finding.kind().equals("needs-a-stay") || finding.kind().equals("stay-does-not-hold");
  }

  private static DesignDocument design(Pack pack) {
    return pack.inputs().design();
  }

  private List<Mend> candidates() {
    List<Mend> all = new ArrayList<>();
    for (String sort : SORTS) {
      all.add(new Mend("add a " + sort.replace('-', ' '), List.of(added(at(0), sort, ""))));
    }
    List<Change> braces = new ArrayList<>();
    String on = "back";
    for (Values frame : design.base().form().forms("frames")) {
      braces.add(added(at(braces.size()), "fold-down-brace", on));
      on = frame.text("name");
    }
    all.add(new Mend("add a fold-down brace to each stage", braces));
    return all;
  }

  /** At the end of the list of mechanisms, which is made where there is none. */
  private int at(int more) {
    return there() + more;
  }

  private int there() {
    return design.tree().find("mechanisms").orElse(null) instanceof Node.Items i
        ? i.items().size()
        : 0;
  }

  private Change added(int at, String sort, String on) {
    String stock = YamlText.of(design.base().form().text("stock"));
    String hung = on.isEmpty() ? "" : ", on: " + YamlText.of(on);
    String yaml = "{" + sort + ": {name: " + name(at) + hung + ", stock: " + stock + "}}";
    boolean list = design.tree().find("mechanisms").isPresent() || at > 0;
    return list
        ? new Change.Insert("mechanisms", at, yaml)
        : new Change.Put("mechanisms", "[" + yaml + "]");
  }

  /** A name that no piece has. */
  private String name(int at) {
    Set<String> taken = pack.card().pieces().stream().map(p -> p.id()).collect(Collectors.toSet());
    String name = at == there() ? "stay" : "stay-" + (at - there() + 1);
    int more = 2;
    while (taken.contains(name)) {
      name = "stay-" + (at - there() + more++);
    }
    return name;
  }

  /** The finding is gone and nothing graver than a note came. */
  private boolean cures(Problem finding, Mend mend) {
    if (!(Trial.of(design.tree(), mend.changes()) instanceof Trial.Read r)) {
      return false;
    }
    Pack after = Trial.pack(pack, r.design());
    Set<String> known = pack.problems().stream().map(AddStay::key).collect(Collectors.toSet());
    return after.problems().stream()
        .noneMatch(
            p ->
                p.kind().equals(finding.kind())
                    || p.level() != Level.NOTES && !known.contains(key(p)));
  }

  private static String key(Problem p) {
    return p.kind() + " " + p.part() + " " + p.origin();
  }
}
