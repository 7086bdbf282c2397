package hingeleaf.measure;

import java.math.BigInteger;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** Reads one length; see {@link Length#read}. One object reads one text. */
final class LengthReader {
  /** Longer texts are no lengths; this also keeps every pattern here quick. */
  private static final int LONGEST_TEXT = 60;

  private static final int MOST_DIGITS = 12;
  private static final Length FURTHEST = Length.of(10_000, Unit.MM);

  private static final String VULGAR = "¼½¾⅓⅔⅛⅜⅝⅞⅕⅖⅗⅘⅙⅚";
  private static final int[][] VULGAR_VALUES = {
    {1, 4}, {1, 2}, {3, 4}, {1, 3}, {2, 3}, {1, 8}, {3, 8}, {5, 8}, {7, 8}, {1, 5}, {2, 5}, {3, 5},
    {4, 5}, {1, 6}, {5, 6}
  };

  /** whole number and fraction, fraction alone, or decimal; then whatever stands behind. */
  private static final Pattern NUMBER =
      Pattern.compile(
          "(?:(?<whole>\\d++)(?: ?- ?| )(?<top>\\d++) ?/ ?(?<below>\\d++)"
              + "|(?<onlytop>\\d++) ?/ ?(?<onlybelow>\\d++)"
              + "|(?<before>\\d*+) ?(?<vulgar>["
              + VULGAR
              + "])"
              + "|(?<decimal>\\d++(?:[.,]\\d*+)?|[.,]\\d++))");

  /** The same for other programs, in ECMA-262 without look-behind or possessive signs. */
  static final String UNSIGNED = unsigned();

  private static final Map<String, Rational> UNITS = units();

  private final String written;
  private final Unit bare;
  private String rest;

  LengthReader(String text, Unit bare) {
    this.written = text;
    this.bare = bare;
    this.rest = text;
  }

  private static String unsigned() {
    String slash = "\\s*[/\u2044]\\s*";
    String number =
        "(\\d+(\\s*[-\u2013\u2212]\\s*|\\s+)\\d+"
            + slash
            + "\\d+|\\d+"
            + slash
            + "\\d+|\\d*\\s*["
            + VULGAR
            + "]|\\d+([.,]\\d*)?|[.,]\\d+)";
    String metric = "[mM][mM]|[cC][mM]|([mM]illi|[cC]enti)met(re|er)s?";
    String inches = "[iI][nN]\\.?|[iI]nch(es)?|\"|\u2033|\u201D|''";
    String feet = "([fF][tT]\\.?|[fF]oot|[fF]eet|'|\u2032|\u2019)";
    String after = "(\\s*" + number + "\\s*(" + inches + ")?)?";
    return "\\s*" + number + "\\s*(" + metric + "|" + inches + "|" + feet + after + ")?";
  }

  private static Map<String, Rational> units() {
    Map<String, Rational> units = new LinkedHashMap<>();
    Rational foot = Unit.IN.mm().times(Rational.of(12, 1));
    for (String w : List.of("mm", "millimetre", "millimetres", "millimeter", "millimeters")) {
      units.put(w, Unit.MM.mm());
    }
    for (String w : List.of("cm", "centimetre", "centimetres", "centimeter", "centimeters")) {
      units.put(w, Unit.CM.mm());
    }
    for (String w : List.of("in", "inch", "inches", "in.", "\"", "''")) {
      units.put(w, Unit.IN.mm());
    }
    for (String w : List.of("ft", "foot", "feet", "ft.", "'")) {
      units.put(w, foot);
    }
    return units;
  }

  /** A fault on its way out of this class. */
  private static final class Wrong extends Exception {
    private static final long serialVersionUID = 1L;
    private final transient Reading.Fault fault;

    Wrong(String message, String suggestion) {
      super(message, null, false, false);
      this.fault = new Reading.Fault(message, suggestion);
    }
  }

  Reading read() {
    try {
      return new Reading.Read(length());
    } catch (Wrong w) {
      return w.fault;
    }
  }

  private Length length() throws Wrong {
    if (written.length() > LONGEST_TEXT) {
      throw new Wrong("this is too long to be a length", "");
    }
    boolean negative = written.startsWith("-");
    Rational number = bareNumber(negative ? 1 : 0);
    if (number != null) {
      return within(number.times(bare.mm()), negative);
    }
    rest = plain(written);
    if (rest.isEmpty()) {
      throw new Wrong("a length is missing here, such as " + example(), "");
    }
    negative = rest.startsWith("-");
    if (negative || rest.startsWith("+")) {
      rest = rest.substring(1).strip();
    }
    return within(afterSign(), negative);
  }

  private Length within(Rational mm, boolean negative) throws Wrong {
    if (new Length(mm).compareTo(FURTHEST) > 0) {
      throw new Wrong(shown() + " is more than 10 m, too long for any card", "");
    }
    return new Length(negative ? mm.negated() : mm);
  }

  /**
   * What most lengths in a file are, read without any pattern; null for all that is written else.
   */
  private @Nullable Rational bareNumber(int from) {
    long digits = 0;
    long below = 0;
    int n = written.length();
    if (from == n || n - from > MOST_DIGITS) {
      return null;
    }
    for (int i = from; i < n; i++) {
      char c = written.charAt(i);
      if (c == '.' && below == 0 && i > from && i + 1 < n) {
        below = 1;
      } else if (c >= '0' && c <= '9') {
        digits = 10 * digits + (c - '0');
        below *= 10;
      } else {
        return null;
      }
    }
    return Rational.of(digits, Math.max(1, below));
  }

  private String example() {
    return bare == Unit.IN ? "`7 1/2 in`" : "`150 mm`";
  }

  /** Typographic signs as their plain ones, spaces single. */
  private static String plain(String text) {
    return text.replace('\u2212', '-')
        .replace('\u2013', '-')
        .replace('\u2044', '/')
        .replace('\u2032', '\'')
        .replace('\u2019', '\'')
        .replace('\u2033', '"')
        .replace('\u201D', '"')
        .replaceAll("[\\s\u00A0\u2009\u202F]+", " ")
        .strip();
  }

  private Rational afterSign() throws Wrong {
    Rational number = number();
    String unit = unitWord();
    if (unit.isEmpty()) {
      nothingMore();
      return number.times(bare.mm());
    }
    Rational size = unit(unit);
    if (rest.isEmpty()) {
      return number.times(size);
    }
    boolean feet = size.compareTo(Unit.IN.mm()) > 0;
    if (!feet || !rest.matches("[\\d.,].*|[" + VULGAR + "].*")) {
      nothingMore();
    }
    return number.times(size).plus(inchesAfterFeet());
  }

  private Rational inchesAfterFeet() throws Wrong {
    Rational inches = number();
    String unit = unitWord();
    if (!unit.isEmpty() && unit(unit).compareTo(Unit.IN.mm()) != 0) {
      throw new Wrong("after feet come inches, in " + shown(), "");
    }
    nothingMore();
    return inches.times(Unit.IN.mm());
  }

  private void nothingMore() throws Wrong {
    if (!rest.isEmpty()) {
      throw new Wrong("I cannot read `" + rest + "` at the end of " + shown(), "");
    }
  }

  /** Takes letters or foot and inch signs from the front of what is left. */
  private String unitWord() {
    Matcher m = Pattern.compile("[\\p{L}\u00b5]++\\.?|''|[\"']").matcher(rest);
    if (!m.lookingAt()) {
      return "";
    }
    rest = rest.substring(m.end()).strip();
    return m.group();
  }

  private Rational unit(String word) throws Wrong {
    Rational size = UNITS.get(word.toLowerCase(Locale.ROOT));
    if (size == null) {
      String near = NearestWord.to(word, UNITS.keySet()).orElse("");
      throw new Wrong(
          "unknown unit `" + word + "` in " + shown() + "; the units are mm, cm, in and ft", near);
    }
    return size;
  }

  private Rational number() throws Wrong {
    Matcher m = NUMBER.matcher(rest);
    if (!m.lookingAt()) {
      throw new Wrong(shown() + " is not a length, such as " + example(), "");
    }
    checkDigits(m.group());
    String after = rest.substring(m.end());
    if (after.matches("[eE][+-]?\\d.*")) {
      throw new Wrong(shown() + " has an exponent; write the number out, such as " + example(), "");
    }
    if (after.matches("[.,/\\d].*")) {
      throw new Wrong(shown() + " is not a length, such as " + example(), "");
    }
    rest = after.strip();
    return value(m);
  }

  private void checkDigits(String number) throws Wrong {
    long digits = number.chars().filter(Character::isDigit).count();
    if (digits > MOST_DIGITS) {
      throw new Wrong(shown() + " has more than " + MOST_DIGITS + " digits", "");
    }
  }

  private Rational value(Matcher m) throws Wrong {
    String decimal = m.group("decimal");
    if (decimal != null) {
      return decimal(decimal);
    }
    String vulgar = m.group("vulgar");
    if (vulgar != null) {
      String before = m.group("before");
      int[] v = VULGAR_VALUES[VULGAR.indexOf(vulgar)];
      Rational whole = before.isEmpty() ? Rational.ZERO : whole(before);
      return whole.plus(Rational.of(v[0], v[1]));
    }
    String whole = m.group("whole");
    if (whole == null) {
      return fraction(m.group("onlytop"), m.group("onlybelow"));
    }
    Rational part = fraction(m.group("top"), m.group("below"));
    if (part.compareTo(Rational.ONE) >= 0) {
      throw new Wrong("the fraction in " + shown() + " is not less than 1", "");
    }
    return whole(whole).plus(part);
  }

  private static Rational whole(String digits) {
    return new Rational(new BigInteger(digits), BigInteger.ONE);
  }

  private Rational fraction(String top, String below) throws Wrong {
    BigInteger under = new BigInteger(below);
    if (under.signum() == 0) {
      throw new Wrong("the fraction in " + shown() + " has 0 below the line", "");
    }
    return new Rational(new BigInteger(top), under);
  }

  private Rational decimal(String text) throws Wrong {
    int comma = text.indexOf(',');
    if (comma > 0 && text.length() - comma == 4 && !text.startsWith("0,")) {
      String digits = text.replace(",", "");
      throw new Wrong(
          shown() + " may mean two things; write " + digits + " or " + text.replace(',', '.'), "");
    }
    String point = text.replace(',', '.');
    int at = point.indexOf('.');
    String digits = point.replace(".", "");
    int places = at < 0 ? 0 : point.length() - at - 1;
    return new Rational(new BigInteger(digits), BigInteger.TEN.pow(places));
  }

  private String shown() {
    return "`" + written.strip() + "`";
  }
}
