package hingeleaf.cli;

import hingeleaf.card.Posed;
import hingeleaf.finding.Problem;
import hingeleaf.fold.Budget;
import hingeleaf.fold.Drive;
import hingeleaf.fold.Linkage;
import hingeleaf.fold.RestState;
import hingeleaf.fold.Rests;
import hingeleaf.intake.BadInput;
import hingeleaf.intake.MechanismFile;
import hingeleaf.intake.MechanismText;
import hingeleaf.paper.FoldJson;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.CharacterCodingException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** {@code hingeleaf fold FILE} for a mechanism file: drives it to the states that it asks for. */
public final class FoldFile {
  private static final long STEPS = 20_000_000;
  private static final long REST_STEPS = 1_000_000;

  /** So many of the states in which it can lie are written out. */
  private static final int LISTED = 16;

  private FoldFile() {}

  /**
   * @param json whether the result goes out as JSON; else in sentences
   * @return 0 if every state was reached, 1 if one was not or the file has a fault, 3 if it cannot
   *     be read
   */
  public static int run(Path path, boolean json, PrintStream out, PrintStream err) {
    String text;
    try {
      text = Files.readString(path);
    } catch (CharacterCodingException e) {
      err.println(path + ": this is not a text in UTF-8");
      return 3;
    } catch (IOException e) {
      err.println(path + ": cannot be read");
      return 3;
    }
    try {
      return run(MechanismText.read(path.toString(), text), json, out, err);
    } catch (BadInput e) {
      err.println(e.getMessage());
      return 1;
    } catch (IllegalArgumentException e) {
      err.println(path + ": " + e.getMessage());
      return 1;
    }
  }

  private static int run(MechanismFile file, boolean json, PrintStream out, PrintStream err) {
    for (Problem note : file.notes()) {
      err.println(note.place() + ": " + note.message());
    }
    Linkage linkage = Linkage.of(file.mechanism(), Budget.of(STEPS));
    List<FoldJson.StateResult> results = new ArrayList<>();
    boolean all = true;
    for (MechanismFile.State s : file.states()) {
      Drive d = linkage.drive(s.drive(), s.near(), Budget.of(STEPS));
      double error = linkage.positionError(d.posed());
      results.add(new FoldJson.StateResult(s.drive(), d.reached(), d.why(), d.posed(), error));
      all &= d.reached();
    }
    FoldJson.Summary summary =
        new FoldJson.Summary(
            counted(linkage, results),
            linkage.bodies(),
            file.mechanism().joints().size(),
            linkage.loops(),
            flat(linkage, file.mechanism().joints().size()));
    out.print(
        json ? FoldJson.write(file.mechanism(), summary, results) : sentences(summary, results));
    return all ? 0 : 1;
  }

  /** The freedoms, or -1 where they are too many to count. */
  private static int counted(Linkage linkage, List<FoldJson.StateResult> results) {
    try {
      return mobility(linkage, results);
    } catch (IllegalArgumentException e) {
      return -1;
    }
  }

  /**
   * From the reference pose if it is regular; else from the states asked for, which tell which of
   * its branches is meant.
   */
  private static int mobility(Linkage linkage, List<FoldJson.StateResult> results) {
    if (linkage.regular(Budget.of(STEPS))) {
      return linkage.mobility(Budget.of(STEPS));
    }
    int least = Integer.MAX_VALUE;
    for (FoldJson.StateResult s : results) {
      if (s.reached() && away(s.posed())) {
        least = Math.min(least, linkage.freedomsAt(s.posed()));
      }
    }
    return least < Integer.MAX_VALUE ? least : linkage.mobility(Budget.of(STEPS));
  }

  /** The states in which it can lie, those that a card reaches without crossing first. */
  private static FoldJson.Flat flat(Linkage linkage, int joints) {
    Rests rests = linkage.rests(true, Budget.of(REST_STEPS));
    List<FoldJson.FlatState> listed = new ArrayList<>();
    int most = Math.max(1, Math.min(LISTED, LISTED * 1000 / (1 + joints)));
    for (int[] pick :
        rests.ranked(
            (c, w) -> (w.beyond() || w.crossing() ? 2 : 0) + (w.coplanar() ? 0 : 1), LISTED)) {
      boolean coplanar = true;
      boolean crossing = false;
      for (int c = 0; c < pick.length; c++) {
        RestState way = rests.choices().get(c).ways().get(pick[c]);
        coplanar &= way.coplanar();
        crossing |= way.beyond() || way.crossing();
      }
      listed.add(new FoldJson.FlatState(linkage.rest(rests, pick), coplanar, crossing));
    }
    boolean moves = !rests.choices().isEmpty();
    return new FoldJson.Flat(
        moves ? rests.count() : 0, rests.complete(), moves ? listed : List.of());
  }

  private static boolean away(Posed posed) {
    return posed.values().stream().anyMatch(v -> Math.abs(v) > 0.01);
  }

  private static String sentences(FoldJson.Summary s, List<FoldJson.StateResult> results) {
    StringBuilder b = new StringBuilder();
    b.append(s.bodies()).append(" parts on ").append(s.hinges()).append(" folds: ");
    b.append(
        switch (s.mobility()) {
          case -1 -> "too many to count how it moves";
          case 0 -> "rigid";
          case 1 -> "moves in one way";
          default -> "moves in " + s.mobility() + " ways";
        });
    if (s.flat().count() > 0) {
      b.append(String.format(Locale.ROOT, "; lies in %.0f states", s.flat().count()));
    }
    b.append(".\n");
    for (FoldJson.StateResult r : results) {
      b.append(r.drive());
      b.append(r.reached() ? ": reached" : ": not reached; " + r.why());
      b.append(String.format(Locale.ROOT, ", gap %.1e mm\n", r.posed().gap()));
    }
    return b.toString();
  }
}
