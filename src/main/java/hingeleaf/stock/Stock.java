package hingeleaf.stock;

import java.util.List;

/**
 * A material that pieces are cut from.
 *
 * @param name the word that designs use for it, such as {@code white-300}
 * @param title as it is called on the plan, such as "white card 300 g/m2"
 * @param kind card or acetate
 * @param grammage g/m2 (ISO 536)
 * @param thickness mm of a single sheet (ISO 534); measured by the maker where they have a gauge
 * @param faces colours
 * @param sheets the sizes in which it is bought or lies in the drawer; may be empty
 * @param leastBorder narrowest strip, in mm, that this stock bears beside an opening
 */
public record Stock(
    String name,
    String title,
    Kind kind,
    double grammage,
    double thickness,
    Faces faces,
    List<Sheet> sheets,
    double leastBorder) {
  /** What a stock is. */
  public enum Kind {
    CARD,
    ACETATE
  }

  public Stock {
    sheets = List.copyOf(sheets);
    if (!(grammage > 0) || !(thickness > 0)) {
      throw new IllegalArgumentException(name + ": grammage and thickness must be more than 0");
    }
  }

  /** The same paper, measured anew; mm, more than 0. */
  public Stock thick(double measured) {
    return new Stock(name, title, kind, grammage, measured, faces, sheets, leastBorder);
  }

  /** Whether light and eyes go through it. */
  public boolean clear() {
    return kind == Kind.ACETATE;
  }

  /**
   * The two faces and the core of a paper, each as {@code #rrggbb}.
   *
   * @param core what shows at a cut or embossed and sanded edge
   */
  public record Faces(String front, String back, String core) {
    public static Faces alike(String colour) {
      return new Faces(colour, colour, colour);
    }
  }

  /**
   * A size of sheet.
   *
   * @param name as the maker calls it, such as "A4"
   * @param width mm
   * @param height mm
   * @param grain of this sheet as it lies
   * @param price of one in the bench's money; 0 where not told
   * @param left how many are in the drawer; -1 where more can be bought
   */
  public record Sheet(
      String name, double width, double height, Grain grain, double price, int left) {}
}
