package hingeleaf.post;

import hingeleaf.stock.Envelope;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * One way to post a card.
 *
 * @param wrap what goes round it
 * @param envelopeGrams mass of that, g
 * @param decision class of post, why not the cheaper one
 */
public record Posting(Wrap wrap, double envelopeGrams, Decision decision) {
  /**
   * Every way with the envelopes given, and with one made by hand, best first: cheapest class, then
   * lowest step of weight, then bought before made, then the smallest face. Envelopes in which the
   * card would slide about are left out. What does not bend may also go bare. Never empty.
   *
   * @param step of the maker's marks, for the envelope made by hand, mm
   */
  public static List<Posting> options(
      Parcel parcel, List<Envelope> envelopes, Scheme scheme, Packing packing, double step) {
    List<Wrap> wraps = new ArrayList<>();
    EnvelopeFit.fitting(parcel, envelopes, packing).stream()
        .filter(b -> EnvelopeFit.close(b, packing))
        .forEach(wraps::add);
    wraps.add(new Wrap.Made(MadeEnvelope.around(parcel, packing, step)));
    if (!parcel.bends()) {
      wraps.add(new Wrap.Bare());
    }
    return wraps.stream()
        .map(w -> of(parcel, w, scheme, packing))
        .sorted(
            Comparator.comparingInt(Posting::rank)
                .thenComparingDouble(p -> p.decision().step())
                .thenComparingInt(p -> p.wrap() instanceof Wrap.Made ? 1 : 0)
                .thenComparingDouble(p -> p.mail().length() * p.mail().height()))
        .toList();
  }

  /** The parcel in that wrap. */
  public static Posting of(Parcel parcel, Wrap wrap, Scheme scheme, Packing packing) {
    return new Posting(wrap, wrap.grams(packing), Decision.of(scheme, wrap.mail(parcel, packing)));
  }

  /** What the counter measures. */
  public Mail mail() {
    return decision.mail();
  }

  private int rank() {
    return decision.taken().map(PostClass::rank).orElse(Integer.MAX_VALUE);
  }
}
