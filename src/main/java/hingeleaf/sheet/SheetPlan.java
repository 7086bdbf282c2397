package hingeleaf.sheet;

import java.util.List;

/**
 * A plan that can be cut.
 *
 * @param sheets the sheets
 * @param cuts all cuts of all sheets in the order in which they are made
 * @param cost what the sheets cost, in millionths
 * @param lowerBound no plan costs less, in millionths
 * @param bound the name of the argument that gives the lower bound
 * @param settings how often a measure is set on the trimmer along {@code cuts}
 * @param warnings sentences for the maker
 */
public record SheetPlan(
    List<PlannedSheet> sheets,
    List<Cut> cuts,
    long cost,
    long lowerBound,
    String bound,
    int settings,
    List<String> warnings) {

  public SheetPlan {
    sheets = List.copyOf(sheets);
    cuts = List.copyOf(cuts);
    warnings = List.copyOf(warnings);
  }

  /** Whether no cheaper plan exists. */
  public boolean provenOptimal() {
    return cost <= lowerBound;
  }

  /** Area of the largest single scrap, in square millimetres. */
  public double largestScrap() {
    return sheets.stream()
        .flatMap(s -> s.scraps().stream())
        .mapToDouble(s -> s.w() / 1e6 * (s.h() / 1e6))
        .max()
        .orElse(0);
  }
}
