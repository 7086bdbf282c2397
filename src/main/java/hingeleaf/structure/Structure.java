package hingeleaf.structure;

import hingeleaf.design.Form;
import hingeleaf.design.Values;
import java.util.List;

/** A base that a card can be built on, or a mechanism added to it, with its parameter table. */
public interface Structure {
  /** The table; its name is the word by which designs choose the structure. */
  Form form();

  /**
   * Builds it into an assembly: pieces, joins, roots, named panels, and every problem found.
   *
   * @param values what the design says under {@link #form}
   */
  void build(Values values, Workshop workshop);

  /**
   * The named parts of the base whose panels may be pressed with an embossing folder.
   *
   * @param values what the design says under {@link #form}
   */
  default List<Values> pressable(Values values) {
    return List.of();
  }
}
