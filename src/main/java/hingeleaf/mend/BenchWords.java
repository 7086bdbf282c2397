package hingeleaf.mend;

import hingeleaf.design.NamedSizes;
import hingeleaf.design.YamlText;
import hingeleaf.measure.MakerUnits;
import hingeleaf.measure.Unit;
import hingeleaf.stock.Die;
import hingeleaf.stock.Grain;
import hingeleaf.stock.Stock;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Papers, dies and lengths as a bench file tells them, each on one line. */
final class BenchWords {
  private static final int DECIMALS = 4;
  private static final int FINE_DECIMALS = 6;
  private static final double SAME_MM = 1e-9;

  private final Unit unit;

  /**
   * @param unit of the file's bare numbers
   */
  BenchWords(Unit unit) {
    this.unit = unit;
  }

  /** A bare number where four decimals tell it, else in mm: a gauge reads finer than a ruler. */
  String length(double mm) {
    MakerUnits units = MakerUnits.of(unit);
    if (units.exact(mm)) {
      return units.number(mm);
    }
    double size = unit.mm().toDouble();
    BigDecimal number = BigDecimal.valueOf(mm / size).setScale(DECIMALS, RoundingMode.HALF_EVEN);
    boolean same = Math.abs(number.doubleValue() * size - mm) < SAME_MM;
    BigDecimal fine = BigDecimal.valueOf(mm).setScale(FINE_DECIMALS, RoundingMode.HALF_EVEN);
    return same ? plain(number) : plain(fine) + " mm";
  }

  /** The same with its unit, for a sentence. */
  String told(double mm) {
    String text = length(mm);
    return text.endsWith(" mm") ? text : text + " " + unit.name().toLowerCase(Locale.ROOT);
  }

  private static String plain(BigDecimal n) {
    return n.signum() == 0 ? "0" : n.stripTrailingZeros().toPlainString();
  }

  String pair(double first, double second) {
    return "[" + length(first) + ", " + length(second) + "]";
  }

  /** A name in a file has no strokes, as those of the built-in dies in inches do. */
  String die(Die d) {
    List<String> all = new ArrayList<>();
    all.add("name: " + YamlText.of(d.name().replace('/', '-')));
    all.add("label: " + YamlText.of(d.label()));
    all.add("shape: " + shape(d.shape()));
    all.add("cut: " + pair(d.cutWidth(), d.cutHeight()));
    all.add("drop-out: " + pair(d.dropOutWidth(), d.dropOutHeight()));
    return "{" + String.join(", ", all) + "}";
  }

  private static String shape(Die.Shape shape) {
    return switch (shape) {
      case CIRCLE -> "circle";
      case ELLIPSE -> "ellipse";
      case RECTANGLE -> "rect";
      case ROUNDED_RECTANGLE -> "rounded";
      case ARCH -> "arch";
      case OTHER -> "other";
    };
  }

  String paper(Stock s) {
    List<String> all = new ArrayList<>();
    all.add("name: " + YamlText.of(s.name()));
    all.add("title: " + YamlText.of(s.title()));
    all.add("kind: " + s.kind().name().toLowerCase(Locale.ROOT));
    all.add("grammage: " + plain(BigDecimal.valueOf(s.grammage())));
    all.add("thickness: " + length(s.thickness()));
    all.add("front: " + YamlText.of(s.faces().front()));
    all.add("back: " + YamlText.of(s.faces().back()));
    all.add("core: " + YamlText.of(s.faces().core()));
    all.add("least-border: " + length(s.leastBorder()));
    all.add("sheets: [" + String.join(", ", s.sheets().stream().map(this::sheet).toList()) + "]");
    return "{" + String.join(", ", all) + "}";
  }

  private String sheet(Stock.Sheet s) {
    List<String> all = new ArrayList<>();
    all.add("size: " + size(s));
    if (s.grain() != Grain.ANY) {
      all.add("grain: " + s.grain().name().toLowerCase(Locale.ROOT));
    }
    if (s.price() > 0) {
      all.add("price: " + plain(BigDecimal.valueOf(s.price())));
    }
    if (s.left() >= 0) {
      all.add("left: " + s.left());
    }
    return "{" + String.join(", ", all) + "}";
  }

  /** By its name where it has one: that is how makers write it. */
  private String size(Stock.Sheet s) {
    for (String name : NamedSizes.SHEETS.names()) {
      NamedSizes.Size named = NamedSizes.SHEETS.get(name).orElseThrow();
      if (Math.abs(named.width().mm() - s.width()) < SAME_MM
          && Math.abs(named.height().mm() - s.height()) < SAME_MM) {
        return YamlText.of(name);
      }
    }
    return pair(s.width(), s.height());
  }
}
