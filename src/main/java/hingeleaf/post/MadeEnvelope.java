package hingeleaf.post;

/**
 * An envelope made by hand for one size of card: front, back and flap in a row, a seam on each side
 * of the back that is glued to the front. The proportions are our own, after common practice.
 *
 * @param width the longer side of the finished envelope, mm
 * @param height the shorter side, mm
 * @param flap height of the closing flap, mm
 * @param seam width of each side seam, mm
 */
public record MadeEnvelope(double width, double height, double flap, double seam) {
  private static final double FLAP_PER_HEIGHT = 0.4;
  private static final double SEAM_MM = 15;

  public MadeEnvelope {
    if (!(height > 0) || !(width >= height) || !(flap > 0) || !(seam > 0)) {
      throw new IllegalArgumentException(
          "envelope: expected 0 < height <= width, found " + width + " x " + height + " mm");
    }
  }

  /**
   * The least envelope of whole marks in which the parcel fits.
   *
   * @param step of the marks that the maker measures with, mm
   */
  public static MadeEnvelope around(Parcel parcel, Packing packing, double step) {
    double room = EnvelopeFit.room(parcel, packing);
    double width = up(Math.max(parcel.width(), parcel.height()) + room, step);
    double height = up(Math.min(parcel.width(), parcel.height()) + room, step);
    return new MadeEnvelope(width, height, up(FLAP_PER_HEIGHT * height, step), up(SEAM_MM, step));
  }

  /** Width of the sheet to start from, mm: the face and a seam on either side. */
  public double sheetWidth() {
    return width + 2 * seam;
  }

  /** Height of the sheet to start from, mm: front, back and flap. */
  public double sheetHeight() {
    return 2 * height + flap;
  }

  /** Area of the paper when the corners beside front and flap are cut away, mm2. */
  public double area() {
    return width * sheetHeight() + 2 * seam * height;
  }

  /** Its mass in a paper of so many g/m2, in g. */
  public double grams(double grammage) {
    return area() * grammage / 1e6;
  }

  private static double up(double length, double step) {
    return Math.ceil(length / step - 1e-9) * step;
  }
}
