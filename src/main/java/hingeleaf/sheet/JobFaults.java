package hingeleaf.sheet;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;

/** What makes a job impossible before any search, told in one sentence each. */
public final class JobFaults {
  /** Most single pieces that one plan takes. */
  public static final long MOST_PIECES = 20_000;

  private static final int MOST_TOLD = 10;
  private final SheetJob job;
  private final List<String> found = new ArrayList<>();

  private JobFaults(SheetJob job) {
    this.job = job;
  }

  /** The faults of a job; empty when a plan can be looked for. */
  public static List<String> of(SheetJob job) {
    JobFaults faults = new JobFaults(job);
    faults.look();
    return faults.found;
  }

  private void look() {
    if (job.stock().isEmpty()) {
      found.add("there is no stock to cut from: add a sheet with w and h");
    }
    if (job.pieces().isEmpty()) {
      found.add("there are no pieces to cut: add one with w and h");
    }
    job.stock().forEach(s -> size("stock " + s.name(), s.w(), s.h()));
    job.pieces().forEach(p -> size(p.name(), p.w(), p.h()));
    job.pieces().stream()
        .filter(p -> p.quantity() < 1)
        .forEach(p -> say(p.name() + ": the quantity must be at least 1"));
    if (!found.isEmpty()) {
      return;
    }
    tooMany();
    job.pieces().forEach(this::tooLarge);
    job.pieces().forEach(this::tooNarrow);
    if (found.isEmpty()) {
      shortStock();
    }
    tooFine();
  }

  private void say(String sentence) {
    if (found.size() < MOST_TOLD) {
      found.add(sentence);
    }
  }

  private void size(String name, long w, long h) {
    if (w <= 0 || h <= 0) {
      say(name + ": width and height must be above zero, found " + by(w, h));
    }
  }

  private String by(long w, long h) {
    return job.unit().fromNanometres(w).toPlainString() + " x " + job.unit().tell(h);
  }

  private void tooMany() {
    long count = 0;
    for (SheetPiece p : job.pieces()) {
      count += Math.min(p.quantity(), Long.MAX_VALUE / 2 / job.pieces().size());
    }
    if (count > MOST_PIECES) {
      say(
          count
              + " pieces are too many for one plan, which takes "
              + MOST_PIECES
              + ": plan a part of them and repeat it");
    }
  }

  private void tooLarge(SheetPiece piece) {
    if (job.stock().stream().anyMatch(s -> piece.liesUpright(s) || piece.liesTurned(s))) {
      return;
    }
    String fault = piece.name() + ", " + by(piece.w(), piece.h()) + ", fits on no sheet as allowed";
    for (SheetStock s : job.stock()) {
      if (piece.w() <= s.w() && piece.h() <= s.h()) {
        say(fault + "; it would fit upright on " + called(s) + " if its grain were left free");
        return;
      }
      if (piece.h() <= s.w() && piece.w() <= s.h()) {
        say(fault + "; it would fit turned on " + called(s) + " if it might be turned");
        return;
      }
    }
    SheetStock largest = job.stock().get(0);
    for (SheetStock s : job.stock()) {
      largest = (double) s.w() * s.h() > (double) largest.w() * largest.h() ? s : largest;
    }
    say(fault + "; the largest sheet is " + called(largest));
  }

  private String called(SheetStock s) {
    return (s.name().isEmpty() ? "the sheet" : s.name()) + " of " + by(s.w(), s.h());
  }

  private void tooNarrow(SheetPiece piece) {
    long least = job.trimmer().leastStrip();
    if (Math.min(piece.w(), piece.h()) < least) {
      say(piece.name() + " is narrower than the least strip of " + job.unit().tell(least));
    }
  }

  private void shortStock() {
    double have = 0;
    for (SheetStock s : job.stock()) {
      have += s.quantity().isEmpty() ? Double.MAX_VALUE / 4 : area(s.w(), s.h()) * s.most();
    }
    double need = job.pieces().stream().mapToDouble(p -> area(p.w(), p.h()) * p.quantity()).sum();
    if (have < need * (1 - 1e-12)) {
      say(
          "the stock does not suffice: the pieces cover "
              + square(need)
              + ", the sheets only "
              + square(have)
              + "; "
              + square(need - have)
              + " is short");
    }
  }

  private double area(long w, long h) {
    return (double) w * h;
  }

  private String square(double nm2) {
    double unit = job.unit().nanometres();
    return new BigDecimal(nm2 / unit / unit).round(new MathContext(5)).toPlainString()
        + " square "
        + job.unit().label();
  }

  private void tooFine() {
    long grid = 0;
    long largest = 0;
    for (SheetStock s : job.stock()) {
      grid = gcd(gcd(grid, s.w()), s.h());
      largest = Math.max(largest, Math.max(s.w(), s.h()));
    }
    for (SheetPiece p : job.pieces()) {
      grid = gcd(gcd(grid, p.w()), p.h());
    }
    if (largest / Math.max(1, grid) >= 1L << 30) {
      say("the sizes are too fine for sheets so large: write them with fewer decimals");
    }
  }

  private static long gcd(long a, long b) {
    return b == 0 ? Math.abs(a) : gcd(b, a % b);
  }
}
