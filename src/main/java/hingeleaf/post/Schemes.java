package hingeleaf.post;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** The posts whose limits come with the program, as constant data on its class path. */
public final class Schemes {
  /** Names in the order in which they are shown. */
  public static final List<String> NAMES =
      List.of("usps", "uk", "germany", "france", "canada", "australia", "ireland", "upu");

  private static final Map<String, String> BY_COUNTRY =
      Map.of(
          "US",
          "usps",
          "GB",
          "uk",
          "UK",
          "uk",
          "DE",
          "germany",
          "FR",
          "france",
          "CA",
          "canada",
          "AU",
          "australia",
          "IE",
          "ireland");

  /** All of them, read anew. */
  public static List<Scheme> all() {
    return NAMES.stream().map(Schemes::named).toList();
  }

  /**
   * One of {@link #NAMES}.
   *
   * @throws IllegalArgumentException where the name is none of them
   */
  public static Scheme named(String name) {
    return SchemeReader.read(bytes(name));
  }

  /** The post of a country by its two letters; the international one where none is kept. */
  public static Scheme forCountry(String country) {
    return named(BY_COUNTRY.getOrDefault(country.toUpperCase(Locale.ROOT), "upu"));
  }

  /** The data file of a post as it is. */
  public static byte[] bytes(String name) {
    if (!NAMES.contains(name)) {
      throw new IllegalArgumentException(
          "post: expected one of " + String.join(", ", NAMES) + ", found " + name);
    }
    try (InputStream in = Schemes.class.getResourceAsStream(name + ".json")) {
      if (in == null) {
        throw new IllegalStateException("the limits of " + name + " are missing in the program");
      }
      return in.readAllBytes();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private Schemes() {}
}
