package hingeleaf.pack;

import hingeleaf.design.BenchDocument;
import hingeleaf.design.NamedSizes;
import hingeleaf.design.Values;
import hingeleaf.measure.Length;
import hingeleaf.measure.Unit;
import hingeleaf.stock.Accuracy;
import hingeleaf.stock.Bench;
import hingeleaf.stock.BuiltInBench;
import hingeleaf.stock.Die;
import hingeleaf.stock.EmbossingFolder;
import hingeleaf.stock.Envelope;
import hingeleaf.stock.Foam;
import hingeleaf.stock.Glue;
import hingeleaf.stock.Grain;
import hingeleaf.stock.ScoringBoard;
import hingeleaf.stock.SheetSizes;
import hingeleaf.stock.Stock;
import hingeleaf.stock.Trimmer;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * From a bench file to the bench. What the file does not tell is taken from the built-in bench of
 * the file's units: tools it leaves out, and whole lists it leaves empty.
 */
public final class BenchReader {
  private final Values v;
  private final Bench usual;
  private final boolean inches;

  private BenchReader(BenchDocument document) {
    this.v = document.values();
    this.inches = document.unit() == Unit.IN;
    this.usual = inches ? BuiltInBench.inches() : BuiltInBench.metric();
  }

  /** The bench that a file describes. */
  public static Bench bench(BenchDocument document) {
    return new BenchReader(document).read();
  }

  private Bench read() {
    return new Bench(
        v.text("title"),
        inches,
        v.has("trimmer") ? trimmer(v.form("trimmer")) : usual.trimmer(),
        usual.ruler(),
        v.has("scoring-board") ? board(v.form("scoring-board")) : usual.scoringBoard(),
        v.has("machine-width") ? v.mm("machine-width") : usual.machineWidth(),
        list("dies", this::die, usual.dies()),
        list("embossing-folders", this::folder, usual.embossingFolders()),
        papers(),
        list("glues", this::glue, usual.glues()),
        list("foams", this::foam, usual.foams()),
        list("envelopes", this::envelope, usual.envelopes()),
        accuracy(),
        v.text("money"),
        v.number("hourly-rate"),
        v.text("country").equals("other") ? "" : v.text("country"));
  }

  private <T> List<T> list(
      String key, java.util.function.Function<Values, T> read, List<T> otherwise) {
    List<Values> given = v.forms(key);
    return given.isEmpty() ? otherwise : given.stream().map(read).toList();
  }

  private static Trimmer trimmer(Values t) {
    return new Trimmer(t.mm("longest"), t.mm("marks"));
  }

  private ScoringBoard board(Values b) {
    double longest = b.has("longest") ? b.mm("longest") : usual.scoringBoard().longest();
    return new ScoringBoard(b.mm("grooves"), Math.max(longest, b.mm("grooves")));
  }

  private Accuracy accuracy() {
    if (!v.isWord("accuracy")) {
      double mm = v.mm("accuracy");
      return mm <= 0.5 ? Accuracy.CAREFUL : mm <= 1 ? Accuracy.AVERAGE : Accuracy.CLASS;
    }
    return Accuracy.valueOf(v.text("accuracy").toUpperCase(Locale.ROOT));
  }

  private Die die(Values d) {
    List<Length> cut = d.lengths("cut");
    List<Length> out = d.has("drop-out") ? d.lengths("drop-out") : cut;
    Die.Shape shape =
        switch (d.text("shape")) {
          case "circle" -> Die.Shape.CIRCLE;
          case "square", "rect" -> Die.Shape.RECTANGLE;
          case "ellipse" -> Die.Shape.ELLIPSE;
          case "arch" -> Die.Shape.ARCH;
          case "rounded" -> Die.Shape.ROUNDED_RECTANGLE;
          default -> Die.Shape.OTHER;
        };
    double w = cut.get(0).mm();
    double h = cut.get(1).mm();
    return new Die(
        d.text("name"),
        d.text("label", d.text("name")),
        shape,
        w,
        h,
        Math.min(w, out.get(0).mm()),
        Math.min(h, out.get(1).mm()));
  }

  private EmbossingFolder folder(Values f) {
    List<Length> size = f.lengths("size");
    double raises = 0.8; // usual depth, from memory
    return new EmbossingFolder(
        f.text("name"), f.text("name"), size.get(0).mm(), size.get(1).mm(), raises);
  }

  /** The maker's papers; those of the built-in bench stay to be had, theirs come first. */
  private List<Stock> papers() {
    List<Stock> all = new ArrayList<>();
    v.forms("stocks").forEach(s -> all.add(paper(s)));
    for (Stock s : usual.papers()) {
      if (all.stream().noneMatch(own -> own.name().equals(s.name()))) {
        all.add(s);
      }
    }
    return all;
  }

  private Stock paper(Values s) {
    String front = s.text("front");
    String back = s.text("back", front);
    Grain grain = grain(s);
    return new Stock(
        s.text("name"),
        s.text("title", s.text("name")),
        s.text("kind").equals("acetate") ? Stock.Kind.ACETATE : Stock.Kind.CARD,
        s.number("grammage"),
        s.mm("thickness"),
        new Stock.Faces(front, back, s.text("core", back)),
        s.forms("sheets").stream().map(x -> sheet(x, grain)).toList(),
        s.mm("least-border"));
  }

  private static Stock.Sheet sheet(Values s, Grain ofPaper) {
    Grain grain = s.given("grain") ? grain(s) : ofPaper;
    double price = s.number("price");
    int left = s.has("left") ? s.whole("left") : -1;
    if (s.isWord("size")) {
      String word = s.text("size");
      NamedSizes.Size size = NamedSizes.SHEETS.of(s, "size");
      double w = size.width().mm();
      double h = size.height().mm();
      return new Stock.Sheet(name(word, w, h), w, h, grain, price, left);
    }
    List<Length> size = s.lengths("size");
    String name = size.get(0) + " x " + size.get(1);
    return new Stock.Sheet(name, size.get(0).mm(), size.get(1).mm(), grain, price, left);
  }

  /** As plans call a size that a bench file names shortly. */
  private static String name(String word, double width, double height) {
    return SheetSizes.named(word)
        .or(
            () ->
                SheetSizes.standard().stream()
                    .filter(s -> Math.abs(s.width() - width) < 1e-6)
                    .filter(s -> Math.abs(s.height() - height) < 1e-6)
                    .findFirst())
        .map(SheetSizes.Size::name)
        .orElse(word);
  }

  private static Grain grain(Values s) {
    return Grain.valueOf(s.text("grain").toUpperCase(Locale.ROOT));
  }

  private Glue glue(Values g) {
    boolean tape = g.text("kind").equals("tape");
    double grams = g.number("grams");
    return new Glue(
        g.text("name"),
        g.text("name"),
        tape ? Glue.Kind.TAPE : Glue.Kind.GLUE,
        g.has("width") ? g.mm("width") : 6,
        g.number("hold"),
        g.number("dry"),
        grams,
        grams,
        0,
        0);
  }

  private Foam foam(Values f) {
    double packArea = 10_000; // priced by a hundred square centimetres
    return new Foam(
        f.text("name"), f.text("name"), f.mm("thickness"), 60, packArea, f.number("price"));
  }

  private Envelope envelope(Values e) {
    double grams = e.has("grams") ? e.number("grams") : 0;
    if (e.isWord("size")) {
      NamedSizes.Size size = NamedSizes.ENVELOPES.of(e, "size");
      double width = size.width().mm();
      return new Envelope(e.text("name"), width, size.height().mm(), grams, e.number("price"));
    }
    List<Length> size = e.lengths("size");
    return new Envelope(
        e.text("name"), size.get(0).mm(), size.get(1).mm(), grams, e.number("price"));
  }
}
