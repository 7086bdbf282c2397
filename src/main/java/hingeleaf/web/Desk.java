package hingeleaf.web;

import hingeleaf.design.BenchDocument;
import hingeleaf.design.DesignDocument;
import hingeleaf.measure.MakerUnits;
import hingeleaf.measure.Unit;
import hingeleaf.pack.BenchReader;
import hingeleaf.pack.Pack;
import hingeleaf.pack.Wants;
import hingeleaf.paper.Fonts;
import hingeleaf.paper.HouseFonts;
import hingeleaf.paper.Letters;
import hingeleaf.stock.Bench;
import hingeleaf.stock.BuiltInBench;
import hingeleaf.store.CardFolder;
import hingeleaf.store.History;
import hingeleaf.store.StoreException;
import hingeleaf.structure.Structures;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.Function;

/** What lies open: the folder, the last packs that were worked out, fonts and bench. */
final class Desk {
  private static final int PACKS_KEPT = 12;

  private final CardFolder folder;
  private final Fonts fonts = HouseFonts.read();
  private final Letters letters = new Letters(fonts);
  private final Map<String, History> histories = new LinkedHashMap<>();
  private final Map<Asked, Ask.Held> packs =
      Collections.synchronizedMap(
          new LinkedHashMap<>(16, 0.75f, true) {
            private static final long serialVersionUID = 1L;

            @Override
            protected boolean removeEldestEntry(Map.Entry<Asked, Ask.Held> eldest) {
              return size() > PACKS_KEPT;
            }
          });

  /** What a pack depends on: all of it, so that a change on disk is seen. */
  private record Asked(
      String name, String text, Unit view, int copies, List<Integer> drawings, int bench) {}

  Desk(CardFolder folder) {
    this.folder = folder;
  }

  CardFolder folder() {
    return folder;
  }

  Fonts fonts() {
    return fonts;
  }

  /** The one history of a card, so that changes to it come one after the other. */
  synchronized History history(String name) {
    return histories.computeIfAbsent(name, n -> History.of(folder, n));
  }

  Opened open(String name, Unit view) {
    return opened(name, history(name).now(), view);
  }

  /** The pack of a card for so many copies. */
  Pack copies(Opened card, int copies) {
    card.whole();
    return pack(card.design(), card.view(), copies, this::drawing);
  }

  Opened opened(String name, History.Version version, Unit view) {
    DesignDocument.Outcome outcome = DesignDocument.read(name, version.bytes(), Structures.FORMS);
    if (outcome instanceof DesignDocument.Outcome.Wrong w) {
      return new Opened(name, version, view, null, w.problems());
    }
    DesignDocument design = ((DesignDocument.Outcome.Right) outcome).document();
    return new Opened(name, version, view, pack(design, view, this::drawing), List.of());
  }

  /** The pack of a design, shown in a unit. */
  Pack pack(DesignDocument design, Unit view, Function<String, Optional<byte[]>> drawing) {
    return pack(design, view, 1, drawing);
  }

  private Pack pack(
      DesignDocument design, Unit view, int copies, Function<String, Optional<byte[]>> drawing) {
    Map<String, byte[]> drawings = new LinkedHashMap<>();
    for (String file : design.drawings()) {
      drawing.apply(file).ifPresent(b -> drawings.put(file, b));
    }
    Optional<byte[]> own = folder.bench();
    Asked asked =
        new Asked(
            design.tree().source().name(),
            design.tree().source().text(),
            view,
            copies,
            hashes(drawings),
            own.map(Arrays::hashCode).orElse(0));
    Ask.Held held =
        packs.compute(
            asked,
            (k, known) ->
                known == null || known.halted()
                    ? held(design, drawings, own, view, copies)
                    : known);
    Ask.uses(held);
    return held.pack;
  }

  private Ask.Held held(
      DesignDocument design,
      Map<String, byte[]> drawings,
      Optional<byte[]> own,
      Unit view,
      int copies) {
    Unit written = view.metric() == design.unit().metric() ? design.unit() : view;
    Wants wants = new Wants(MakerUnits.of(written), written == Unit.IN, copies, false);
    AtomicBoolean halt = new AtomicBoolean();
    Bench bench = bench(own, design.unit());
    Pack.Inputs inputs = new Pack.Inputs(design, drawings, bench, letters, wants);
    return new Ask.Held(Pack.of(inputs, halt::get), halt);
  }

  private static List<Integer> hashes(Map<String, byte[]> drawings) {
    List<Integer> all = new ArrayList<>();
    drawings.forEach(
        (name, bytes) -> {
          all.add(name.hashCode());
          all.add(Arrays.hashCode(bytes));
        });
    return all;
  }

  private static Bench bench(Optional<byte[]> own, Unit unit) {
    if (own.isPresent()
        && BenchDocument.read("bench.yaml", own.get()) instanceof BenchDocument.Outcome.Right r) {
      return BenchReader.bench(r.document());
    }
    return unit == Unit.IN ? BuiltInBench.inches() : BuiltInBench.metric();
  }

  /** A drawing in the folder; names that lead elsewhere are as good as missing. */
  private Optional<byte[]> drawing(String name) {
    try {
      return folder.readDrawing(name);
    } catch (StoreException e) {
      return Optional.empty();
    }
  }

  /** The unit that the maker chose; empty before they were asked. */
  Optional<Unit> unit() {
    return Unit.named(folder.setting("unit"));
  }
}
