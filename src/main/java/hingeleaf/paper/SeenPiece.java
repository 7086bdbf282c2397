package hingeleaf.paper;

import hingeleaf.card.Face;
import hingeleaf.card.Label;
import hingeleaf.card.Patch;
import hingeleaf.card.Piece;
import hingeleaf.geom.Box;
import hingeleaf.geom.Region;
import hingeleaf.geom.Segment;
import hingeleaf.geom.Vec2;
import hingeleaf.stock.Grain;
import java.util.List;
import java.util.function.UnaryOperator;

/**
 * A piece as it lies on the table with one face up: origin at the lower left of its box, x right, y
 * up, mm. On its back everything is mirrored left to right, and mountains are valleys.
 *
 * @param glue areas of this face that take glue
 * @param inks what is printed on this face
 * @param pressed where a pattern is pressed into it, within its outline; seen on both faces
 */
public record SeenPiece(
    Piece piece,
    Face face,
    double width,
    double height,
    Region shape,
    List<Segment> slits,
    List<SeenScore> scores,
    List<Label> labels,
    List<Region> glue,
    List<SeenInk> inks,
    List<Region> pressed,
    Grain grain) {
  /**
   * A score on this face.
   *
   * @param degrees how far it is folded in the made card, 0 to 180
   */
  public record SeenScore(String name, Segment at, Fold fold, double degrees) {}

  /** One colour printed on this face. */
  public record SeenInk(List<Region> regions, String colour) {}

  public SeenPiece {
    slits = List.copyOf(slits);
    scores = List.copyOf(scores);
    labels = List.copyOf(labels);
    glue = List.copyOf(glue);
    inks = List.copyOf(inks);
    pressed = List.copyOf(pressed);
  }

  /**
   * The piece with {@code face} up.
   *
   * @param glue patches of any pieces and faces; those of this face of this piece are kept
   */
  public static SeenPiece of(Piece piece, Face face, List<Patch> glue) {
    Box box = piece.box();
    UnaryOperator<Vec2> place =
        face == Face.FRONT
            ? p -> new Vec2(p.x() - box.minX(), p.y() - box.minY())
            : p -> new Vec2(box.maxX() - p.x(), p.y() - box.minY());
    return new SeenPiece(
        piece,
        face,
        box.width(),
        box.height(),
        piece.shape().map(place),
        piece.slits().stream().map(s -> map(s, place)).toList(),
        piece.scores().stream()
            .map(
                s ->
                    new SeenScore(
                        s.name(),
                        map(s.at(), place),
                        face == Face.FRONT ? Fold.of(s.made()) : Fold.of(s.made()).fromBehind(),
                        Math.abs(Math.toDegrees(s.made()))))
            .toList(),
        piece.labels().stream().map(l -> new Label(l.name(), place.apply(l.at()))).toList(),
        glue.stream()
            .filter(p -> p.face() == face && p.piece().equals(piece.id()))
            .map(p -> p.area().map(place))
            .toList(),
        piece.inks().stream()
            .filter(i -> i.face() == face)
            .map(i -> new SeenInk(i.regions().stream().map(r -> r.map(place)).toList(), i.colour()))
            .toList(),
        pressed(piece).stream().map(r -> r.map(place)).toList(),
        piece.grain());
  }

  private static List<Region> pressed(Piece piece) {
    return piece.embossing().map(e -> e.pressed(piece.shape())).orElse(List.of());
  }

  /** The same piece turned a quarter anticlockwise on the table. */
  public SeenPiece turned() {
    UnaryOperator<Vec2> turn = p -> new Vec2(height - p.y(), p.x());
    return new SeenPiece(
        piece,
        face,
        height,
        width,
        shape.map(turn),
        slits.stream().map(s -> map(s, turn)).toList(),
        scores.stream()
            .map(s -> new SeenScore(s.name(), map(s.at(), turn), s.fold(), s.degrees()))
            .toList(),
        labels.stream().map(l -> new Label(l.name(), turn.apply(l.at()))).toList(),
        glue.stream().map(r -> r.map(turn)).toList(),
        inks.stream()
            .map(i -> new SeenInk(i.regions().stream().map(r -> r.map(turn)).toList(), i.colour()))
            .toList(),
        pressed.stream().map(r -> r.map(turn)).toList(),
        switch (grain) {
          case WIDTH -> Grain.HEIGHT;
          case HEIGHT -> Grain.WIDTH;
          case ANY -> Grain.ANY;
        });
  }

  private static Segment map(Segment s, UnaryOperator<Vec2> f) {
    return new Segment(f.apply(s.from()), f.apply(s.to()));
  }
}
