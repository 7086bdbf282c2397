package hingeleaf.cli;

import hingeleaf.finding.Level;
import hingeleaf.finding.Problem;
import java.util.List;
import java.util.Locale;

/** Problems as lines for a terminal: place, level, sentence. */
final class Telling {
  private Telling() {}

  static String lines(List<Problem> problems) {
    StringBuilder all = new StringBuilder();
    for (Problem p : problems) {
      if (p.place() != null) {
        all.append(p.place()).append(": ");
      }
      all.append(word(p.level())).append(": ").append(p.message()).append('\n');
    }
    return all.toString();
  }

  private static String word(Level level) {
    return level.name().toLowerCase(Locale.ROOT);
  }

  /** "1 problem blocks, 2 warn, 3 notes" - what there is of each. */
  static String count(List<Problem> problems) {
    long blocks = problems.stream().filter(p -> p.level() == Level.BLOCKS).count();
    long warns = problems.stream().filter(p -> p.level() == Level.WARNS).count();
    long notes = problems.stream().filter(p -> p.level() == Level.NOTES).count();
    if (blocks + warns + notes == 0) {
      return "0 blocking, 0 to watch, 0 to know: nothing to complain of";
    }
    return blocks + " blocking, " + warns + " to watch, " + notes + " to know";
  }
}
