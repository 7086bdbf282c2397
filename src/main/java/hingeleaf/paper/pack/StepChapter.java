package hingeleaf.paper.pack;

import hingeleaf.pack.Pack;
import hingeleaf.paper.Drawing;
import hingeleaf.paper.book.Block;
import hingeleaf.paper.book.BookStyle;
import hingeleaf.paper.book.Span;
import hingeleaf.plan.Step;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** What to do, step by step, each with its drawing. */
final class StepChapter {
  /** How much narrower a picture is than the page, for the number beside it, mm. */
  private static final double NUMBER = 12;

  private final Pack pack;
  private final StepPictures pictures;

  StepChapter(Pack pack, StepPictures pictures) {
    this.pack = pack;
    this.pictures = pictures;
  }

  /** The pictures for pages of a style. */
  static StepPictures pictures(Pack pack, BookStyle style) {
    return new StepPictures(pack, style.width() - NUMBER, style);
  }

  void add(List<Block> all) {
    all.add(new Block.Heading(2, "Make"));
    all.add(
        Block.Paragraph.note(
            "Toned: what is new at this step. Hatched: glue or tape. Arrows: the way a fold goes."
                + " Lengths in drawings are in "
                + FrontPage.unitWord(pack.inputs().wants().units())
                + "."));
    // In their order, for each picture goes on from the one before.
    for (Step step : pack.work().steps()) {
      all.add(numbered(pack, step, pictures));
    }
  }

  private static Block numbered(Pack pack, Step step, StepPictures pictures) {
    pack.goOn();
    return new Block.Numbered(step.number(), body(step, pictures.of(step)));
  }

  private static List<Block> body(Step step, Optional<Drawing> drawing) {
    List<Block> body = new ArrayList<>();
    body.add(
        new Block.Paragraph(
            List.of(Span.strong(step.title() + "."), Span.plain(" " + step.text()))));
    if (!step.lines().isEmpty()) {
      body.add(Block.Items.of(step.lines()));
    }
    drawing.ifPresent(d -> body.add(new Block.Figure(d, "")));
    String small = small(step);
    if (!small.isEmpty()) {
      body.add(Block.Paragraph.note(small));
    }
    return body;
  }

  private static String small(Step step) {
    List<String> parts = new ArrayList<>();
    if (!step.check().isEmpty()) {
      parts.add("Check: " + step.check());
    }
    if (step.dries() > 0) {
      parts.add("Dries " + Math.round(step.dries()) + " minutes" + meanwhile(step));
    }
    return String.join(" ", parts);
  }

  private static String meanwhile(Step step) {
    if (step.meanwhile().isEmpty()) {
      return ".";
    }
    String numbers =
        step.meanwhile().stream().map(String::valueOf).collect(Collectors.joining(", "));
    return "; meanwhile do " + (step.meanwhile().size() == 1 ? "step " : "steps ") + numbers + ".";
  }
}
