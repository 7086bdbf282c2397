package hingeleaf.paper.pack;

import hingeleaf.card.Join;
import hingeleaf.measure.MakerUnits;
import hingeleaf.measure.Unit;
import hingeleaf.pack.Consumption;
import hingeleaf.pack.Pack;
import hingeleaf.paper.Drawing;
import hingeleaf.paper.Fonts;
import hingeleaf.paper.book.Block;
import hingeleaf.paper.book.Book;
import hingeleaf.paper.book.BookStyle;
import hingeleaf.plan.ClassSheet;
import hingeleaf.plan.CutList;
import hingeleaf.plan.RunSheet;
import hingeleaf.plan.Step;
import hingeleaf.stock.Glue;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
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
    new LeftHanded(pack).add(all);
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
                + FrontPage.hours(RunSheet.minutes(s, sheet.bags()))
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
    for (Consumption.Use u : pack.consumption().uses()) {
      boolean wet = wetGlues().contains(u.name());
      items.add(
          wet
              ? "double-sided tape for the tabs: " + tabs()
              : u.name() + ": " + Quantity.of(u.amount(), u.unit(), units));
    }
    all.add(Block.Items.of(items));
  }

  /** Titles of the glues that would have to dry: in class tape takes their place. */
  private Set<String> wetGlues() {
    return pack.inputs().bench().glues().stream()
        .filter(g -> g.kind() == Glue.Kind.GLUE)
        .map(Glue::title)
        .collect(Collectors.toSet());
  }

  /** How much tape all tabs of one card take, one row on each. */
  private String tabs() {
    double length = 0;
    for (Join j : pack.card().joins()) {
      if (j instanceof Join.Glue g && g.raisedBy() == 0 && g.a().panel().startsWith("tab-")) {
        var box = g.a().area().box();
        length += Math.max(box.width(), box.height());
      }
    }
    return Quantity.of(length / 1000, "m", units);
  }

  private void lesson(List<Block> all) {
    all.add(new Block.Heading(2, "In class"));
    List<List<String>> rows = new ArrayList<>();
    for (ClassSheet.Period p : sheet.lesson()) {
      rows.add(
          List.of(
              Math.round(p.from()) + " – " + Math.round(p.to()) + " min",
              "step " + p.step(),
              p.step() == pack.work().steps().size()
                  ? "Try it (wet glue dries at home)"
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

  private void tools(List<Block> all) {
    all.add(new Block.Heading(2, "On the tables, four learners at each"));
    List<List<String>> rows = new ArrayList<>();
    for (ClassSheet.Tool t : sheet.tools()) {
      rows.add(
          List.of(
              wetGlues().contains(t.name()) ? "double-sided tape" : t.name(),
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
    items.add("No blades for those whom you do not know: openings are cut at home.");
    items.add("Send everybody home with plan.pdf.");
    all.add(Block.Items.of(items));
  }
}
