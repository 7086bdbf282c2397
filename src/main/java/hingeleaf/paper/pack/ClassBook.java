package hingeleaf.paper.pack;

import hingeleaf.measure.Decimal;
import hingeleaf.measure.MakerUnits;
import hingeleaf.pack.Consumption;
import hingeleaf.pack.Pack;
import hingeleaf.paper.Drawing;
import hingeleaf.paper.Fonts;
import hingeleaf.paper.book.Block;
import hingeleaf.paper.book.Book;
import hingeleaf.paper.book.BookStyle;
import hingeleaf.paper.book.Span;
import hingeleaf.plan.ClassSheet;
import hingeleaf.plan.CutList;
import hingeleaf.plan.RunSheet;
import hingeleaf.plan.Step;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** The sheet for whoever teaches the card. */
final class ClassBook {
  private final Pack pack;
  private final ClassSheet sheet;
  private final MakerUnits units;

  private ClassBook(Pack pack) {
    this.pack = pack;
    this.sheet = pack.lesson();
    this.units = pack.inputs().wants().units();
  }

  static List<Drawing> pages(Pack pack, Fonts fonts) {
    String title = pack.title() + ", class of " + pack.inputs().wants().lesson().seats();
    BookStyle style = new BookStyle(PackFiles.paper(pack), title, fonts);
    return Book.pages(new ClassBook(pack).blocks(title), style);
  }

  private List<Block> blocks(String title) {
    List<Block> all = new ArrayList<>();
    all.add(new Block.Heading(1, title));
    all.add(Block.Paragraph.of(sum()));
    home(all);
    bags(all);
    lesson(all);
    withTape(all);
    tools(all);
    new LeftHanded(pack).add(all);
    notes(all);
    return all;
  }

  /** The learners' minutes as a sum that can be done again. */
  private String sum() {
    String waits = sheet.waits() > 0 ? " + " + minutes(sheet.waits()) + " of drying" : "";
    return sheet.seats()
        + " learners, "
        + sheet.minutes()
        + " minutes. A learner is reckoned to need "
        + factor()
        + " times your own minutes: "
        + minutes(sheet.hands())
        + " in class × "
        + factor()
        + " + "
        + minutes(ClassSheet.AROUND)
        + " of welcome and tidying"
        + waits
        + " = about "
        + Math.round(sheet.needed())
        + " minutes"
        + (sheet.fits()
            ? ". At home you need " + FrontPage.hours(sheet.homeHands()) + " for all bags."
            : ", which does not fit even with all at home that can be: take longer.");
  }

  private static String factor() {
    return Decimal.fixed(ClassSheet.LEARNER, 1);
  }

  private static String minutes(double m) {
    return Decimal.fixed(m, m == Math.rint(m) ? 0 : 1);
  }

  private Step step(int number) {
    return sheet.work().steps().get(number - 1);
  }

  private void home(List<Block> all) {
    all.add(new Block.Heading(2, "At home, for everybody"));
    List<List<String>> rows = new ArrayList<>();
    for (ClassSheet.Home h : sheet.home()) {
      Step s = step(h.step());
      rows.add(
          List.of(
              "" + s.number(),
              s.title(),
              FrontPage.hours(RunSheet.minutes(s, sheet.bags())),
              s.dries() > 0 ? minutes(s.dries()) + " min" : "–",
              why(h.why())));
    }
    all.add(
        new Block.Table(
            List.of(
                Block.Column.number("Step"),
                Block.Column.text("What"),
                Block.Column.text("All " + sheet.bags()),
                Block.Column.text("Lies"),
                Block.Column.text("Why at home")),
            rows));
    String used =
        pack.lessonUses(false).uses().stream()
            .map(u -> u.name() + " " + Quantity.of(u.amount() * sheet.bags(), u.unit(), units))
            .collect(Collectors.joining(", "));
    all.add(
        Block.Paragraph.note(
            "The steps are those of plan.pdf, with the same numbers."
                + (used.isEmpty() ? "" : " Used up at home for all bags: " + used + ".")));
  }

  private static String why(ClassSheet.Why why) {
    return switch (why) {
      case CUTTING -> "blades and presses stay at home";
      case DRYING -> "it must lie, and no tape of the bench has room";
      case NEEDED -> "a step at home needs it";
      case TIME -> "the lesson would be too long";
    };
  }

  private void bags(List<Block> all) {
    all.add(new Block.Heading(2, sheet.bags() + " bags: one for each seat and a spare"));
    List<String> items = new ArrayList<>();
    for (CutList.Line line : pack.cuts().lines()) {
      items.add(line.quantity() + " × " + line.names() + ", " + line.piece().stock().title());
    }
    for (Consumption.Use u : pack.lessonUses(true).uses()) {
      items.add(
          u.name()
              + ": "
              + Quantity.of(u.amount(), u.unit(), units)
              + ", "
              + Quantity.of(u.amount() * sheet.bags(), u.unit(), units)
              + " for all bags");
    }
    all.add(Block.Items.of(items));
  }

  private void lesson(List<Block> all) {
    all.add(new Block.Heading(2, "In class"));
    List<List<String>> rows = new ArrayList<>();
    for (ClassSheet.Period p : sheet.lesson()) {
      rows.add(
          List.of(
              Math.round(p.from()) + " – " + Math.round(p.to()) + " min",
              "step " + p.step(),
              p.waits() > 0
                  ? p.title() + ", with " + minutes(p.waits()) + " min of drying"
                  : p.title()));
    }
    all.add(
        new Block.Table(
            List.of(
                Block.Column.name("When"), Block.Column.text("Step"), Block.Column.text("What")),
            rows));
    int samples = sheet.lesson().size();
    all.add(
        Block.Paragraph.of(
            "Bring "
                + samples
                + " samples, each stopped after one of these steps, so that everybody sees what"
                + " comes next."));
  }

  /** The steps that go otherwise than in plan.pdf, told in full. */
  private void withTape(List<Block> all) {
    List<Step> changed =
        sheet.taught().stream()
            .filter(s -> s.joins().stream().anyMatch(sheet.taped()::contains))
            .toList();
    if (changed.isEmpty()) {
      return;
    }
    all.add(new Block.Heading(2, "With tape in class"));
    all.add(
        Block.Paragraph.of(
            "Nothing has time to dry: these steps are done with double-sided tape in place of the"
                + " glue of plan.pdf; its drawings hold. Tape cannot be moved once it touches, so"
                + " set one end first."));
    List<Block.Paragraph> items = new ArrayList<>();
    for (Step s : changed) {
      items.add(
          new Block.Paragraph(List.of(new Span("Step " + s.number() + ". ", Span.Voice.STRONG)))
              .and(
                  String.join(" ", s.text(), String.join(" ", s.lines())).strip() + " Check: ",
                  Span.Voice.PLAIN)
              .and(s.check(), Span.Voice.PLAIN));
    }
    all.add(new Block.Items(items));
  }

  private void tools(List<Block> all) {
    all.add(new Block.Heading(2, "On the tables, four learners at each"));
    List<List<String>> rows = new ArrayList<>();
    for (ClassSheet.Tool t : sheet.tools()) {
      rows.add(
          List.of(
              t.name(),
              "" + t.each(),
              t.queue() > 0 ? "the last waits " + Math.round(t.queue()) + " min" : "nobody waits"));
    }
    all.add(
        new Block.Table(
            List.of(
                Block.Column.name("Tool"),
                Block.Column.number("Bring"),
                Block.Column.text("Queue")),
            rows));
    if (sheet.tools().stream().anyMatch(t -> t.queue() > 0)) {
      all.add(
          Block.Paragraph.note(
              "Waiting for a shared tool is not in the sum above: bring more of them, or let those"
                  + " who wait begin with what needs none."));
    }
  }

  private void notes(List<Block> all) {
    all.add(new Block.Heading(2, "Mind"));
    List<String> items = new ArrayList<>();
    items.add("No blades for those whom you do not know: openings are cut at home.");
    items.add("Send everybody home with plan.pdf.");
    all.add(Block.Items.of(items));
  }
}
