package hingeleaf.paper;

import hingeleaf.paper.Mark.Weight;
import java.awt.geom.AffineTransform;
import java.awt.geom.GeneralPath;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.EnumMap;
import java.util.Map;
import java.util.function.Function;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;

/**
 * The text face in three cuts, read once from bytes that the caller brings: it measures words and
 * lends its outlines and its files to the writers.
 *
 * <p>Figures all have one width, so columns of numbers line up.
 */
public final class Fonts {
  private static final Map<Weight, String> FILES =
      new EnumMap<>(
          Map.of(
              Weight.REGULAR, "HingeleafSans-Regular.ttf",
              Weight.SEMIBOLD, "HingeleafSans-Semibold.ttf",
              Weight.ITALIC, "HingeleafSans-Italic.ttf"));

  private final Map<Weight, Cut> cuts = new EnumMap<>(Weight.class);

  /** Answers are kept for the signs below this: letters, figures, punctuation, fractions. */
  private static final int KEPT = 0x2400;

  /** 1 where all cuts have the sign, -1 where not, 0 where nobody has asked. */
  private final byte[] had = new byte[KEPT];

  private record Cut(TrueTypeFont font, CmapLookup glyphs, double unitsPerEm) {}

  private Fonts() {}

  /**
   * Reads the face.
   *
   * @param files gives the bytes of a file by its name; {@code HingeleafSans-Regular.ttf} and so
   *     on, which lie beside this class in {@code fonts/}
   */
  public static Fonts read(Function<String, byte[]> files) {
    Fonts fonts = new Fonts();
    FILES.forEach((weight, name) -> fonts.cuts.put(weight, parse(files.apply(name))));
    return fonts;
  }

  private static Cut parse(byte[] bytes) {
    try {
      TrueTypeFont font = new TTFParser().parse(new RandomAccessReadBuffer(bytes));
      return new Cut(font, font.getUnicodeCmapLookup(), font.getUnitsPerEm());
    } catch (IOException e) {
      throw new UncheckedIOException("the text face cannot be read", e);
    }
  }

  /**
   * The words as they are set: spaced and stacked fractions, one kind of space, and a substitute
   * for every sign that the face lacks. Setting set words changes nothing.
   */
  public String set(String text) {
    return Setting.set(text, this::has);
  }

  /** Whether a substitute stands for some sign of these words. */
  public boolean lacks(String text) {
    return Setting.lacks(text, this::has);
  }

  /** Whether all cuts have a sign. Asked for every letter that is set, so the answer is kept. */
  private boolean has(int codePoint) {
    if (codePoint >= KEPT) {
      return lookUp(codePoint);
    }
    if (had[codePoint] == 0) {
      had[codePoint] = (byte) (lookUp(codePoint) ? 1 : -1);
    }
    return had[codePoint] > 0;
  }

  private boolean lookUp(int codePoint) {
    for (Cut cut : cuts.values()) {
      if (cut.glyphs().getGlyphId(codePoint) == 0) {
        return false;
      }
    }
    return true;
  }

  /** Length of a line of words, mm, at a size in mm. */
  public double width(String text, Weight weight, double size) {
    Cut cut = cut(weight);
    String set = set(text);
    double units = 0;
    try {
      for (int i = 0; i < set.length(); i += Character.charCount(set.codePointAt(i))) {
        units += cut.font().getAdvanceWidth(cut.glyphs().getGlyphId(set.codePointAt(i)));
      }
    } catch (IOException e) {
      throw new UncheckedIOException("the text face cannot be read", e);
    }
    return units * size / cut.unitsPerEm();
  }

  /** Outlines of a line of words that starts at 0, 0; y up; one unit is one em. */
  public GeneralPath outline(String text, Weight weight) {
    Cut cut = cut(weight);
    GeneralPath all = new GeneralPath();
    String set = set(text);
    double x = 0;
    try {
      for (int i = 0; i < set.length(); i += Character.charCount(set.codePointAt(i))) {
        int gid = cut.glyphs().getGlyphId(set.codePointAt(i));
        var glyph = cut.font().getGlyph().getGlyph(gid);
        if (glyph != null) {
          var place = AffineTransform.getScaleInstance(1 / cut.unitsPerEm(), 1 / cut.unitsPerEm());
          place.translate(x, 0);
          all.append(glyph.getPath().getPathIterator(place), false);
        }
        x += cut.font().getAdvanceWidth(gid);
      }
    } catch (IOException e) {
      throw new UncheckedIOException("the text face cannot be read", e);
    }
    return all;
  }

  /** For the PDF writer, which embeds it. */
  public TrueTypeFont file(Weight weight) {
    return cut(weight).font();
  }

  private Cut cut(Weight weight) {
    Cut cut = cuts.get(weight);
    if (cut == null) {
      throw new IllegalStateException("no " + weight + " was read");
    }
    return cut;
  }
}
