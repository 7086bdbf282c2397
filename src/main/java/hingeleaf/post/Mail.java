package hingeleaf.post;

import hingeleaf.stock.Envelope;
import java.util.Arrays;

/**
 * A piece of mail as a counter measures it. The address is taken to run along the longer side.
 *
 * @param length the longer side, mm
 * @param height the shorter side, mm
 * @param thickness at the thickest spot, mm
 * @param uneven how much thicker the thickest spot is than the thinnest, mm
 * @param bends whether it bends
 * @param grams envelope and card together
 */
public record Mail(
    double length, double height, double thickness, double uneven, boolean bends, double grams) {
  public Mail {
    if (!(height > 0) || !(length >= height) || !(thickness >= 0) || !(grams >= 0)) {
      throw new IllegalArgumentException(
          "mail: expected 0 < height <= length, found "
              + length
              + " x "
              + height
              + " x "
              + thickness
              + " mm, "
              + grams
              + " g");
    }
  }

  /** The parcel in an envelope that it fits. */
  public static Mail of(Parcel parcel, Envelope envelope, Packing packing) {
    return new Mail(
        envelope.width(),
        envelope.height(),
        packing.thickness(parcel) + packing.envelopeWalls(),
        parcel.uneven(),
        parcel.bends(),
        parcel.grams() + EnvelopeMass.of(envelope, packing));
  }

  /** A box that goes as it is, with no envelope round it; its shortest side is the thickness. */
  public static Mail bare(Parcel parcel) {
    double[] sides = {parcel.width(), parcel.height(), parcel.rigid()};
    Arrays.sort(sides);
    return new Mail(sides[2], sides[1], sides[0], parcel.uneven(), parcel.bends(), parcel.grams());
  }

  /** A figure of this piece: mm, g, or a plain number. */
  public double figure(Figure figure) {
    return switch (figure) {
      case LENGTH -> length;
      case HEIGHT -> height;
      case THICKNESS -> thickness;
      case WEIGHT -> grams;
      case RATIO -> length / height;
      case SUM -> length + height + thickness;
      case LENGTH_AND_GIRTH -> lengthAndGirth();
      case UNEVEN -> uneven;
      case STIFF -> bends ? 0 : 1;
    };
  }

  /** Girth is measured round the two shorter of the three sides. */
  private double lengthAndGirth() {
    double longest = Math.max(length, thickness);
    return longest + 2 * (length + height + thickness - longest);
  }
}
