package hingeleaf.post;

/**
 * How a maker packs; settings, because hands and papers differ.
 *
 * @param unpressed how much thicker a folded card stands than its stacked layers; common practice
 *     1.3 to 1.5. Not applied to what does not bend
 * @param envelopeWalls thickness of the two walls of the envelope together, mm
 * @param envelopeGrammage of the paper of an envelope that nobody weighed, g/m2
 * @param sheetPerFace area of the sheet that an envelope is folded from, in faces
 * @param fit how much room the card gets
 * @param mostSpare most room beyond that fit before the card slides about, mm
 */
public record Packing(
    double unpressed,
    double envelopeWalls,
    double envelopeGrammage,
    double sheetPerFace,
    Fit fit,
    double mostSpare) {
  public Packing {
    if (!(unpressed >= 1) || !(envelopeWalls >= 0)) {
      throw new IllegalArgumentException(
          "packing: expected unpressed of 1 or more and walls of 0 mm or more, found "
              + unpressed
              + " and "
              + envelopeWalls);
    }
    if (!(envelopeGrammage > 0) || !(sheetPerFace >= 2) || !(mostSpare >= 0)) {
      throw new IllegalArgumentException(
          "packing: expected paper of more than 0 g/m2, a sheet of 2 faces or more and spare room"
              + " of 0 mm or more");
    }
  }

  /** How much room a card gets in its envelope, beside its thickness. Common practice. */
  public enum Fit {
    SNUG(3),
    EASY(6);

    private final double clearance;

    Fit(double clearance) {
      this.clearance = clearance;
    }

    /** mm, in width and in height. */
    public double clearance() {
      return clearance;
    }
  }

  /**
   * What most makers do. Unpressed 1.4: middle of common practice. Walls 2 x 0.125 mm: envelope
   * papers of 75 to 105 g/m2 are published as 0.107 to 0.145 mm. Paper 100 g/m2: greeting envelopes
   * are 80 to 120. Sheet 2.45 faces: from memory 2.3 to 2.6 with flap and seams, not verified.
   */
  public static Packing usual() {
    return new Packing(1.4, 0.25, 100, 2.45, Fit.SNUG, 30);
  }

  public Packing with(Fit wanted) {
    return new Packing(unpressed, envelopeWalls, envelopeGrammage, sheetPerFace, wanted, mostSpare);
  }

  public Packing withUnpressed(double factor) {
    return new Packing(factor, envelopeWalls, envelopeGrammage, sheetPerFace, fit, mostSpare);
  }

  /** Thickness of the parcel as it lies in its envelope, walls not counted, mm. */
  public double thickness(Parcel parcel) {
    return parcel.bends() ? parcel.rigid() * unpressed : parcel.rigid();
  }

  /**
   * The pile that a card may have to stay within a thickness of the whole piece of mail.
   *
   * @param mailThickness mm
   * @return mm; 0 where the walls alone are thicker
   */
  public double pileFor(double mailThickness, boolean bends) {
    double inside = Math.max(0, mailThickness - envelopeWalls);
    return bends ? inside / unpressed : inside;
  }
}
