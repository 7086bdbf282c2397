package hingeleaf.structure;

import hingeleaf.card.Card;
import hingeleaf.design.DesignDocument;
import hingeleaf.design.DesignForms;
import hingeleaf.finding.Problem;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** All structures, and the way from a design to a card. */
public final class Structures {
  /** Every base, in the order in which a newcomer is shown them. */
  public static final List<Structure> ALL = List.of(new StackedFrames());

  /**
   * Every mechanism that can be added to a base, in the order in which a newcomer is shown them.
   */
  public static final List<Structure> MECHANISMS =
      List.of(
          new Doors.Door(), new BaseTab(), new BellyStrip(), new SlotLock(), new FoldDownBrace());

  /** The tables of all structures, for reading designs and for the schema. */
  public static final DesignForms FORMS =
      new DesignForms(
          ALL.stream().map(Structure::form).toList(),
          MECHANISMS.stream().map(Structure::form).toList());

  private Structures() {}

  /**
   * What came of a design.
   *
   * @param card empty where something blocks
   * @param problems all that was found, blocking ones included
   */
  public record Built(Optional<Card> card, List<Problem> problems) {
    public Built {
      problems = List.copyOf(problems);
    }
  }

  /**
   * Builds the card of a design.
   *
   * @param bearings the bench, and in which units the plan is written: in the other system than the
   *     design's, the card is a separately rounded version
   * @param drawings bytes of the SVG files by the names that the design uses
   */
  public static Built build(
      DesignDocument design, Bearings bearings, Map<String, byte[]> drawings) {
    boolean convert = design.unit().metric() != bearings.units().unit().metric();
    Sizing sizing = new Sizing(bearings.units(), convert);
    Workshop shop = new Workshop(new Assembly(), bearings, sizing, drawings, new HashMap<>());
    structure(ALL, design.base().variant()).build(design.base().form(), shop);
    if (!shop.card().blocked()) {
      design.mechanisms().forEach(m -> structure(MECHANISMS, m.variant()).build(m.form(), shop));
    }
    if (!shop.card().blocked()) {
      new FittingReader(design, shop).fit();
    }
    if (!shop.card().blocked()) {
      Embossings.press(structure(ALL, design.base().variant()), design, shop);
    }
    tell(shop);
    Optional<Card> card =
        shop.card().blocked() ? Optional.empty() : Optional.of(shop.card().card(design.title()));
    card.ifPresent(c -> Makeable.check(c, bearings, shop.card()));
    if (shop.card().blocked()) {
      card = Optional.empty();
    }
    return new Built(card, shop.card().problems());
  }

  private static Structure structure(List<Structure> among, String name) {
    return among.stream().filter(s -> s.form().name().equals(name)).findFirst().orElseThrow();
  }

  private static void tell(Workshop shop) {
    List<String> changed = shop.sizing().changed();
    if (!changed.isEmpty()) {
      shop.card()
          .report(
              Problem.notes(
                  "rounded",
                  "",
                  "",
                  "this version was rounded to the marks of its own ruler before anything was built: "
                      + String.join("; ", changed.stream().distinct().limit(8).toList())
                      + (changed.size() > 8 ? "; and " + (changed.size() - 8) + " more" : "")));
    }
  }
}
