package hingeleaf.paper.pack;

import hingeleaf.card.Join;
import hingeleaf.pack.Pack;
import hingeleaf.paper.book.Block;
import java.util.ArrayList;
import java.util.List;

/** What goes wrong at the table: why, how to save this card, how to avoid it on the next. */
final class TroubleChapter {
  private final Pack pack;

  TroubleChapter(Pack pack) {
    this.pack = pack;
  }

  void add(List<Block> all) {
    all.add(new Block.Heading(2, "When it goes wrong"));
    all.add(Block.Paragraph.note("Common practice of the trade; try a cure on a scrap first."));
    List<List<String>> rows = new ArrayList<>();
    rows.add(
        List.of(
            "will not flatten",
            "a second tab was pressed while the card stood, or a score is off by more than the"
                + " card's thickness; or something raised meets solid card",
            "slip a thin blade under that tab, lay the card flat and close it again where it falls",
            "close every second tab flat; score all frames at one setting"));
    rows.add(
        List.of(
            "leans to one side",
            "two sides alone make a parallelogram: it stands only where it is held",
            "glue a strip as long as the stage is deep from the back to the first frame at the"
                + " bottom, folded in its middle",
            "plan a stay: a fold-down brace or a strip round the card"));
    rows.add(
        List.of(
            "splits at the fold",
            "folded across the grain, unscored, or bent towards its groove",
            "run a little glue into the split, press it shut, hide it with a strip of the same card",
            "cut with the grain along the folds; score deeper with a round stylus, "
                + "and fold so that the groove is outside"));
    rows.add(
        List.of(
            "gap at a corner",
            "the first tab was not along the edge, or the piece was cut out of square",
            "if it is less than "
                + small(1, "1/32 in")
                + ", leave it; else trim the frame flush, all edges together, when dry",
            "set one end, then the other, then press; check two corners with a set square"));
    rows.add(
        List.of(
            "opening off centre",
            "measured from the cut edge in one piece and from the score in another",
            "cover with a mat whose opening is true",
            "measure every opening from the left edge, as the table says"));
    rows.add(
        List.of(
            "bows",
            "wet glue on one face only, or dried without weight",
            "damp the hollow side very lightly and press it under a weight over night",
            "less glue, tape for large mats, weight until it is quite dry"));
    rows.add(
        List.of(
            "a tab shows in an opening",
            "the opening is wider than the frame less its two tabs",
            "colour the tab like what lies behind it, or trim it to "
                + small(6, "1/4 in")
                + " but no less",
            "make the opening smaller or the tabs narrower"));
    if (raised()) {
      rows.add(
          List.of(
              "an ornament falls off or is crushed",
              "too little foam, or weighed down without packers",
              "new foam over most of its back",
              "lay scrap card as deep as the foam beside it under the weight"));
    }
    all.add(
        new Block.Table(
            List.of(
                Block.Column.name("It…"),
                Block.Column.text("Because"),
                Block.Column.text("Save this one"),
                Block.Column.text("On the next")),
            rows));
  }

  private String small(double mm, String inches) {
    var units = pack.inputs().wants().units();
    return units.unit() == hingeleaf.measure.Unit.IN ? inches : units.text(mm);
  }

  private boolean raised() {
    return pack.card().joins().stream().anyMatch(j -> j instanceof Join.Glue g && g.raisedBy() > 0);
  }
}
