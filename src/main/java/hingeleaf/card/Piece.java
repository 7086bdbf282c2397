package hingeleaf.card;

import hingeleaf.geom.Box;
import hingeleaf.geom.Region;
import hingeleaf.geom.Ring;
import hingeleaf.geom.Segment;
import hingeleaf.stock.Grain;
import hingeleaf.stock.Stock;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A flat piece as it is cut: the one truth that all else reads.
 *
 * <p>Frame: origin at the lower left of the outline's box, x right, y up, seen on its front.
 *
 * @param id unique in the card; what joins and findings call it
 * @param name as the maker reads it
 * @param stock what it is cut from
 * @param grain which way the grain should run in it
 * @param shape outline and apertures
 * @param slits cuts that take nothing out
 * @param scores fold lines
 * @param labels names of the panels between the scores; every panel has one
 * @param inks what is printed on it
 * @param embossing what is pressed into it, before it is scored; empty for a plain piece
 * @param origin path in the design from which it comes
 */
public record Piece(
    String id,
    String name,
    Stock stock,
    Grain grain,
    Region shape,
    List<Segment> slits,
    List<Score> scores,
    List<Label> labels,
    List<Ink> inks,
    Optional<Embossing> embossing,
    String origin) {
  public Piece {
    slits = List.copyOf(slits);
    scores = List.copyOf(scores);
    labels = List.copyOf(labels);
    inks = List.copyOf(inks);
  }

  /** A plain piece: nothing is pressed into it. */
  public Piece(
      String id,
      String name,
      Stock stock,
      Grain grain,
      Region shape,
      List<Segment> slits,
      List<Score> scores,
      List<Label> labels,
      List<Ink> inks,
      String origin) {
    this(id, name, stock, grain, shape, slits, scores, labels, inks, Optional.empty(), origin);
  }

  /** A piece with no score: one panel, named like the piece. */
  public static Piece flat(
      String id, String name, Stock stock, Grain grain, Region shape, Label label, String origin) {
    return new Piece(
        id, name, stock, grain, shape, List.of(), List.of(), List.of(label), List.of(), origin);
  }

  public List<Ring> apertures() {
    return shape.holes();
  }

  public Box box() {
    return shape.box();
  }

  /** Size as cut, mm. */
  public double width() {
    return box().width();
  }

  public double height() {
    return box().height();
  }

  /** Mass in g from true area and grammage, before glue and ink. */
  public double mass() {
    return shape.area() * stock.grammage() * 1e-6;
  }

  public Score score(String name) {
    return scores.stream()
        .filter(s -> s.name().equals(name))
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException(id + " has no score " + name));
  }

  /** This piece with further cuts that take nothing out. */
  public Piece slit(List<Segment> more) {
    List<Segment> all = new ArrayList<>(slits);
    all.addAll(more);
    return new Piece(id, name, stock, grain, shape, all, scores, labels, inks, embossing, origin);
  }

  /** This piece folded along one more line, which parts one panel in two: all labels anew. */
  public Piece folded(Score more, List<Label> panels) {
    List<Score> all = new ArrayList<>(scores);
    all.add(more);
    return new Piece(id, name, stock, grain, shape, slits, all, panels, inks, embossing, origin);
  }

  public Piece withInks(List<Ink> more) {
    return new Piece(id, name, stock, grain, shape, slits, scores, labels, more, embossing, origin);
  }

  public Piece embossed(Embossing pressed) {
    return new Piece(
        id, name, stock, grain, shape, slits, scores, labels, inks, Optional.of(pressed), origin);
  }

  /** How thick a panel is: its paper, and what a pattern pressed into it adds, mm. */
  public double thickness(String panel) {
    return stock.thickness()
        + embossing.filter(e -> e.panel().equals(panel)).map(Embossing::raises).orElse(0.0);
  }
}
