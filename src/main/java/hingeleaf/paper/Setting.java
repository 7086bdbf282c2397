package hingeleaf.paper;

import java.text.Normalizer;
import java.util.Map;
import java.util.function.IntPredicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** How plain text becomes set text: fractions of an inch, spaces, and signs that the face lacks. */
final class Setting {
  /** Binary fractions only, as rulers have them; "2/3" or "page 1/4" of other kinds is left. */
  private static final Pattern FRACTION =
      Pattern.compile("(?<![\\d./⁄])(?:(\\d+)[ -])?(\\d{1,2})/(2|4|8|16|32|64)(?![\\d./⁄])");

  private static final Map<String, String> READY =
      Map.of("1/2", "½", "1/4", "¼", "3/4", "¾", "1/8", "⅛", "3/8", "⅜", "5/8", "⅝", "7/8", "⅞");

  private static final String RAISED = "⁰¹²³⁴⁵⁶⁷⁸⁹";
  private static final String LOWERED = "₀₁₂₃₄₅₆₇₈₉";

  private Setting() {}

  static String set(String text, IntPredicate has) {
    String known = plain(text, has) ? text : substituted(text, has);
    String plain = known.replace("g/m2", "g/m²");
    return mayHoldFraction(plain) ? fractions(plain) : plain;
  }

  /** Whether a stroke stands between two figures: quick to tell, and mostly none does. */
  private static boolean mayHoldFraction(String text) {
    for (int i = text.indexOf('/'); i >= 0; i = text.indexOf('/', i + 1)) {
      if (i > 0
          && i + 1 < text.length()
          && isFigure(text.charAt(i - 1))
          && isFigure(text.charAt(i + 1))) {
        return true;
      }
    }
    return false;
  }

  private static boolean isFigure(char c) {
    return c >= '0' && c <= '9';
  }

  private static boolean plain(String text, IntPredicate has) {
    for (int i = 0; i < text.length(); i += Character.charCount(text.codePointAt(i))) {
      int cp = text.codePointAt(i);
      if (cp < ' ' || (cp > '~' && invisible(cp)) || !has.test(cp)) {
        return false;
      }
    }
    return true;
  }

  private static String substituted(String text, IntPredicate has) {
    StringBuilder out = new StringBuilder();
    Normalizer.normalize(text, Normalizer.Form.NFC)
        .codePoints()
        .filter(cp -> !invisible(cp))
        .forEach(cp -> out.appendCodePoint(substitute(cp, has)));
    return out.toString();
  }

  static boolean lacks(String text, IntPredicate has) {
    return !plain(text, has)
        && Normalizer.normalize(text, Normalizer.Form.NFC)
            .codePoints()
            .filter(cp -> !invisible(cp) && !Character.isWhitespace(cp))
            .anyMatch(cp -> cp > 0xFFFF || !has.test(cp));
  }

  private static int substitute(int cp, IntPredicate has) {
    if (Character.isWhitespace(cp) || Character.isISOControl(cp)) {
      return ' ';
    }
    if (cp != 0xFFFD && cp <= 0xFFFF && !Character.isSurrogate((char) cp) && has.test(cp)) {
      return cp;
    }
    return has.test(0x25A1) ? 0x25A1 : '?';
  }

  /** Joiners and selectors, which would each leave a box of their own behind. */
  private static boolean invisible(int cp) {
    int type = Character.getType(cp);
    return type == Character.FORMAT
        || (type == Character.NON_SPACING_MARK)
        || (cp >= 0x1F3FB && cp <= 0x1F3FF);
  }

  private static String fractions(String text) {
    Matcher m = FRACTION.matcher(text);
    StringBuilder out = new StringBuilder();
    while (m.find()) {
      int above = Integer.parseInt(m.group(2));
      int below = Integer.parseInt(m.group(3));
      String set = above % 2 == 1 && above < below ? fraction(m) : m.group();
      m.appendReplacement(out, Matcher.quoteReplacement(set));
    }
    return m.appendTail(out).toString();
  }

  private static String fraction(Matcher m) {
    String whole = m.group(1) == null ? "" : m.group(1);
    String key = m.group(2) + "/" + m.group(3);
    String part = READY.get(key);
    return whole
        + (part != null ? part : digits(m.group(2), RAISED) + "⁄" + digits(m.group(3), LOWERED));
  }

  private static String digits(String number, String face) {
    StringBuilder out = new StringBuilder();
    number.chars().forEach(c -> out.append(face.charAt(c - '0')));
    return out.toString();
  }
}
