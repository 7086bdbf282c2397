package hingeleaf.structure;

import hingeleaf.card.Face;
import hingeleaf.design.DesignDocument;
import hingeleaf.design.Values;
import hingeleaf.geom.Region;
import hingeleaf.geom.Vec2;
import hingeleaf.measure.Length;
import hingeleaf.stock.Glue;
import hingeleaf.stock.Stock;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Reads what a design fixes to its panels and hands it to {@link Fittings}, nearest first. */
final class FittingReader {
  private final DesignDocument design;
  private final Workshop shop;
  private final Fittings fittings;

  FittingReader(DesignDocument design, Workshop shop) {
    this.design = design;
    this.shop = shop;
    String glue = shop.bearings().bench().glues().stream().findFirst().map(Glue::name).orElse("");
    String tape =
        shop.bearings().bench().glues().stream()
            .filter(g -> g.kind() == Glue.Kind.TAPE)
            .findFirst()
            .map(Glue::name)
            .orElse(glue);
    this.fittings = new Fittings(shop.card(), shop.bearings(), glue, tape);
  }

  /** Mats and windows first, since cut-outs and words may stand on them. */
  void fit() {
    design.mats().forEach(this::mat);
    design.windows().forEach(this::window);
    design.message().ifPresent(this::message);
    design.cutOuts().forEach(this::cutOut);
    design.words().forEach(this::words);
  }

  private void mat(Values v) {
    String name = v.text("name");
    Optional<Surface> on = shop.surface(v, "on", name);
    Optional<Stock> stock = shop.stock(v, "stock", name);
    if (on.isEmpty() || stock.isEmpty()) {
      return;
    }
    List<Region> opening = List.of();
    if (v.has("aperture")) {
      Optional<Region> shape = shop.shape(v, "aperture", name);
      if (shape.isEmpty()) {
        return;
      }
      opening = List.of(shape.get().moved(on.get().box().centre()));
    }
    fittings.add(
        new Fittings.Mat(
            name,
            on.get(),
            face(v),
            stock.get(),
            size(v, "width"),
            size(v, "height"),
            point(v, "at"),
            shop.mm(v, "border"),
            opening,
            shop.mm(v, "raised-by"),
            v.path()));
  }

  private void window(Values v) {
    String name = v.text("name");
    Optional<Surface> on = shop.surface(v, "on", name);
    Optional<Stock> stock = shop.stock(v, "stock", name);
    if (on.isPresent() && stock.isPresent()) {
      fittings.add(
          new Fittings.Window(
              name,
              on.get(),
              stock.get(),
              shop.mm(v, "overlap"),
              size(v, "width"),
              size(v, "height"),
              v.path()));
    }
  }

  private void message(Values v) {
    Optional<Surface> on = shop.surface(v, "on", "message");
    Optional<Stock> stock = shop.stock(v, "stock", "message");
    if (on.isEmpty() || stock.isEmpty()) {
      return;
    }
    fittings.add(
        new Fittings.Mat(
            "message",
            on.get(),
            face(v),
            stock.get(),
            size(v, "width"),
            size(v, "height"),
            point(v, "at"),
            shop.mm(v, "border"),
            List.of(),
            0,
            v.path()));
  }

  private void cutOut(Values v) {
    String name = v.text("name");
    Optional<Surface> on = shop.surface(v, "on", name);
    Optional<Stock> stock = shop.stock(v, "stock", name);
    Optional<Region> shape = shop.shape(v, "outline", name);
    if (on.isEmpty() || stock.isEmpty() || shape.isEmpty()) {
      return;
    }
    double turn = Math.toRadians(v.number("turned"));
    Region turned = turn == 0 ? shape.get() : shape.get().map(p -> turn(p, turn));
    fittings.add(
        new Fittings.CutOut(
            name,
            on.get(),
            face(v),
            point(v, "at"),
            turned,
            stock.get(),
            shop.mm(v, "raised-by"),
            v.path()));
  }

  private static Vec2 turn(Vec2 p, double angle) {
    double c = Math.cos(angle);
    double s = Math.sin(angle);
    return new Vec2(c * p.x() - s * p.y(), s * p.x() + c * p.y());
  }

  private void words(Values v) {
    String text = v.text("text");
    Optional<Surface> on = shop.surface(v, "on", text);
    if (on.isEmpty()) {
      return;
    }
    Optional<Stock> carrier = Optional.empty();
    if (v.has("stock")) {
      carrier = shop.stock(v, "stock", text);
      if (carrier.isEmpty()) {
        return;
      }
    }
    fittings.add(
        new Fittings.Words(
            text,
            on.get(),
            face(v),
            point(v, "at"),
            shop.mm(v, "height"),
            v.text("colour"),
            carrier.orElse(null),
            shop.mm(v, "raised-by"),
            v.path()));
  }

  private static Face face(Values v) {
    return v.text("face").equals("front") ? Face.FRONT : Face.BACK;
  }

  private @Nullable Double size(Values v, String key) {
    return v.has(key) ? Double.valueOf(shop.mm(v, key)) : null;
  }

  private Vec2 point(Values v, String key) {
    List<Length> at = v.lengths(key);
    return new Vec2(shop.mm(key, at.get(0)), shop.mm(key, at.get(1)));
  }
}
