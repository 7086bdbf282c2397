package hingeleaf.sheet;

/**
 * One cut of the trimmer.
 *
 * @param sheet index of the sheet in the plan
 * @param axis X for the line x = at
 * @param at where, in nm from the sheet's corner
 * @param from where the cut begins along the other direction, in nm
 * @param to where it ends
 * @param setting measure set on the trimmer in nm: what falls off is so wide
 * @param fallsOff what falls off: a piece's name, "a strip" or "scrap"
 * @param turn whether the part is turned by a quarter before this cut
 */
public record Cut(
    int sheet,
    Axis axis,
    long at,
    long from,
    long to,
    long setting,
    String fallsOff,
    boolean turn) {

  /** Length of the cut in nm. */
  public long length() {
    return to - from;
  }
}
