package hingeleaf.post;

import hingeleaf.stock.Envelope;
import java.util.Comparator;
import java.util.List;

/**
 * Which envelopes a card fits. A block of thickness T in an envelope needs, in each direction, its
 * own size, T, and some room: 3 mm snug, 6 mm easy (common practice; the geometry of a flat sleeve
 * round a block gives the T). Envelopes are known by their outer size; the millimetre that paper
 * and seams take inside is part of that room.
 */
public final class EnvelopeFit {
  private static final double SAME = 1e-6;

  /** What an envelope must be larger than the card, each way: its thickness and the room, mm. */
  public static double room(Parcel parcel, Packing packing) {
    return packing.thickness(parcel) + packing.fit().clearance();
  }

  /** All that fit, the smallest face first, then by name; either way round. */
  public static List<Wrap.Bought> fitting(
      Parcel parcel, List<Envelope> envelopes, Packing packing) {
    double room = room(parcel, packing);
    double width = Math.max(parcel.width(), parcel.height()) + room;
    double height = Math.min(parcel.width(), parcel.height()) + room;
    return envelopes.stream()
        .filter(e -> e.width() >= width - SAME && e.height() >= height - SAME)
        .map(
            e ->
                new Wrap.Bought(
                    e, Math.max(0, e.width() - width), Math.max(0, e.height() - height)))
        .sorted(
            Comparator.comparingDouble(
                    (Wrap.Bought b) -> b.envelope().width() * b.envelope().height())
                .thenComparing(b -> b.envelope().name()))
        .toList();
  }

  /**
   * The smallest envelope that fits and is not so large that the card slides about; one made by
   * hand where there is none.
   *
   * @param step of the maker's marks, for the made one, mm
   */
  public static Wrap smallest(
      Parcel parcel, List<Envelope> envelopes, Packing packing, double step) {
    return fitting(parcel, envelopes, packing).stream()
        .filter(b -> close(b, packing))
        .findFirst()
        .<Wrap>map(b -> b)
        .orElseGet(() -> new Wrap.Made(MadeEnvelope.around(parcel, packing, step)));
  }

  static boolean close(Wrap.Bought bought, Packing packing) {
    return Math.max(bought.spareWidth(), bought.spareHeight()) <= packing.mostSpare() + SAME;
  }

  private EnvelopeFit() {}
}
