package hingeleaf.cli;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Pattern;

/** Tells a file of panels from a design before either is read: it is JSON and has that key. */
final class MechanismSniff {
  private static final int ENOUGH = 1_000_000;
  private static final Pattern DESIGN = Pattern.compile("[\"']?hingeleaf[\"']?\\s*:");
  private static final Pattern PANELS = Pattern.compile("\"(panels|folds|units?)\"\\s*:");

  private MechanismSniff() {}

  /** False too for what cannot be read: the reader of designs then says why. */
  static boolean looksLikeOne(Path file) {
    try (InputStream in = Files.newInputStream(file)) {
      String start = new String(in.readNBytes(ENOUGH), StandardCharsets.UTF_8);
      return start.stripLeading().startsWith("{")
          && !DESIGN.matcher(start).find()
          && PANELS.matcher(start).find();
    } catch (IOException e) {
      return false;
    }
  }
}
