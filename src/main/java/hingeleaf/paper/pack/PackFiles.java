package hingeleaf.paper.pack;

import hingeleaf.card.Face;
import hingeleaf.card.Join;
import hingeleaf.card.Patch;
import hingeleaf.card.Piece;
import hingeleaf.card.Posed;
import hingeleaf.measure.MakerUnits;
import hingeleaf.pack.Pack;
import hingeleaf.paper.Drawing;
import hingeleaf.paper.Fonts;
import hingeleaf.paper.Lengths;
import hingeleaf.paper.Look;
import hingeleaf.paper.PaperSize;
import hingeleaf.paper.dxf.PieceDxf;
import hingeleaf.paper.figure.CardPicture;
import hingeleaf.paper.glb.CardGlb;
import hingeleaf.paper.json.PackJson;
import hingeleaf.paper.pdf.PdfWriter;
import hingeleaf.paper.raster.PngWriter;
import hingeleaf.paper.svg.PieceSvg;
import hingeleaf.paper.template.Template;
import hingeleaf.paper.template.TemplateBook;
import hingeleaf.paper.template.TemplateStyle;
import hingeleaf.plan.CutList;
import hingeleaf.sight.View;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ForkJoinTask;
import java.util.function.BiConsumer;
import java.util.function.Supplier;

/** The files of a pack, by their names in its folder. */
public final class PackFiles {
  private static final int PICTURE_PIXELS = 1600;

  private final Pack pack;
  private final Fonts fonts;
  private final BiConsumer<String, byte[]> done;

  private PackFiles(Pack pack, Fonts fonts, BiConsumer<String, byte[]> done) {
    this.pack = pack;
    this.fonts = fonts;
    this.done = done;
  }

  /** All files; the same pack gives the same bytes. */
  public static Map<String, byte[]> of(Pack pack, Fonts fonts) {
    return of(pack, fonts, (name, bytes) -> {});
  }

  /**
   * The same for somebody who wants each file as soon as it is made.
   *
   * @param done told of each file once, in no fixed order and by several threads
   */
  public static Map<String, byte[]> of(Pack pack, Fonts fonts, BiConsumer<String, byte[]> done) {
    return new PackFiles(pack, fonts, done).made();
  }

  /**
   * Files do not depend on each other, so two cores write two at a time: this one from the first
   * on, the other from the last. The steps of the plan are the longest strand by far, so they are
   * begun before all else, and the book that waits for them is set last. The card grows step by
   * step beside them, and its large pictures come of that.
   */
  private Map<String, byte[]> made() {
    PlanBook book = new PlanBook(pack, fonts);
    Map<String, ForkJoinTask<byte[]>> files = new LinkedHashMap<>();
    wanted(book).forEach((name, work) -> files.put(name, task(name, work)));
    List<ForkJoinTask<?>> order = new ArrayList<>(book.around());
    order.addAll(files.values());
    files.put("plan.pdf", task("plan.pdf", () -> plan(book)));
    order.add(files.get("plan.pdf"));
    book.steps().fork();
    ForkJoinTask.invokeAll(order);
    Map<String, byte[]> made = new LinkedHashMap<>();
    files.forEach((name, file) -> made.put(name, file.join()));
    return made;
  }

  private ForkJoinTask<byte[]> task(String name, Supplier<byte[]> work) {
    return ForkJoinTask.adapt(
        () -> {
          pack.goOn();
          byte[] bytes = work.get();
          done.accept(name, bytes);
          return bytes;
        });
  }

  /** All files but the plan; last what waits until all problems are found. */
  private Map<String, Supplier<byte[]>> wanted(PlanBook book) {
    Map<String, Supplier<byte[]>> all = new LinkedHashMap<>();
    all.put("picture.png", () -> picture(book.standing()));
    sheets(all);
    for (CutList.Line line : pack.cuts().lines()) {
      String name = "pieces/" + fileName(line.pieces().get(0));
      Piece piece = line.piece();
      all.put(name + ".dxf", () -> PieceDxf.write(piece).getBytes(StandardCharsets.US_ASCII));
      all.put(name + ".svg", () -> PieceSvg.write(piece).getBytes(StandardCharsets.UTF_8));
    }
    all.put("templates.pdf", this::templates);
    all.put("card.glb", this::solid);
    all.put("pack.json", () -> PackJson.text(pack).getBytes(StandardCharsets.UTF_8));
    return all;
  }

  /** A piece's id as a file name: letters, digits and hyphens of any script; nothing else. */
  static String fileName(String id) {
    return id.strip().replaceAll("[^\\p{L}\\p{N}]+", "-");
  }

  private byte[] plan(PlanBook book) {
    return PdfWriter.write(book.pages(), pack.title(), "en", PdfWriter.Layers.FLAT, fonts);
  }

  /** The sheets for a batch and for a class, where they are wanted. */
  private void sheets(Map<String, Supplier<byte[]>> all) {
    if (pack.inputs().wants().copies() > 1) {
      all.put("run-sheet.pdf", () -> book(RunBook.pages(pack, fonts), ", run sheet"));
    }
    if (pack.inputs().wants().lesson().seats() > 0) {
      all.put("class-sheet.pdf", () -> book(ClassBook.pages(pack, fonts), ", class sheet"));
    }
  }

  private byte[] book(List<Drawing> pages, String title) {
    return PdfWriter.write(pages, pack.title() + title, "en", PdfWriter.Layers.FLAT, fonts);
  }

  private byte[] templates() {
    List<Template> templates = new ArrayList<>();
    for (CutList.Line line : pack.cuts().lines()) {
      templates.add(new Template(line.piece(), line.quantity(), glue(line.piece())));
    }
    Face up = pack.inputs().wants().mirrored() ? Face.BACK : Face.FRONT;
    TemplateStyle style = new TemplateStyle(pack.title(), paper(pack), up, lengths(pack), fonts);
    return PdfWriter.write(
        TemplateBook.pages(templates, style),
        pack.title() + ", templates",
        "en",
        PdfWriter.Layers.STEPS,
        fonts);
  }

  private List<Patch> glue(Piece piece) {
    List<Patch> patches = new ArrayList<>();
    for (Join j : pack.card().joins()) {
      j.<Boolean>match(
          g -> g.a().piece().equals(piece.id()) && patches.addAll(Held.of(g, pack.foams())),
          s -> false,
          p -> false,
          p -> false);
    }
    return patches;
  }

  /** The card in three dimensions, folding to its best rest in two seconds. */
  private byte[] solid() {
    List<Double> times = new ArrayList<>();
    List<Posed> poses = new ArrayList<>();
    List<Posed> way = pack.wayToBestRest();
    for (int i = 0; i < way.size(); i++) {
      times.add(2.0 * i / Math.max(1, way.size() - 1));
      poses.add(way.get(i));
    }
    return CardGlb.write(pack.made(), times, poses);
  }

  private byte[] picture(View standing) {
    Drawing drawing =
        CardPicture.filling(
            SeenCard.of(standing), pack.title(), CardPicture.Manner.COLOUR, 200, 150, Look.PAPER);
    return PngWriter.write(drawing, PICTURE_PIXELS, Look.PAPER, fonts);
  }

  static PaperSize paper(Pack pack) {
    return pack.inputs().wants().letter() ? PaperSize.US_LETTER : PaperSize.A4;
  }

  static Lengths lengths(Pack pack) {
    MakerUnits units = pack.inputs().wants().units();
    return new Lengths(units::rounded, units::number);
  }
}
