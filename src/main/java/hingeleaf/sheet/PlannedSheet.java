package hingeleaf.sheet;

import java.util.List;

/** One sheet of a plan: how it is cut and what comes of it. Cuts are in the order of making. */
public record PlannedSheet(
    int stock,
    long w,
    long h,
    CutTree tree,
    List<PlacedPiece> pieces,
    List<Cut> cuts,
    List<Scrap> scraps) {

  public PlannedSheet {
    pieces = List.copyOf(pieces);
    cuts = List.copyOf(cuts);
    scraps = List.copyOf(scraps);
  }
}
