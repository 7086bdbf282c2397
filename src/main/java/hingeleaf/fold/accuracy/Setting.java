package hingeleaf.fold.accuracy;

/**
 * One setting of a tool: all pieces cut or scored at it share its error.
 *
 * @param tool {@code cut} or {@code score}
 * @param direction {@code x} for lines x = at, {@code y} for lines y = at
 * @param at from the piece's lower left, in thousandths of a millimetre
 */
record Setting(String tool, String direction, long at) {
  static Setting of(String tool, String direction, double mm) {
    return new Setting(tool, direction, Math.round(mm * 1000));
  }
}
