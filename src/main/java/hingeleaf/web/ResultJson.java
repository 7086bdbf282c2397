package hingeleaf.web;

import hingeleaf.card.Face;
import hingeleaf.card.Rest;
import hingeleaf.measure.MakerUnits;
import hingeleaf.pack.Pack;
import hingeleaf.paper.Fonts;
import hingeleaf.paper.Lengths;
import hingeleaf.paper.SeenPiece;
import hingeleaf.paper.figure.CardPicture;
import hingeleaf.paper.figure.ScoreChart;
import hingeleaf.paper.pack.SeenCard;
import hingeleaf.paper.svg.SvgWriter;
import hingeleaf.plan.CutList;
import java.util.List;
import java.util.stream.Collectors;

/** What comes out of a card, section by section; a section that is not there yet is left out. */
final class ResultJson {
  /** The grounds behind pictures, as the page's style has them. */
  private static final String LIGHT = "#ece7dc";

  private static final String DARK = "#2c2f31";

  private final JsonOut out;
  private final Pack pack;
  private final Fonts fonts;
  private final MakerUnits units;

  private ResultJson(JsonOut out, Pack pack, Fonts fonts) {
    this.out = out;
    this.pack = pack;
    this.fonts = fonts;
    this.units = pack.inputs().wants().units();
  }

  static String text(Pack pack, Fonts fonts) {
    return JsonOut.object(
        out -> {
          ResultJson results = new ResultJson(out, pack, fonts);
          out.put("title", pack.title());
          out.put("mass", pack.card().mass());
          out.put("hands", pack.work().hands()).put("elapsed", pack.work().elapsed());
          out.each("pieces", pack.cuts().lines(), results::piece);
        });
  }

  private void piece(CutList.Line line) {
    out.put("names", line.names()).put("quantity", line.quantity());
    out.texts("ids", line.pieces());
    out.put("size", units.size(line.piece().width(), line.piece().height()));
    out.put("width", units.number(line.piece().width()));
    out.put("height", units.number(line.piece().height()));
    out.put("stock", line.piece().stock().title());
    out.put("colour", line.piece().stock().faces().front());
    out.put("grain", grain(line));
    out.put("scores", line.piece().scores().size());
    out.put(
        "openings", line.openings().stream().map(this::opening).collect(Collectors.joining("; ")));
    out.put("drawing", chart(line));
  }

  private static String grain(CutList.Line line) {
    return switch (line.piece().grain()) {
      case WIDTH -> "along the width";
      case HEIGHT -> "along the height";
      case ANY -> "either way";
    };
  }

  private String opening(CutList.Opening o) {
    String size =
        Math.abs(o.width() - o.height()) < 0.02
            ? units.rounded(o.width())
            : units.size(o.width(), o.height());
    return o.shape()
        + " "
        + size
        + ", "
        + units.rounded(o.fromLeft())
        + " from the left, "
        + units.rounded(o.fromBottom())
        + " from the bottom ("
        + o.die().map(d -> "die " + d.label()).orElse("knife")
        + ")";
  }

  private String chart(CutList.Line line) {
    Lengths lengths = new Lengths(units::rounded, units::number);
    SeenPiece seen = SeenPiece.of(line.piece(), Face.FRONT, List.of());
    return SvgWriter.write(
        ScoreChart.of(seen, 170, 130, lengths, fonts), line.names() + " with its measures");
  }

  /** The ways in which the card lies flat, in words. */
  static String flats(Pack pack) {
    MakerUnits units = pack.inputs().wants().units();
    return JsonOut.object(
        out -> {
          out.put("best", Math.max(0, pack.best()))
              .put("count", (int) Math.min(Integer.MAX_VALUE, pack.flats().count()));
          out.each(
              "rests",
              pack.flats().states(),
              r ->
                  out.put("words", Leaning.words(r, pack))
                      .put("size", units.size(r.width(), r.height()))
                      .put("width", r.width())
                      .put("height", r.height())
                      .put("limp", units.fine(r.limp()))
                      .put("rigid", units.fine(r.rigid())));
        });
  }

  /** A picture of the made card, papers in their colours, on the page's ground. */
  static String picture(Pack pack, boolean dark) {
    return SvgWriter.write(
        CardPicture.filling(
            SeenCard.of(pack.aslant()),
            pack.title(),
            CardPicture.Manner.COLOUR,
            160,
            120,
            dark ? DARK : LIGHT),
        pack.title());
  }

  /** How a rest leans, for people. */
  static final class Leaning {
    private Leaning() {}

    static String words(Rest rest, Pack pack) {
      if (rest.leans().isEmpty()) {
        return "as it is";
      }
      boolean up = upDown(pack);
      List<String> each = rest.leans().stream().map(l -> word(l, up)).toList();
      if (each.size() == 1) {
        return "leans " + each.get(0);
      }
      return each.stream().distinct().count() == 1
          ? "all leaning " + each.get(0)
          : "leans " + String.join(", ", each) + " from the back";
    }

    /** Sides at the top and bottom let the layers lean up or down. */
    private static boolean upDown(Pack pack) {
      return pack.card().pieces().stream()
          .flatMap(p -> p.labels().stream())
          .anyMatch(l -> l.name().equals("side-top") || l.name().equals("side-bottom"));
    }

    private static String word(int lean, boolean up) {
      return lean < 0 ? (up ? "down" : "left") : (up ? "up" : "right");
    }
  }
}
