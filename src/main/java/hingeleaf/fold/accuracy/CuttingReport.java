package hingeleaf.fold.accuracy;

import java.util.List;

/**
 * What came of a {@link CuttingStudy}.
 *
 * @param accuracy largest error of a setting, mm
 * @param trials how many
 * @param seed from which they came
 * @param standing share of cards that lie flat to 1 mm when every tab was glued in register with
 *     its stage standing; paper gives way by one thickness
 * @param flat share of cards that lie flat to 1 mm when each second tab was closed with its stage
 *     flat, and lands so that enough of it is glued
 * @param lands share of cards whose second tabs land within 1 mm of their edges then
 * @param shift by how much a second tab lands off its edge then in 19 of 20 cards, mm
 * @param parts the stages, from the back
 * @param watch the fold with the most effect, piece/score; empty where there is no stage
 */
public record CuttingReport(
    double accuracy,
    int trials,
    long seed,
    Share standing,
    Share flat,
    Share lands,
    double shift,
    List<Part> parts,
    String watch) {
  public CuttingReport {
    parts = List.copyOf(parts);
  }

  /**
   * A share of the trials.
   *
   * @param share from 0 to 1
   * @param least lower end of its 95 % interval
   * @param most upper end
   */
  public record Share(double share, double least, double most) {}

  /**
   * One stage.
   *
   * @param piece id
   * @param misfit forced into the paper by the sizes as designed, mm
   * @param jam how high it jams as designed, rigid, mm
   * @param worstMisfit if every setting errs by its most in the worst way, mm
   * @param worstJam how high it jams then if rigid, mm
   * @param tilt of the upright panel for one mm between its two sides, rad
   * @param thickness misfit that the card's thickness alone forces, mm
   * @param effects of each score on the misfit, and of the cuts on which the stage stands
   */
  public record Part(
      String piece,
      double misfit,
      double jam,
      double worstMisfit,
      double worstJam,
      double tilt,
      double thickness,
      List<Effect> effects) {
    public Part {
      effects = List.copyOf(effects);
    }
  }

  /**
   * The effect of a score or cut on the misfit of its stage, pieces that share its setting
   * included.
   *
   * @param fold the score's name in the piece; of a cut edge on the layer behind "edge of" and the
   *     name of that piece
   * @param perMm mm of misfit for each mm that it is off
   */
  public record Effect(String fold, double perMm) {}
}
