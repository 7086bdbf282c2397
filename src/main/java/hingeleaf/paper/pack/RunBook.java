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
import hingeleaf.plan.RunSheet;
import java.util.ArrayList;
import java.util.List;

/** The run sheet of a batch. */
final class RunBook {
  private final Pack pack;
  private final RunSheet run;

  private RunBook(Pack pack) {
    this.pack = pack;
    this.run = pack.run();
  }

  static List<Drawing> pages(Pack pack, Fonts fonts) {
    String title = pack.title() + ", run of " + pack.inputs().wants().copies();
    BookStyle style = new BookStyle(PackFiles.paper(pack), title, fonts);
    return Book.pages(new RunBook(pack).blocks(title), style);
  }

  private List<Block> blocks(String title) {
    List<Block> all = new ArrayList<>();
    all.add(new Block.Heading(1, title));
    all.add(
        Block.Paragraph.of(
            "Begin "
                + run.made()
                + " cards so that "
                + run.copies()
                + " are good (5 % go wrong). About "
                + FrontPage.hours(run.hands())
                + " of work; keep "
                + run.places()
                + " places under weights. The steps are those of plan.pdf."));
    cutting(all);
    jigs(all);
    rounds(all);
    uses(all);
    return all;
  }

  private MakerUnits units() {
    return pack.inputs().wants().units();
  }

  private void cutting(List<Block> all) {
    all.add(new Block.Heading(2, "Cut, common sizes first"));
    List<List<String>> rows = new ArrayList<>();
    run.cutting().forEach(c -> rows.add(List.of(c.size(), "" + c.pieces(), c.from())));
    all.add(
        new Block.Table(
            List.of(
                Block.Column.name("Size"),
                Block.Column.number("Pieces"),
                Block.Column.text("Of them")),
            rows));
    all.add(
        Block.Paragraph.note(
            "One setting for all papers before the next. Sheets to take: "
                + SheetChapter.shopping(pack.runSheets())
                + "."));
  }

  private void jigs(List<Block> all) {
    all.add(new Block.Heading(2, "Jigs: one for each setting"));
    List<List<String>> rows = new ArrayList<>();
    int n = 1;
    for (RunSheet.Jig j : run.jigs()) {
      rows.add(List.of("jig " + n++, j.use(), j.setting(), "" + j.times()));
    }
    all.add(
        new Block.Table(
            List.of(
                Block.Column.name("Jig"),
                Block.Column.text("For"),
                Block.Column.text("Set to"),
                Block.Column.number("Times")),
            rows));
  }

  private void rounds(List<Block> all) {
    all.add(new Block.Heading(2, "Rounds: a step on all cards, then the next"));
    List<List<String>> rows = new ArrayList<>();
    for (RunSheet.Round r : run.rounds()) {
      rows.add(
          List.of(
              "" + r.step(),
              r.title(),
              r.set() > 0 ? minutes(r.set()) : "–",
              minutes(r.each()),
              FrontPage.hours(r.hands()),
              r.dries() > 0 ? Math.round(r.dries()) + " min" : "–",
              r.lying() > 0 ? "" + r.lying() : "–"));
    }
    all.add(
        new Block.Table(
            List.of(
                Block.Column.number("Step"),
                Block.Column.text("What"),
                Block.Column.text("Set once"),
                Block.Column.text("Each card"),
                Block.Column.text("All " + run.made()),
                Block.Column.text("Dries"),
                Block.Column.text("Lie at once")),
            rows));
    all.add(
        Block.Paragraph.note(
            "Work on all = set once + "
                + run.made()
                + " × each card. Setting is the stop, jig or mask: half of a cut's or score's"
                + " minutes on a single card, a third of an opening's, a placing's or a pressing's;"
                + " nothing of folding, writing, gluing and cutting by a template (common practice, no source). One card"
                + " alone takes "
                + FrontPage.hours(pack.work().hands())
                + ", in this run "
                + FrontPage.hours(run.hands() / run.made())
                + ". The first few take longer, until the hands know the way. Lie at once: how many"
                + " are drying when the first is dry, if you go on without a pause."));
  }

  private static String minutes(double m) {
    return Decimal.fixed(m, 1) + " min";
  }

  private void uses(List<Block> all) {
    all.add(new Block.Heading(2, "Used up"));
    List<String> items = new ArrayList<>();
    for (Consumption.Use u : pack.consumption().uses()) {
      double amount = u.amount() * run.made();
      String packs =
          u.pack() > 0 ? ", " + (int) Math.ceil(amount / u.pack() - 1e-9) + " packs" : "";
      items.add(u.name() + ": " + Quantity.of(amount, u.unit(), units()) + packs);
    }
    double knife = pack.consumption().knifeMm() * run.made();
    int blades = (int) Math.ceil(knife / Consumption.BLADE_MM);
    items.add(
        "blades: "
            + blades
            + " (a fresh one every "
            + Quantity.of(Consumption.BLADE_MM / 1000, "m", units())
            + " of knife cut; "
            + Quantity.of(knife / 1000, "m", units())
            + " in all)");
    all.add(Block.Items.of(items));
  }
}
