package hingeleaf.paper.pack;

import hingeleaf.card.Face;
import hingeleaf.measure.MakerUnits;
import hingeleaf.measure.Unit;
import hingeleaf.pack.Pack;
import hingeleaf.paper.Drawing;
import hingeleaf.paper.Fonts;
import hingeleaf.paper.book.Block;
import hingeleaf.paper.book.Book;
import hingeleaf.paper.book.BookStyle;
import hingeleaf.plan.ClassSheet;
import hingeleaf.plan.CutList;
import hingeleaf.plan.ScoreChart;
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
    all.add(
        Block.Paragraph.of(
            sheet.seats()
                + " learners, "
                + sheet.minutes()
                + " minutes. A learner is reckoned to need 2.5 times your own minutes; with welcome"
                + " and tidying the lesson takes about "
                + Math.round(sheet.needed())
                + " minutes"
                + (sheet.fits() ? "." : ", which does not fit: do more at home or take longer.")));
    home(all);
    bags(all);
    lesson(all);
    tools(all);
    notes(all);
    return all;
  }

  private void home(List<Block> all) {
    all.add(new Block.Heading(2, "At home, for everybody"));
    List<String> items = new ArrayList<>();
    for (Step s : pack.work().steps()) {
      if (sheet.home().contains(s.number())) {
        items.add(
            "step "
                + s.number()
                + ", "
                + s.title()
                + ": "
                + FrontPage.hours(s.hands() * sheet.bags())
                + " for "
                + sheet.bags());
      }
    }
    all.add(Block.Items.of(items));
  }

  private void bags(List<Block> all) {
    all.add(new Block.Heading(2, sheet.bags() + " bags: one for each seat and a spare"));
    List<String> items = new ArrayList<>();
    for (CutList.Line line : pack.cuts().lines()) {
      items.add(line.quantity() + " × " + line.names() + ", " + line.piece().stock().title());
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
              p.title()));
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
  }

  private void notes(List<Block> all) {
    all.add(new Block.Heading(2, "Mind"));
    List<String> items = new ArrayList<>();
    if (pack.work().steps().stream().anyMatch(s -> s.dries() > 0)) {
      items.add(
          "Nothing has time to dry in class: bring double-sided tape at least "
              + (units.unit() == Unit.IN ? "1/16 in" : units.text(2))
              + " narrower than the tabs instead of wet glue. It cannot be moved once it touches, so set one end"
              + " first.");
    }
    items.add(
        "Left-handed learners: print their templates with --mirrored. At the board they lay the"
            + " right edge against a stop on the right and score at the same distances from it: "
            + mirrored()
            + ".");
    items.add("No blades for those whom you do not know: openings are cut at home.");
    items.add("Send everybody home with plan.pdf.");
    all.add(Block.Items.of(items));
  }

  private String mirrored() {
    for (ScoreChart.Row row : pack.scores().rows()) {
      double width = row.line().piece().width();
      return row.settings().stream()
          .filter(s -> s.up() == Face.FRONT && !s.aslant() && !s.quarterTurn())
          .map(s -> width - s.at())
          .sorted()
          .map(units::text)
          .collect(Collectors.joining(", "));
    }
    return "there is nothing to score";
  }
}
