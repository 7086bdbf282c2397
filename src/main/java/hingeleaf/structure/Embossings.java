package hingeleaf.structure;

import hingeleaf.card.Embossing;
import hingeleaf.card.Face;
import hingeleaf.card.Join;
import hingeleaf.card.Piece;
import hingeleaf.card.Score;
import hingeleaf.design.Attachments;
import hingeleaf.design.DesignDocument;
import hingeleaf.design.Values;
import hingeleaf.finding.Problem;
import hingeleaf.geom.Box;
import hingeleaf.geom.Vec2;
import hingeleaf.measure.NearestWord;
import hingeleaf.stock.EmbossingFolder;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Presses patterns into panels, with the trade's rules: cut larger and trimmed afterwards, never
 * across a score or a glue strip, and only what the machine takes (common practice, no source).
 */
final class Embossings {
  private static final double EPS = 1e-6;

  private final Workshop shop;
  private final Assembly card;
  private final Bearings say;

  private Embossings(Workshop shop) {
    this.shop = shop;
    this.card = shop.card();
    this.say = shop.bearings();
  }

  /** Presses every part of a design that asks for it; the parts stand already. */
  static void press(Structure base, DesignDocument design, Workshop shop) {
    Embossings all = new Embossings(shop);
    List<Values> parts = new ArrayList<>(base.pressable(design.base().form()));
    parts.addAll(design.mats());
    parts.addAll(design.cutOuts());
    parts.stream().filter(v -> v.has(Attachments.EMBOSS)).forEach(all::press);
  }

  private void press(Values v) {
    String part = v.text("name");
    Optional<EmbossingFolder> folder = folder(v, part);
    Optional<Piece> piece = card.piece(part);
    Optional<Surface> surface = card.surface(part);
    if (folder.isEmpty() || piece.isEmpty() || surface.isEmpty()) {
      return;
    }
    Surface on = surface.get();
    Box plates = plates(folder.get(), on, piece.get());
    if (!machineTakes(v, part, piece.get(), plates)) {
      return;
    }
    acrossScores(v, piece.get(), on, plates);
    overGlue(v, on, plates);
    smaller(v, piece.get(), on, plates);
    card.replace(
        piece
            .get()
            .embossed(new Embossing(folder.get(), on.panel(), plates, v.path(Attachments.EMBOSS))));
  }

  private Optional<EmbossingFolder> folder(Values v, String part) {
    String name = v.text(Attachments.EMBOSS);
    List<EmbossingFolder> own = say.bench().embossingFolders();
    Optional<EmbossingFolder> found = own.stream().filter(f -> f.name().equals(name)).findFirst();
    if (found.isEmpty()) {
      List<String> known = own.stream().map(EmbossingFolder::name).toList();
      String nearest =
          NearestWord.to(name, known)
              .map(w -> " - did you mean `" + w + "`?")
              .orElse(known.isEmpty() ? "" : " - there are: " + String.join(", ", known));
      card.report(
          v.problem(
              "unknown-embossing-folder",
              part,
              Attachments.EMBOSS,
              "the bench has no embossing folder `" + name + "`" + nearest));
    }
    return found;
  }

  /** Centred on the panel, turned so that it harms nothing, then so that it covers most. */
  private Box plates(EmbossingFolder f, Surface on, Piece piece) {
    Box upright = centred(on.box().centre(), f.width(), f.height());
    Box turned = centred(on.box().centre(), f.height(), f.width());
    Comparator<Box> harm = Comparator.comparingDouble(b -> harm(b, on, piece));
    Comparator<Box> bare = Comparator.comparingDouble(b -> -overlap(b, on.box()));
    return harm.thenComparing(bare).compare(turned, upright) < 0 ? turned : upright;
  }

  private static Box centred(Vec2 c, double w, double h) {
    return new Box(c.x() - w / 2, c.y() - h / 2, c.x() + w / 2, c.y() + h / 2);
  }

  private double harm(Box plates, Surface on, Piece piece) {
    boolean glue = glued(on, plates).findAny().isPresent();
    return (crossed(plates, piece).isEmpty() ? 0 : 2) + (glue ? 1 : 0);
  }

  private static double overlap(Box a, Box b) {
    double w = Math.min(a.maxX(), b.maxX()) - Math.max(a.minX(), b.minX());
    double h = Math.min(a.maxY(), b.maxY()) - Math.max(a.minY(), b.minY());
    return w > EPS && h > EPS ? w * h : 0;
  }

  /** Scores that run through the inside of the pattern. */
  private static List<Score> crossed(Box plates, Piece piece) {
    return piece.scores().stream()
        .filter(
            s -> {
              Box line = Box.around(List.of(s.at().from(), s.at().to()));
              return line.minX() < plates.maxX() - EPS
                  && line.maxX() > plates.minX() + EPS
                  && line.minY() < plates.maxY() - EPS
                  && line.maxY() > plates.minY() + EPS;
            })
        .toList();
  }

  /** The piece goes through the machine larger than wanted, one way round or the other. */
  private boolean machineTakes(Values v, String part, Piece piece, Box plates) {
    double mark = say.bench().trimmer().step();
    double wide = Math.max(Embossing.blank(piece.width(), mark), plates.width());
    double high = Math.max(Embossing.blank(piece.height(), mark), plates.height());
    double machine = say.bench().machineWidth();
    if (machine > 0 && Math.min(wide, high) <= machine + EPS) {
      return true;
    }
    String why =
        machine > 0
            ? part
                + ": cut larger for embossing and in its folder it is "
                + say.units().size(wide, high)
                + ", and the machine takes "
                + say.say(machine)
                + " - emboss a smaller mat and glue it on, or leave `emboss` out"
            : part
                + ": there is no machine on the bench to press an embossing folder - tell its"
                + " `machine-width`, or leave `emboss` out";
    card.report(
        v.problem("machine-too-narrow", part, Attachments.EMBOSS, why)
            .with(Map.of("needs", Math.min(wide, high), "machine", machine)));
    return false;
  }

  private void acrossScores(Values v, Piece piece, Surface on, Box plates) {
    if (crossed(plates, piece).isEmpty()) {
      return;
    }
    Box free = Fittings.free(on, Face.FRONT);
    warn(
        v,
        "emboss-across-score",
        on.name()
            + ": the embossing folder's pattern of "
            + say.units().size(plates.width(), plates.height())
            + " would run across its scores, and a score through a pattern does not fold true - use"
            + " a folder of "
            + say.units().size(free.width(), free.height())
            + " or less, or emboss a mat and glue it on");
  }

  /** What is glued flat on a pattern holds badly; foam does not mind. */
  private void overGlue(Values v, Surface on, Box plates) {
    List<String> glued = glued(on, plates).map(g -> g.a().piece()).distinct().limit(3).toList();
    if (glued.isEmpty()) {
      return;
    }
    Box free = Fittings.free(on, Face.FRONT);
    warn(
        v,
        "emboss-over-glue",
        on.name()
            + ": the embossing folder's pattern of "
            + say.units().size(plates.width(), plates.height())
            + " would run under the glue of "
            + String.join(", ", glued)
            + ", and glue holds badly on a pattern - use a folder of "
            + say.units().size(free.width(), free.height())
            + " or less, raise what lies on it on foam, or emboss a mat and glue it on");
  }

  private Stream<Join.Glue> glued(Surface on, Box plates) {
    return card.joins().stream()
        .filter(j -> j instanceof Join.Glue)
        .map(j -> (Join.Glue) j)
        .filter(g -> g.b().piece().equals(on.piece()) && g.b().panel().equals(on.panel()))
        .filter(g -> g.raisedBy() == 0 && overlap(g.b().area().box(), plates) > EPS);
  }

  /** Where the pattern ends inside a panel its edge shows: told, for it may be wanted. */
  private void smaller(Values v, Piece piece, Surface on, Box plates) {
    Box panel = on.box();
    double across = Math.max(0, panel.width() - plates.width()) / 2;
    double up = Math.max(0, panel.height() - plates.height()) / 2;
    if (across <= EPS && up <= EPS) {
      return;
    }
    String message =
        on.name()
            + ": the embossing folder's pattern of "
            + say.units().size(plates.width(), plates.height())
            + " is smaller than the panel of "
            + say.units().size(panel.width(), panel.height())
            + ", so a plain rim stays: "
            + Stream.of(
                    across > EPS ? say.say(across) + " at left and right" : "",
                    up > EPS ? say.say(up) + " above and below" : "")
                .filter(s -> !s.isEmpty())
                .collect(Collectors.joining(", "));
    // A frame needs that rim for its scores and strips; on a loose part the line is rarely wanted.
    Problem p =
        piece.scores().isEmpty()
            ? Problem.warns(
                "emboss-smaller",
                on.name(),
                v.path(Attachments.EMBOSS),
                message + " - use a larger folder, or make it smaller")
            : Problem.notes("emboss-smaller", on.name(), v.path(Attachments.EMBOSS), message);
    card.report(p.at(v.place(Attachments.EMBOSS)).with(Map.of("across", across, "up", up)));
  }

  private void warn(Values v, String kind, String message) {
    card.report(
        Problem.warns(kind, v.text("name"), v.path(Attachments.EMBOSS), message)
            .at(v.place(Attachments.EMBOSS)));
  }
}
