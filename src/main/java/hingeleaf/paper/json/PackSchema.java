package hingeleaf.paper.json;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;

/** The JSON Schema (draft 2020-12) of pack.json. */
public final class PackSchema {
  private PackSchema() {}

  /** The schema as text, constant. */
  public static String text() {
    try (InputStream in =
        PackSchema.class.getResourceAsStream("/hingeleaf/paper/pack.schema.json")) {
      if (in == null) {
        throw new IllegalStateException("the schema is missing from the build");
      }
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
