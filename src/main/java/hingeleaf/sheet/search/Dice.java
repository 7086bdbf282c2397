package hingeleaf.sheet.search;

/** Seeded chance: xorshift64* (Vigna, ACM Trans. Math. Software 42(4), 2016). */
public final class Dice {
  private long state;

  public Dice(long seed) {
    long z = (seed + 1) * 0x9E3779B97F4A7C15L;
    z = (z ^ (z >>> 30)) * 0xBF58476D1CE4E5B9L;
    z = (z ^ (z >>> 27)) * 0x94D049BB133111EBL;
    state = (z ^ (z >>> 31)) | 1;
  }

  private long next() {
    state ^= state >>> 12;
    state ^= state << 25;
    state ^= state >>> 27;
    return state * 0x2545F4914F6CDD1DL;
  }

  /** A whole number from 0 to below {@code bound}; {@code bound} is at least 1. */
  public int below(int bound) {
    return (int) (((next() >>> 33) * bound) >>> 31);
  }

  /** A number from 0 to below 1. */
  public double unit() {
    return (next() >>> 11) * 0x1.0p-53;
  }
}
