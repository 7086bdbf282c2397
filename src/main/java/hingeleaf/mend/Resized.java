package hingeleaf.mend;

import hingeleaf.card.Piece;
import hingeleaf.design.Change;
import hingeleaf.design.Values;
import hingeleaf.geom.Box;
import hingeleaf.pack.Pack;
import hingeleaf.plan.CutList;
import hingeleaf.stock.Die;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * The sizes of all pieces when the cut ones are as measured, and the changes of the design's text
 * that say so.
 *
 * @param layers of the stack, from the back; none for another base
 * @param trimmed names of the cut pieces that lose a strip
 * @param recut the cut layers that nothing fits, each with the reason
 */
record Resized(
    List<Layer> layers, Set<String> trimmed, Map<String, String> recut, List<Change> changes) {
  /** A piece that came out shorter by more is cut anew: common practice, no source, mm. */
  static final double MOST_SHORT_MM = 5;

  /** A tab narrower than this holds badly: common practice, no source. */
  static final double LEAST_TAB_MM = 6;

  /** As the least that a design may ask for. */
  private static final double LEAST_SIDE_MM = 1;

  private static final double EPS = 1e-6;

  /**
   * @param given cut pieces that are given up in any case, each with the reason
   * @param trimBack cut parts that lose what they are larger than designed
   */
  static Resized of(
      Pack start, Measures measures, Map<String, String> given, Set<String> trimBack) {
    return new Builder(start, measures, given, trimBack).build();
  }

  private static final class Builder {
    private final Pack start;
    private final Measures measures;
    private final Set<String> cut;
    private final boolean upright;
    private final Set<String> trimmed = new TreeSet<>();
    private final Map<String, String> recut;
    private final Set<String> trimBack;
    private final Written written;

    Builder(Pack start, Measures measures, Map<String, String> given, Set<String> trimBack) {
      this.start = start;
      this.written = new Written(start);
      this.trimBack = trimBack;
      this.measures = measures;
      this.recut = new TreeMap<>(given);
      this.cut = new TreeSet<>(measures.cut());
      cut.removeAll(given.keySet());
      this.upright = Stack.upright(start);
    }

    Resized build() {
      List<Layer> fitted = Stack.stacked(start) ? stack() : List.of();
      for (Piece p : start.card().pieces()) {
        if (cut.contains(p.id())) {
          part(p);
        }
      }
      cutIn();
      openings();
      return new Resized(fitted, trimmed, recut, written.changes());
    }

    private List<Layer> stack() {
      List<Layer> designed = Stack.layers(start);
      List<Layer> now = new ArrayList<>();
      for (Layer l : designed) {
        Layer is = cut.contains(l.name()) ? measured(l) : l;
        if (is.tabs().stream().anyMatch(t -> t < LEAST_TAB_MM - EPS)) {
          given(l.name(), "a glue tab under " + Said.mm(start, LEAST_TAB_MM) + " holds badly");
          is = l;
        }
        if (is.sides().stream().anyMatch(d -> d < LEAST_SIDE_MM - EPS)) {
          given(l.name(), "a side under " + Said.mm(start, LEAST_SIDE_MM) + " cannot be folded");
          is = l;
        }
        now.add(is);
      }
      now = level(designed, now);
      List<Layer> fitted = new ArrayList<>();
      Set<String> kept = Set.copyOf(cut);
      for (StackFit.Fitted f : StackFit.of(designed, now, kept, Stack.tabsIn(start))) {
        fitted.add(f.layer());
        if (f.recut()) {
          given(f.layer().name(), misfit(f.layer().name(), now));
        }
        if (f.trim()) {
          trimmed.add(f.layer().name());
        }
      }
      trimmed.removeAll(recut.keySet());
      write(designed, fitted);
      return fitted;
    }

    private void given(String name, String why) {
      cut.remove(name);
      recut.put(name, why);
    }

    /** Why a layer was given up when all were fitted together. */
    private String misfit(String name, List<Layer> now) {
      Layer l = now.stream().filter(x -> x.name().equals(name)).findFirst().orElseThrow();
      double degrees = Math.toDegrees(Math.atan(Math.abs(l.uneven()) / l.across()));
      return Math.abs(l.uneven()) > StackFit.MOST_ASKEW * l.across()
          ? "with sides so unlike it would stand "
              + Math.round(degrees * 10) / 10.0
              + " degrees out of true"
          : "it misses the cut pieces beside it by more than "
              + Said.mm(start, StackFit.MOST_OUT_MM);
    }

    private Layer measured(Layer l) {
      String across = upright ? "width" : "height";
      String along = upright ? "height" : "width";
      Layer is =
          l.acrossIs(measures.size(l.name(), across, l.across()))
              .alongIs(measures.size(l.name(), along, l.along()));
      if (l.back()) {
        return is;
      }
      return is.sidesAre(pair(l.name(), "side.", l.sides()))
          .tabsAre(pair(l.name(), "tab.", l.tabs()));
    }

    private List<Double> pair(String name, String part, List<Double> designed) {
      return List.of(
          measures.size(name, part + (upright ? "left" : "bottom"), designed.get(0)),
          measures.size(name, part + (upright ? "right" : "top"), designed.get(1)));
    }

    /** All layers equally long along their sides: as long as the shortest that stays. */
    private List<Layer> level(List<Layer> designed, List<Layer> now) {
      List<Layer> all = new ArrayList<>(now);
      for (int i = 0; i < all.size(); i++) {
        if (designed.get(i).along() - all.get(i).along() > MOST_SHORT_MM + EPS) {
          given(
              all.get(i).name(),
              "it is more than " + Said.mm(start, MOST_SHORT_MM) + " shorter than the others");
          all.set(i, designed.get(i));
        }
      }
      List<Layer> staying = List.copyOf(all);
      for (int i = 0; i < all.size(); i++) {
        double usual = designed.get(i).along();
        double shortest = usual;
        for (int j = 0; j < all.size(); j++) {
          if (Math.abs(designed.get(j).along() - usual) < EPS) {
            shortest = Math.min(shortest, staying.get(j).along());
          }
        }
        Layer l = all.get(i);
        if (cut.contains(l.name()) && l.along() > shortest + Stack.SAME_MM) {
          trimmed.add(l.name());
        }
        boolean near = cut.contains(l.name()) && l.along() <= shortest + Stack.SAME_MM;
        all.set(i, near ? l : l.alongIs(shortest));
      }
      return all;
    }

    private void write(List<Layer> designed, List<Layer> fitted) {
      boolean across = common(fitted, upright ? "width" : "height", true);
      boolean along = common(fitted, upright ? "height" : "width", false);
      for (int i = 0; i < fitted.size(); i++) {
        Layer was = designed.get(i);
        Layer is = fitted.get(i);
        String path = Stack.path(start, is.name());
        if (!across && Written.differs(is.across(), was.across())) {
          written.put(path + (upright ? ".width" : ".height"), is.across());
        }
        if (!along && Written.differs(is.along(), was.along())) {
          written.put(path + (upright ? ".height" : ".width"), is.along());
        }
        written.pair(path + ".side-depths", was.sides(), is.sides());
        written.pair(path + ".tab-widths", was.tabs(), is.tabs());
        written.pair(path + ".set-in", was.setIn(), is.setIn());
      }
      if (across || along) {
        keepNested(fitted);
      }
    }

    /** Where all layers get one new size, the card's own is changed and no layer's. */
    private boolean common(List<Layer> fitted, String key, boolean across) {
      double first = size(fitted.get(0), across);
      String path = Stack.basePath(start) + "." + key;
      boolean same =
          (!across || Stack.tabsIn(start))
              && fitted.stream().allMatch(l -> !Written.differs(size(l, across), first))
              && fitted.stream()
                  .noneMatch(l -> written.tells(Stack.path(start, l.name()) + "." + key));
      double was = start.inputs().design().base().form().mm(key);
      if (!same || !Written.differs(first, was)) {
        return false;
      }
      written.put(path, first);
      return true;
    }

    private static double size(Layer l, boolean across) {
      return across ? l.across() : l.along();
    }

    /** A cut frame whose opening the design leaves to us keeps the one that it has. */
    private void keepNested(List<Layer> fitted) {
      for (Layer l : fitted) {
        String path = Stack.path(start, l.name()) + ".aperture";
        Piece p = start.card().piece(l.name());
        if (cut.contains(l.name()) && !written.tells(path) && !p.apertures().isEmpty()) {
          Box box = p.apertures().get(0).box();
          written.text(path, "{rect: " + written.pair(box.width(), box.height()) + "}");
        }
      }
    }

    /** A part that is glued on: its own size, and its opening where that was measured. */
    private void part(Piece p) {
      new Parts(start, measures, trimBack, recut, written).keep(p);
      if (Stack.layer(start, p.id()) && p.apertures().size() == 1) {
        Box o = p.apertures().get(0).box();
        double ow = measures.size(p.id(), "aperture.width", o.width());
        double oh = measures.size(p.id(), "aperture.height", o.height());
        written.scale(Stack.path(start, p.id()) + ".aperture", ow / o.width(), oh / o.height());
      }
    }

    /** Doors are cut into their panel: they stay as they are where its piece stays. */
    private void cutIn() {
      for (Values door : Sizes.cutIn(start)) {
        if (cut.contains(Sizes.host(start, door))) {
          new Parts(start, measures, trimBack, recut, written).keepCutIn(door);
        }
      }
    }

    /** Every opening that a die cuts which was measured anew. */
    private void openings() {
      for (CutList.Line line : start.cuts().lines()) {
        if (line.openings().size() != 1 || line.openings().get(0).die().isEmpty()) {
          continue;
        }
        Die die = line.openings().get(0).die().get();
        Measures.Die is = measures.dies().get(die.name());
        if (is != null) {
          CutList.Opening o = line.openings().get(0);
          for (String id : line.pieces()) {
            String path =
                Stack.layer(start, id) ? Stack.path(start, id) : start.card().piece(id).origin();
            written.scale(path + ".aperture", is.width() / o.width(), is.height() / o.height());
          }
        }
      }
    }
  }
}
