package hingeleaf.post;

import hingeleaf.stock.Envelope;

/** What an empty envelope weighs. */
public final class EnvelopeMass {
  private static final double MM2_PER_M2 = 1e6;

  /**
   * The weighed mass where the maker told it, else face x sheet per face x grammage (ISO 536).
   *
   * @return g
   */
  public static double of(Envelope envelope, Packing packing) {
    if (envelope.grams() > 0) {
      return envelope.grams();
    }
    double face = envelope.width() * envelope.height() / MM2_PER_M2;
    return face * packing.sheetPerFace() * packing.envelopeGrammage();
  }

  private EnvelopeMass() {}
}
