package hingeleaf.fold.accuracy;

import org.jspecify.annotations.Nullable;

/**
 * One setting of a tool: all pieces cut or scored at it share its error.
 *
 * @param tool {@code cut} or {@code score}
 * @param direction {@code x} for lines x = at, {@code y} for lines y = at
 * @param at from the piece's lower left, in thousandths of a millimetre
 */
record Setting(String tool, String direction, long at) {
  // Written out because errors are looked up by settings some ten thousand times in a study.
  @Override
  public boolean equals(@Nullable Object o) {
    return o instanceof Setting s
        && at == s.at
        && tool.equals(s.tool)
        && direction.equals(s.direction);
  }

  @Override
  public int hashCode() {
    return Long.hashCode(at) + 31 * tool.hashCode() + 961 * direction.hashCode();
  }

  static Setting of(String tool, String direction, double mm) {
    return new Setting(tool, direction, Math.round(mm * 1000));
  }
}
