package hingeleaf.cli;

import hingeleaf.measure.MakerUnits;
import hingeleaf.mend.Rescued;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** Tells what became of a rescue, a line for each piece and one for each cost. */
final class RescueWords {
  private RescueWords() {}

  /**
   * @param bench the bench file that was written, where one was
   */
  static void tell(Rescued rescued, Optional<Path> bench, PrintWriter out) {
    MakerUnits units = rescued.pack().inputs().wants().units();
    for (Rescued.Row r : rescued.rows()) {
      out.println(r.piece() + ": " + r.verdict().words() + sizes(r, units));
    }
    out.println();
    paragraph("In sight", rescued.sight(), "nothing changes", out);
    paragraph("In the post", rescued.post(), "nothing changes", out);
    String where = bench.map(b -> b + " now says ").orElse("Write into the bench file: ");
    rescued.bench().forEach(b -> out.println(where + b + "."));
    if (!rescued.gone().isEmpty()) {
      out.println("No longer found:");
      out.print(Telling.lines(rescued.gone()));
    }
    if (!rescued.appeared().isEmpty()) {
      out.println("Newly found:");
      out.print(Telling.lines(rescued.appeared()));
    }
  }

  private static void paragraph(
      String title, List<String> sentences, String none, PrintWriter out) {
    out.println(title + ": " + (sentences.isEmpty() ? none : String.join("; ", sentences)) + ".");
  }

  private static String sizes(Rescued.Row r, MakerUnits units) {
    boolean cuts =
        r.verdict() != Rescued.Verdict.AS_DESIGNED && r.verdict() != Rescued.Verdict.STILL_GOOD;
    String scores = r.scores().stream().map(s -> bare(units, s)).collect(Collectors.joining(", "));
    return ", "
        + bare(units, r.width())
        + " x "
        + exact(units, r.height())
        + (cuts && !scores.isEmpty()
            ? " (flat "
                + bare(units, r.flatWidth())
                + " x "
                + exact(units, r.flatHeight())
                + ", scores at "
                + scores
                + ")"
            : "")
        + (r.words().isEmpty() ? "" : " - " + r.words());
  }

  private static String exact(MakerUnits units, double mm) {
    return units.exact(mm) ? units.text(mm) : units.fine(mm);
  }

  private static String bare(MakerUnits units, double mm) {
    String text = exact(units, mm);
    return text.substring(0, text.lastIndexOf(' '));
  }
}
