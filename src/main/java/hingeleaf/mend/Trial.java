package hingeleaf.mend;

import hingeleaf.design.Change;
import hingeleaf.design.DesignDocument;
import hingeleaf.design.Edit;
import hingeleaf.design.TextEdit;
import hingeleaf.design.Tree;
import hingeleaf.finding.Level;
import hingeleaf.finding.Problem;
import hingeleaf.pack.Pack;
import hingeleaf.structure.Structures;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/** What becomes of a design when changes are made to it. */
public sealed interface Trial {
  /** The new text reads as a design. */
  record Read(DesignDocument design) implements Trial {
    public String text() {
      return design.tree().source().text();
    }
  }

  /**
   * The changes cannot be made, or their outcome is no design.
   *
   * @param reason as a sentence
   */
  record Refused(String reason) implements Trial {}

  /** Makes the changes one after the other and reads the outcome. */
  static Trial of(Tree tree, List<Change> changes) {
    Tree now = tree;
    for (Change c : changes) {
      Edit edit = TextEdit.apply(now, c);
      if (edit instanceof Edit.Refused r) {
        return new Refused(r.reason());
      }
      now = ((Edit.Done) edit).tree();
    }
    DesignDocument.Outcome outcome = DesignDocument.read(now, Structures.FORMS);
    if (outcome instanceof DesignDocument.Outcome.Wrong w) {
      return new Refused(w.problems().get(0).message());
    }
    return new Read(((DesignDocument.Outcome.Right) outcome).document());
  }

  /**
   * Whether a finding has gone from a pack and nothing came that was not there before; a new note
   * is a small price for what is more than a note.
   */
  static boolean cures(Pack before, Problem finding, Pack after) {
    Set<String> known = before.problems().stream().map(Trial::key).collect(Collectors.toSet());
    known.remove(key(finding));
    boolean grave = finding.level() != Level.NOTES;
    return after.problems().stream()
        .filter(p -> !grave || p.level() != Level.NOTES || key(p).equals(key(finding)))
        .map(Trial::key)
        .allMatch(known::contains);
  }

  private static String key(Problem p) {
    return p.kind() + " " + p.part() + " " + p.origin();
  }

  /** The pack of another design with everything else as it was. */
  static Pack pack(Pack like, DesignDocument design) {
    Pack.Inputs in = like.inputs();
    return Pack.of(new Pack.Inputs(design, in.drawings(), in.bench(), in.lettering(), in.wants()));
  }
}
