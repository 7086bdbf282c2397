package hingeleaf.paper;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;

/** The text face that is built in: constant bytes of the build, read when first asked for. */
public final class HouseFonts {
  private HouseFonts() {}

  /** The face, parsed anew: keep it. */
  public static Fonts read() {
    return Fonts.read(HouseFonts::bytes);
  }

  private static byte[] bytes(String name) {
    try (InputStream in = HouseFonts.class.getResourceAsStream("fonts/" + name)) {
      if (in == null) {
        throw new IllegalStateException(name + " is missing from the build");
      }
      return in.readAllBytes();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
