package hingeleaf.pack;

import hingeleaf.card.Flats;
import hingeleaf.card.MadeCard;
import hingeleaf.card.Mechanism;
import hingeleaf.card.Rest;
import hingeleaf.geom.Vec3;
import hingeleaf.post.Packing;
import hingeleaf.post.Parcel;
import hingeleaf.post.PostClass;
import hingeleaf.post.Posting;
import hingeleaf.post.Scheme;
import hingeleaf.post.Schemes;
import hingeleaf.stock.Bench;
import hingeleaf.stock.Envelope;
import hingeleaf.stock.Envelopes;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * How a card is posted: by the post of the bench's country, or by all that are known where the
 * bench names none.
 *
 * @param offers one for each post, at least one
 * @param packing how it is packed
 */
public record Postage(List<Offer> offers, Packing packing) {
  /** What the ranking of flat states is called in files. */
  public static final String ORDER =
      "cheapest post class, then thinnest rigid pile, then fewest pushes to open";

  public Postage {
    offers = List.copyOf(offers);
  }

  /**
   * The best that one post has.
   *
   * @param rest index of the flat state in {@link Flats#states}; -1 where the card goes boxed
   * @param options every way to wrap it, best first; at least one
   * @param mass with the best envelope
   */
  public record Offer(int rest, Parcel parcel, List<Posting> options, Mass mass) {
    public Offer {
      options = List.copyOf(options);
    }

    public Posting best() {
      return options.get(0);
    }
  }

  /** What the bench's own post offers; of all posts, the international one. */
  public Offer first() {
    return offers.get(offers.size() == 1 ? 0 : offers.size() - 1);
  }

  static Postage of(MadeCard made, Flats flats, Mass mass, Bench bench, double step) {
    Packing packing = Packing.usual();
    List<Envelope> envelopes =
        bench.envelopes().isEmpty() ? Envelopes.standard() : bench.envelopes();
    List<Offer> offers = new ArrayList<>();
    for (Scheme scheme : schemes(bench.country())) {
      offers.add(offer(made, flats, mass, scheme, envelopes, packing, step));
    }
    return new Postage(offers, packing);
  }

  private static List<Scheme> schemes(String country) {
    return country.isEmpty() ? Schemes.all() : List.of(Schemes.forCountry(country));
  }

  private static Offer offer(
      MadeCard made,
      Flats flats,
      Mass mass,
      Scheme scheme,
      List<Envelope> envelopes,
      Packing packing,
      double step) {
    List<Way> ways = new ArrayList<>();
    for (int i = 0; i < flats.states().size(); i++) {
      Rest rest = flats.states().get(i);
      Parcel parcel = parcel(made, rest, mass);
      ways.add(new Way(i, rest, parcel, Posting.options(parcel, envelopes, scheme, packing, step)));
    }
    if (ways.isEmpty()) {
      Parcel parcel = boxed(made, mass);
      List<Posting> options = Posting.options(parcel, envelopes, scheme, packing, step);
      ways.add(new Way(-1, null, parcel, options));
    }
    Way best =
        ways.stream()
            .min(
                Comparator.comparingInt(Way::rank)
                    .thenComparingDouble(w -> w.options.get(0).decision().step())
                    .thenComparingLong(w -> Math.round(w.parcel.rigid() * 1000))
                    .thenComparingInt(Way::pushes))
            .orElseThrow();
    Mass posted = mass.in(best.options.get(0).envelopeGrams());
    return new Offer(best.index, best.parcel, best.options, posted);
  }

  private record Way(int index, @Nullable Rest rest, Parcel parcel, List<Posting> options) {
    int rank() {
      Optional<PostClass> taken = options.get(0).decision().taken();
      return taken.map(PostClass::rank).orElse(Integer.MAX_VALUE);
    }

    /** Neighbours that lean the same way open together. */
    int pushes() {
      List<Integer> leans = rest == null ? List.of() : rest.leans();
      int pushes = 1;
      for (int i = 1; i < leans.size(); i++) {
        pushes += leans.get(i).equals(leans.get(i - 1)) ? 0 : 1;
      }
      return pushes;
    }
  }

  /** The pile is uneven by at most what lies over its thinnest spot: one layer of the back. */
  private static Parcel parcel(MadeCard made, Rest rest, Mass mass) {
    double rigid = Math.max(rest.rigid(), rest.limp());
    double least =
        made.card().pieces().stream()
            .filter(p -> !p.stock().clear())
            .mapToDouble(p -> p.stock().thickness())
            .min()
            .orElse(0);
    double uneven = Math.max(0, rest.limp() - least);
    return Parcel.flat(rest.width(), rest.height(), rest.limp(), rigid, uneven, mass.made());
  }

  private static Parcel boxed(MadeCard made, Mass mass) {
    double[] least = {Double.MAX_VALUE, Double.MAX_VALUE, Double.MAX_VALUE};
    double[] most = {-Double.MAX_VALUE, -Double.MAX_VALUE, -Double.MAX_VALUE};
    double paper = 0;
    for (Mechanism.Facet f : made.mechanism().facets()) {
      paper = Math.max(paper, f.thickness());
      for (Vec3 p : f.outline()) {
        double[] at = {p.x(), p.y(), p.z()};
        for (int i = 0; i < 3; i++) {
          least[i] = Math.min(least[i], at[i]);
          most[i] = Math.max(most[i], at[i]);
        }
      }
    }
    double thick = 2 * paper;
    return Parcel.boxed(
        most[0] - least[0] + thick,
        most[1] - least[1] + thick,
        most[2] - least[2] + thick,
        mass.made());
  }
}
