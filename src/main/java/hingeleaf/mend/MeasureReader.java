package hingeleaf.mend;

import hingeleaf.card.Piece;
import hingeleaf.design.Values;
import hingeleaf.geom.Box;
import hingeleaf.measure.Length;
import hingeleaf.measure.NearestWord;
import hingeleaf.measure.Reading;
import hingeleaf.measure.Unit;
import hingeleaf.pack.Pack;
import hingeleaf.stock.Die;
import hingeleaf.stock.Stock;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Reads measures as makers type them: {@code far.width=149}, {@code far.side.left=13}, {@code
 * die.round-90.cut=91}, {@code white-300.thickness=0.41}.
 */
public final class MeasureReader {
  /** No tab comes out wider by more than this: common practice, no source. */
  private static final double SLIP_MM = 20;

  private static final double LARGEST_MM = 1000;
  private static final double THICKEST_MM = 10;
  private static final String DIE = "die";

  private final Pack pack;
  private final Unit unit;
  private final boolean upright;
  private final Map<String, Map<String, Double>> pieces = new LinkedHashMap<>();
  private final Map<String, Double> papers = new LinkedHashMap<>();
  private final Map<String, Measures.Die> dies = new LinkedHashMap<>();
  private final Map<String, Double> cuts = new LinkedHashMap<>();

  /** What came of reading. */
  public sealed interface Outcome {
    /** All could be read. */
    record Read(Measures measures) implements Outcome {}

    /** Something could not; a sentence that names it. */
    record Wrong(String sentence) implements Outcome {}
  }

  /** A fault on its way out. */
  private static final class Fault extends Exception {
    private static final long serialVersionUID = 1L;

    Fault(String sentence) {
      super(sentence, null, false, false);
    }
  }

  private MeasureReader(Pack pack) {
    this.pack = pack;
    this.unit = pack.inputs().design().unit();
    this.upright = Stack.upright(pack);
  }

  /**
   * Reads what was measured and what is cut.
   *
   * @param pack of the design, not blocked
   * @param measured each {@code NAME.MEASURE=LENGTH}; bare numbers are in the design's unit
   * @param cut names of pieces that are cut; empty for just those that are measured
   */
  public static Outcome read(Pack pack, List<String> measured, List<String> cut) {
    try {
      return new Outcome.Read(new MeasureReader(pack).read(measured, cut));
    } catch (Fault f) {
      return new Outcome.Wrong(String.valueOf(f.getMessage()));
    }
  }

  private Measures read(List<String> measured, List<String> cutNames) throws Fault {
    Set<String> cut = new LinkedHashSet<>();
    for (String name : cutNames) {
      if (!pieceNames().contains(name)) {
        throw new Fault("--cut: there is no piece `" + name + "`" + nearest(name, pieceNames()));
      }
      cut.add(name);
    }
    for (String one : measured) {
      one(one);
    }
    for (String name : pieces.keySet()) {
      String piece = piece(name);
      if (!cutNames.isEmpty() && !cut.contains(piece)) {
        throw new Fault(
            "--measured: "
                + name
                + " is measured, but --cut does not name "
                + (piece.equals(name) ? "it" : piece + ", into which it is cut")
                + " - what is not cut yet has no measures; add it to --cut, or leave its measures"
                + " out");
      }
      cut.add(piece);
    }
    if (pieces.isEmpty() && papers.isEmpty() && dies.isEmpty()) {
      throw new Fault("nothing was measured - say what, such as --measured far.width=149");
    }
    for (String name : pieces.keySet()) {
      addUp(name);
    }
    return new Measures(pieces, papers, dies, cut);
  }

  private List<String> pieceNames() {
    return pack.card().pieces().stream().map(Piece::id).toList();
  }

  /** All that has measures: pieces, and doors that are cut into one. */
  private List<String> parts() {
    List<String> all = new ArrayList<>(pieceNames());
    Sizes.cutIn(pack).forEach(v -> all.add(v.text("name")));
    return all;
  }

  private Optional<Values> cutIn(String name) {
    return pieceNames().contains(name)
        ? Optional.empty()
        : Sizes.cutIn(pack).stream().filter(v -> v.text("name").equals(name)).findFirst();
  }

  /** The piece that a part is, or is cut into. */
  private String piece(String name) {
    return cutIn(name).map(v -> Sizes.host(pack, v)).orElse(name);
  }

  private void one(String text) throws Fault {
    String at = "--measured " + text + ": ";
    int equals = text.indexOf('=');
    int dot = text.indexOf('.');
    if (equals < 0 || dot < 0 || dot > equals) {
      throw new Fault(at + "expected PIECE.MEASURE=LENGTH, such as far.width=149");
    }
    String name = text.substring(0, dot).strip();
    String word = text.substring(dot + 1, equals).strip();
    String value = text.substring(equals + 1);
    if (parts().contains(name)) {
      piece(at, name, word, value);
    } else if (name.equals(DIE)) {
      die(at, word, value);
    } else if (pack.inputs().bench().paper(name).isPresent()) {
      thickness(at, name, word, value);
    } else {
      List<String> known = new ArrayList<>(parts());
      pack.inputs().bench().papers().stream().map(Stock::name).forEach(known::add);
      known.add(DIE);
      throw new Fault(at + "there is no piece or paper `" + name + "`" + nearest(name, known));
    }
  }

  private static String nearest(String name, List<String> known) {
    return NearestWord.to(name, known)
        .map(w -> " - did you mean `" + w + "`?")
        .orElse(" - there are: " + String.join(", ", known.stream().limit(12).toList()));
  }

  private double length(String at, String value, double most) throws Fault {
    Reading reading = Length.read(value, unit);
    if (reading instanceof Reading.Fault f) {
      throw new Fault(at + f.sentence());
    }
    double mm = ((Reading.Read) reading).length().mm();
    if (!(mm > 0)) {
      throw new Fault(at + "what was measured must be more than 0");
    }
    if (mm > most) {
      throw new Fault(at + "this is more than " + Math.round(most) + " mm - measure again");
    }
    return mm;
  }

  private void thickness(String at, String name, String word, String value) throws Fault {
    if (!word.equals("thickness")) {
      throw new Fault(at + "a paper has no measure `" + word + "` - it has: thickness");
    }
    double mm = length(at, value, THICKEST_MM);
    Double before = papers.put(name, mm);
    same(at, before, mm);
  }

  private void same(String at, @org.jspecify.annotations.Nullable Double before, double mm)
      throws Fault {
    if (before != null && Math.abs(before - mm) > 1e-9) {
      throw new Fault(at + "it was also measured as " + Said.mm(pack, before) + " - measure again");
    }
  }

  private void die(String at, String rest, String value) throws Fault {
    int dot = rest.indexOf('.');
    String name = dot < 0 ? rest : rest.substring(0, dot);
    String word = dot < 0 ? "" : rest.substring(dot + 1);
    Die die = pack.inputs().bench().die(name).orElse(null);
    if (die == null) {
      List<String> known = pack.inputs().bench().dies().stream().map(Die::name).toList();
      throw new Fault(at + "the bench has no die `" + name + "`" + nearest(name, known));
    }
    List<String> words = List.of("cut", "cut.width", "cut.height");
    if (!words.contains(word)) {
      throw new Fault(
          at + "a die has no measure `" + word + "` - it has: " + String.join(", ", words));
    }
    double mm = length(at, value, LARGEST_MM);
    Measures.Die was = dies.getOrDefault(name, new Measures.Die(die.cutWidth(), die.cutHeight()));
    boolean round = die.shape() == Die.Shape.CIRCLE;
    boolean wide = round || !word.equals("cut.height");
    boolean high = round || !word.equals("cut.width");
    if (wide) {
      same(at, cuts.put(name + ".width", mm), mm);
    }
    if (high) {
      same(at, cuts.put(name + ".height", mm), mm);
    }
    dies.put(name, new Measures.Die(wide ? mm : was.width(), high ? mm : was.height()));
  }

  private void piece(String at, String name, String word, String value) throws Fault {
    List<String> words = words(name);
    List<String> written = new ArrayList<>();
    for (String end : List.of("", "." + first(), "." + second())) {
      if (words.contains(word + end) && (end.isEmpty() || paired(word))) {
        written.add(word + end);
      }
    }
    if (word.equals("aperture") && words.contains("aperture.width")) {
      written.addAll(List.of("aperture.width", "aperture.height"));
    }
    if (written.isEmpty()) {
      throw new Fault(at + name + " has no measure `" + word + "`" + nearest(word, words));
    }
    double mm = length(at, value, LARGEST_MM);
    fits(at, name, mm);
    Map<String, Double> sizes = pieces.computeIfAbsent(name, n -> new LinkedHashMap<>());
    for (String w : written) {
      same(at, sizes.put(w, mm), mm);
    }
  }

  /** Nothing longer can be cut from the paper: longest side of the largest sheet. */
  private void fits(String at, String name, double mm) throws Fault {
    Stock stock = pack.card().piece(piece(name)).stock();
    Optional<Stock.Sheet> largest =
        stock.sheets().stream().max(Comparator.comparingDouble(MeasureReader::longest));
    if (largest.isPresent() && mm > longest(largest.get()) + Stack.SAME_MM) {
      throw new Fault(
          at
              + "no sheet of "
              + stock.name()
              + " is so long; the largest, "
              + largest.get().name()
              + ", is "
              + Said.size(pack, largest.get().width(), largest.get().height())
              + " - measure again");
    }
  }

  private static double longest(Stock.Sheet sheet) {
    return Math.max(sheet.width(), sheet.height());
  }

  private static boolean paired(String word) {
    return word.equals("side") || word.equals("tab");
  }

  private String first() {
    return upright ? "left" : "bottom";
  }

  private String second() {
    return upright ? "right" : "top";
  }

  /** What can be measured of a piece. */
  private List<String> words(String name) {
    Optional<Values> door = cutIn(name);
    if (door.isPresent()) {
      return Sizes.of(door.get()).all().stream().map(Sizes.One::word).toList();
    }
    Piece p = pack.card().piece(name);
    Sizes sizes = Sizes.of(pack, p);
    if (sizes.hung()) {
      return sizes.all().stream().map(Sizes.One::word).toList();
    }
    List<String> words = new ArrayList<>(List.of("width", "height"));
    if (Stack.frame(pack, name)) {
      for (String part : List.of("side", "tab")) {
        words.add(part + "." + first());
        words.add(part + "." + second());
      }
      words.addAll(List.of("piece.width", "piece.height"));
    }
    if (Stack.layer(pack, name) && p.apertures().size() == 1) {
      words.addAll(List.of("aperture.width", "aperture.height"));
    }
    return words;
  }

  /** Tabs, sides and panel must make up the piece; what was not measured takes up the rest. */
  private void addUp(String name) throws Fault {
    Map<String, Double> sizes = pieces.getOrDefault(name, Map.of());
    String along = upright ? "height" : "width";
    if (sizes.containsKey(along) && sizes.containsKey("piece." + along)) {
      agree(name, sizes.getOrDefault(along, 0.0), sizes.getOrDefault("piece." + along, 0.0));
    } else if (sizes.containsKey("piece." + along)) {
      sizes.put(along, sizes.getOrDefault("piece." + along, 0.0));
    }
    String across = upright ? "width" : "height";
    if (sizes.containsKey("piece." + across)) {
      rest(name, across, sizes.getOrDefault("piece." + across, 0.0));
    }
    if (Stack.frame(pack, name)) {
      fits("--measured: " + name + ", flat: ", name, flat(name));
    }
    if (cutIn(name).isEmpty()) {
      inProportion(pack.card().piece(name), sizes);
    }
  }

  /** A drawing, a circle or a square is as high as its width makes it. */
  private void inProportion(Piece p, Map<String, Double> sizes) throws Fault {
    boolean layer = Stack.layer(pack, p.id());
    String path = layer ? Stack.path(pack, p.id()) + ".aperture" : p.origin() + ".outline";
    boolean one =
        List.of(".svg", ".circle", ".square").stream()
            .anyMatch(k -> pack.inputs().design().tree().find(path + k).isPresent());
    if (!one || layer && p.apertures().size() != 1) {
      return;
    }
    Box box = layer ? p.apertures().get(0).box() : p.box();
    String word = layer ? "aperture." : "";
    Double wide = sizes.get(word + "width");
    Double high = sizes.get(word + "height");
    if (wide == null || high == null) {
      return;
    }
    double fits = wide * box.height() / box.width();
    if (Math.abs(high - fits) > Stack.SAME_MM) {
      throw new Fault(
          "--measured: "
              + p.id()
              + (layer ? ": its opening" : "")
              + " would be "
              + Said.size(pack, wide, fits)
              + " as it is drawn, not "
              + Said.size(pack, wide, high)
              + " - measure again");
    }
  }

  private void agree(String name, double one, double other) throws Fault {
    if (Math.abs(one - other) > Stack.SAME_MM) {
      throw new Fault(
          "--measured: "
              + name
              + " cannot be "
              + Said.mm(pack, one)
              + " and "
              + Said.mm(pack, other)
              + " at once - measure again");
    }
  }

  private double flat(String name) {
    return across(name).values().stream().mapToDouble(v -> v).sum();
  }

  /** Tab, side, panel, side and tab of a frame, measured or else as designed. */
  private Map<String, Double> across(String name) {
    Layer designed = Stack.layer(pack.card().piece(name), upright);
    Map<String, Double> known = new LinkedHashMap<>();
    known.put("tab." + first(), designed.tabs().get(0));
    known.put("side." + first(), designed.sides().get(0));
    known.put(upright ? "width" : "height", designed.across());
    known.put("side." + second(), designed.sides().get(1));
    known.put("tab." + second(), designed.tabs().get(1));
    Map<String, Double> sizes = pieces.getOrDefault(name, Map.of());
    known.replaceAll((word, mm) -> sizes.getOrDefault(word, mm));
    return known;
  }

  private void rest(String name, String across, double whole) throws Fault {
    Map<String, Double> known = across(name);
    Map<String, Double> sizes = pieces.getOrDefault(name, Map.of());
    double sum = known.values().stream().mapToDouble(v -> v).sum();
    if (Math.abs(sum - whole) <= Stack.SAME_MM) {
      return;
    }
    // scores are set from the left (or lower) edge, so the last tab is what comes out short
    for (String free : List.of("tab." + second(), "tab." + first(), across)) {
      double left = known.getOrDefault(free, 0.0) + whole - sum;
      boolean slip = !free.equals(across) && whole - sum > SLIP_MM;
      if (!sizes.containsKey(free) && left > 0 && !slip) {
        sizes.put(free, left);
        return;
      }
    }
    List<String> parts = known.values().stream().map(v -> Said.bare(pack, v)).toList();
    throw new Fault(
        "--measured: "
            + name
            + ": its tabs, sides and panel are "
            + String.join(" + ", parts)
            + " = "
            + Said.mm(pack, sum)
            + ", but the piece measures "
            + Said.mm(pack, whole)
            + " - measure again");
  }
}
