package hingeleaf.post;

import hingeleaf.stock.Envelope;

/** What goes round a parcel. */
public sealed interface Wrap {
  /** Mass of the empty wrap, g. */
  double grams(Packing packing);

  /** The parcel in this wrap, as the counter measures it. */
  Mail mail(Parcel parcel, Packing packing);

  /**
   * An envelope that can be had.
   *
   * @param spareWidth room beyond the wanted fit, mm; 0 or more
   * @param spareHeight room beyond the wanted fit, mm; 0 or more
   */
  record Bought(Envelope envelope, double spareWidth, double spareHeight) implements Wrap {
    @Override
    public double grams(Packing packing) {
      return EnvelopeMass.of(envelope, packing);
    }

    @Override
    public Mail mail(Parcel parcel, Packing packing) {
      return Mail.of(parcel, envelope, packing);
    }
  }

  /** One made by hand, because none fits or none is at hand. */
  record Made(MadeEnvelope envelope) implements Wrap {
    @Override
    public double grams(Packing packing) {
      return envelope.grams(packing.envelopeGrammage());
    }

    @Override
    public Mail mail(Parcel parcel, Packing packing) {
      Envelope as =
          new Envelope("made by hand", envelope.width(), envelope.height(), grams(packing), 0);
      return Mail.of(parcel, as, packing);
    }
  }

  /** Nothing: the box goes as it is. */
  record Bare() implements Wrap {
    @Override
    public double grams(Packing packing) {
      return 0;
    }

    @Override
    public Mail mail(Parcel parcel, Packing packing) {
      return Mail.bare(parcel);
    }
  }
}
