package hingeleaf.plan;

import hingeleaf.card.Embossing;
import hingeleaf.card.Piece;
import hingeleaf.geom.Box;
import hingeleaf.measure.MakerUnits;
import hingeleaf.stock.Bench;
import java.util.ArrayList;
import java.util.List;

/** The sentences of the steps by which a pattern is pressed into pieces. */
final class EmbossWords {
  // Minutes of a practised hand: common practice, no source. A blank is cut like any rectangle.
  private static final double PRESS_MINUTES = 1.5;
  private static final double TRIM_MINUTES = 2;

  /** Until it no longer curls, under a weight: common practice, no source. */
  private static final double FLAT_MINUTES = 10;

  private final Bench bench;
  private final MakerUnits units;

  EmbossWords(Bench bench, MakerUnits units) {
    this.bench = bench;
    this.units = units;
  }

  /** What pieces must share to be pressed in one go. */
  static Object setting(CutList.Line line) {
    return embossing(line).folder().name();
  }

  private static Embossing embossing(CutList.Line line) {
    return line.piece()
        .embossing()
        .orElseThrow(() -> new IllegalArgumentException(line.names() + " is not embossed"));
  }

  Step blanks(List<CutList.Line> lines) {
    List<String> told = new ArrayList<>();
    for (CutList.Line line : lines) {
      told.add(
          Says.count(line.quantity(), "blank")
              + " "
              + blank(line)
              + " from "
              + Says.paper(line.piece().stock())
              + " ("
              + Says.listed(line.pieces())
              + ")"
              + grain(line)
              + ".");
    }
    return Step.loose(
        Step.Kind.BLANK,
        CutList.ids(lines),
        List.of(),
        "Cut blanks for " + Says.quoted(CutList.ids(lines), "embossed pieces"),
        "With the trimmer, larger than the piece is to be: embossing draws card in by up to 1 %, and"
            + " it is trimmed afterwards.",
        told,
        "each blank is larger than its piece both ways, "
            + lines.get(0).names()
            + " by "
            + units.text(lines.get(0).blankWidth() - lines.get(0).piece().width())
            + " in width.",
        List.of("trimmer"),
        Words.CUT_MINUTES * CutList.count(lines),
        0);
  }

  private String blank(CutList.Line line) {
    return units.size(line.blankWidth(), line.blankHeight());
  }

  private static String grain(CutList.Line line) {
    return switch (line.piece().grain()) {
      case WIDTH -> ", grain along the width";
      case HEIGHT -> ", grain along the height";
      case ANY -> "";
    };
  }

  /** Presses pieces that share a folder. */
  Step emboss(List<CutList.Line> lines) {
    Embossing first = embossing(lines.get(0));
    List<String> told = new ArrayList<>();
    lines.forEach(l -> told.add(laid(l)));
    told.add("Then under a weight, so that the curl goes out of it.");
    return Step.loose(
        Step.Kind.EMBOSS,
        CutList.ids(lines),
        List.of(),
        "Emboss " + Says.quoted(CutList.ids(lines), "blanks"),
        "In the embossing folder “"
            + first.folder().label()
            + "”, the good face towards the plate whose pattern is sunk, so that it stands up on"
            + " that face. Once through the machine ("
            + units.text(bench.machineWidth())
            + " wide), once back. Before any score and any opening, for a pattern must cross"
            + " neither.",
        told,
        "the pattern is as deep at its edges as in its middle and nowhere torn; the blank still"
            + " measures more than "
            + size(lines.get(0).piece())
            + ".",
        List.of("embossing folder", "machine", "weight"),
        PRESS_MINUTES * CutList.count(lines),
        FLAT_MINUTES);
  }

  private String size(Piece p) {
    return units.size(p.width(), p.height());
  }

  /** Where the pattern lies on the blank, which is larger than the piece by the same all round. */
  private String laid(CutList.Line line) {
    Box plates = line.pressed().orElseThrow();
    boolean left = plates.minX() > 1e-6;
    boolean low = plates.minY() > 1e-6;
    String name = Says.listed(line.pieces());
    if (!left && !low) {
      return name + ": the folder is larger than the blank; lay it in the middle.";
    }
    return name
        + ": its pattern begins "
        + (left ? units.text(plates.minX()) + " from the left edge" : "at the left edge")
        + " of the blank and "
        + (low ? units.text(plates.minY()) + " from the lower one." : "at the lower one.");
  }

  Step trim(List<CutList.Line> lines) {
    List<String> told = new ArrayList<>();
    for (CutList.Line l : lines) {
      told.add(Says.listed(l.pieces()) + ": " + size(l.piece()) + ".");
    }
    return Step.loose(
        Step.Kind.CUT,
        CutList.ids(lines),
        List.of(),
        "Trim " + Says.quoted(CutList.ids(lines), "embossed pieces"),
        "With the trimmer: half of what is too much off the left and lower edges, square to each"
            + " other, then to size, so that the pattern stays in the middle.",
        told,
        "your piece now measures " + size(lines.get(0).piece()) + " and its corners are square.",
        List.of("trimmer"),
        TRIM_MINUTES * CutList.count(lines),
        0);
  }
}
