package hingeleaf.mend;

import hingeleaf.card.Piece;
import hingeleaf.design.Values;
import hingeleaf.measure.Length;
import hingeleaf.pack.Pack;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Gives the cut parts beside the layers the sizes that they have: leaves, stays, windows, mats,
 * cut-outs and the message panel.
 */
final class Parts {
  /** A tongue may sit so much otherwise in a slit that is cut: common practice, no source, mm. */
  private static final double MOST_BESIDE_SLIT_MM = 1;

  private final Pack start;
  private final Measures measures;
  private final Set<String> trimmed;
  private final Map<String, String> recut;
  private final Written written;

  /**
   * @param trimmed names of the parts that are cut down to what was designed where they are larger
   * @param recut gets those that nothing fits, each with the reason
   */
  Parts(
      Pack start,
      Measures measures,
      Set<String> trimmed,
      Map<String, String> recut,
      Written written) {
    this.start = start;
    this.measures = measures;
    this.trimmed = trimmed;
    this.recut = recut;
    this.written = written;
  }

  /** A cut piece: its sizes as they are go into the design, unless it has to be cut anew. */
  void keep(Piece p) {
    Sizes sizes = Sizes.of(start, p);
    if (sizes.all().isEmpty() || bad(sizes)) {
      return;
    }
    if (sizes.origin().startsWith("cut-outs[")) {
      double across = is(sizes, "width") / sizes.mm("width", 1);
      double up = is(sizes, "height") / sizes.mm("height", 1);
      written.scale(sizes.origin() + ".outline", across, up);
    } else if (sizes.hung()) {
      hung(sizes);
    } else {
      sizes.all().forEach(o -> written.keep(o.path(), is(sizes, o), o.mm()));
    }
  }

  /** A door that is cut into a panel whose piece stays. */
  void keepCutIn(Values door) {
    hung(Sizes.of(door));
  }

  private void hung(Sizes sizes) {
    for (Sizes.One o : sizes.all()) {
      if (Written.differs(is(sizes, o), o.mm())) {
        written.put(o.path(), is(sizes, o));
      }
    }
    if (sizes.leaf()) {
      sizes.one("width").ifPresent(w -> fold(sizes, w.mm() - is(sizes, w)));
    }
  }

  /** The fold of a leaf stays where it is designed, and its free edge comes otherwise. */
  private void fold(Sizes sizes, double narrower) {
    Values door = door(sizes.origin());
    double lower = sizes.one("height").map(h -> h.mm() - is(sizes, h)).orElse(0.0);
    double x =
        switch (door.text("hinge")) {
          case "left" -> -narrower / 2;
          case "right" -> narrower / 2;
          default -> 0;
        };
    double y =
        switch (door.text("hinge")) {
          case "top" -> lower / 2;
          case "bottom" -> -lower / 2;
          default -> 0;
        };
    if (Written.differs(x, 0) || Written.differs(y, 0)) {
      List<Length> at = door.lengths("at");
      written.text(door.path("at"), written.pair(at.get(0).mm() + x, at.get(1).mm() + y));
    }
  }

  private Values door(String origin) {
    return start.inputs().design().mechanisms().stream()
        .map(Values.Choice::form)
        .filter(v -> v.path().equals(origin))
        .findFirst()
        .orElseThrow();
  }

  private double is(Sizes sizes, String word) {
    return is(sizes, sizes.one(word).orElseThrow());
  }

  /** What a size is: as measured, less what is trimmed. */
  private double is(Sizes sizes, Sizes.One o) {
    double mm = measures.size(sizes.name(), o.word(), o.mm());
    boolean back =
        trimmed.contains(sizes.name()) || mm > o.range().most() || missesSlits(sizes, o, mm);
    return back ? Math.min(mm, o.mm()) : mm;
  }

  /** Whether no trimming helps, with the reason. */
  private boolean bad(Sizes sizes) {
    for (Sizes.One o : sizes.all()) {
      double mm = is(sizes, o);
      if (!o.range().holds(mm)) {
        String least = Said.mm(start, o.range().least());
        return bad(sizes, o, mm, "it does not hold; it needs " + least + " or more");
      }
      if (missesSlits(sizes, o, mm)) {
        return bad(sizes, o, mm, "it misses the slits that are cut already");
      }
      if (sizes.leaf() && o.mm() - mm > Resized.MOST_SHORT_MM + 1e-6) {
        return bad(sizes, o, mm, "it no longer covers what it was made for");
      }
    }
    return false;
  }

  private boolean bad(Sizes sizes, Sizes.One o, double mm, String why) {
    recut.put(sizes.name(), "with a " + o.word() + " of " + Said.mm(start, mm) + " " + why);
    return true;
  }

  /** The slit for a tongue is at half its length, and stays there once it is cut. */
  private boolean missesSlits(Sizes sizes, Sizes.One o, double mm) {
    boolean tongue = o.word().equals("tongue") || o.word().equals("hook");
    return tongue
        && sizes.hung()
        && Math.abs(mm - o.mm()) / 2 > MOST_BESIDE_SLIT_MM + 1e-6
        && measures.cut().stream().anyMatch(this::slit);
  }

  private boolean slit(String piece) {
    return Stack.frame(start, piece) && !start.card().piece(piece).slits().isEmpty();
  }
}
