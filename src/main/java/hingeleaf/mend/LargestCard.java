package hingeleaf.mend;

import hingeleaf.card.Rest;
import hingeleaf.design.Change;
import hingeleaf.design.DesignDocument;
import hingeleaf.design.Node;
import hingeleaf.design.Tree;
import hingeleaf.measure.MakerUnits;
import hingeleaf.measure.Unit;
import hingeleaf.pack.Pack;
import hingeleaf.post.EnvelopeFit;
import hingeleaf.post.Packing;
import hingeleaf.post.Parcel;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The largest card of a structure that an envelope takes, folded flat the best way.
 *
 * <p>The footprint grows by as much as the card, so a few steps of "as much larger as there is room
 * left" reach the largest on the bench's marks; whether it fits is then asked of the folded card
 * itself.
 */
public final class LargestCard {
  private static final int STEPS = 12;
  private static final double SMALLEST_MM = 40;

  private final Pack start;
  private final double across;
  private final double up;
  private final MakerUnits units;

  private LargestCard(Pack start, double across, double up) {
    this.start = start;
    this.across = across;
    this.up = up;
    this.units = MakerUnits.of(start.inputs().design().unit());
  }

  /**
   * The design with its width, height and openings made to fit.
   *
   * @param start a card whose base has a width and a height
   * @param across inner room of the envelope along the card's width, mm
   * @param up along its height, mm
   * @return empty where no card of at least 40 mm fits
   */
  public static Optional<DesignDocument> of(Pack start, double across, double up) {
    return new LargestCard(start, across, up).find();
  }

  private Optional<DesignDocument> find() {
    double width = across * 0.7;
    double height = up * 0.7;
    Optional<DesignDocument> best = Optional.empty();
    double bestArea = 0;
    for (int i = 0; i < STEPS; i++) {
      width = down(width);
      height = down(height);
      if (width < SMALLEST_MM || height < SMALLEST_MM) {
        return best;
      }
      Optional<DesignDocument> sized = sized(width, height);
      if (sized.isEmpty()) {
        return best;
      }
      Pack pack = Trial.pack(start, sized.get());
      if (pack.blocked()) {
        return best;
      }
      Rest rest = pack.flats().states().get(0);
      double room = room(pack, rest);
      double moreAcross = across - rest.width() - room;
      double moreUp = up - rest.height() - room;
      if (moreAcross >= 0 && moreUp >= 0 && width * height > bestArea) {
        best = sized;
        bestArea = width * height;
      }
      if (down(width + moreAcross) == width && down(height + moreUp) == height) {
        return best;
      }
      width += moreAcross;
      height += moreUp;
    }
    return best;
  }

  /** What the envelope must be larger than the folded card, mm. */
  private static double room(Pack pack, Rest rest) {
    Parcel parcel =
        Parcel.flat(
            rest.width(),
            rest.height(),
            rest.limp(),
            Math.max(rest.limp(), rest.rigid()),
            0,
            pack.card().mass());
    return EnvelopeFit.room(parcel, Packing.usual());
  }

  private double down(double mm) {
    double step = units.unit() == Unit.IN ? 25.4 / 8 : 1;
    return Math.floor(mm / step + 1e-9) * step;
  }

  private Optional<DesignDocument> sized(double width, double height) {
    DesignDocument design = start.inputs().design();
    String base = "base." + design.base().variant();
    List<Change> changes = new ArrayList<>();
    changes.add(new Change.Put(base + ".width", units.number(width)));
    changes.add(new Change.Put(base + ".height", units.number(height)));
    openings(design.tree(), base, Math.min(width, height), changes);
    return Trial.of(design.tree(), changes) instanceof Trial.Read r
        ? Optional.of(r.design())
        : Optional.empty();
  }

  /** Round openings keep their share of the card, but leave the glue tabs covered in front. */
  private void openings(Tree tree, String base, double side, List<Change> changes) {
    if (!(tree.find(base + ".frames").orElse(null) instanceof Node.Items frames)) {
      return;
    }
    int n = frames.items().size();
    double tab = start.inputs().design().base().form().mm("tab");
    double border = 2 * (tab + 2);
    for (int i = 0; i < n; i++) {
      String path = base + ".frames[" + i + "].aperture.circle";
      if (tree.find(path).isPresent()) {
        double share = side - border - (n - 1 - i) * Math.max(8, side / 11);
        changes.add(new Change.Put(path, units.number(Math.max(5, down(share)))));
      }
    }
  }
}
