package hingeleaf.web;

import io.javalin.http.Context;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.util.Set;
import java.util.function.IntSupplier;
import org.jspecify.annotations.Nullable;

/**
 * Lets in only what the page on this machine asks.
 *
 * <p>The name by which the server is called must be one of this machine, so that no foreign name
 * can be bent to it; a request that tells where it comes from must come from here; whatever touches
 * the maker's files must carry the key.
 */
final class Guard {
  /** The longest body, bytes: a design or a drawing. */
  static final int MOST_BYTES = 1_000_000;

  /** Of a body that is too long so much is heard before the refusal. */
  private static final long MOST_HEARD = 8L * MOST_BYTES;

  /** How long a body may take to arrive, ns. */
  private static final long BODY_NANOS = 10_000_000_000L;

  private final Key key;
  private final IntSupplier port;
  private final String policy;

  /**
   * @param port on which the server listens, known once it does
   * @param scriptHash of the one script that stands in the page: its import map
   */
  Guard(Key key, IntSupplier port, String scriptHash) {
    this.key = key;
    this.port = port;
    this.policy =
        "default-src 'none'; script-src 'self' '"
            + scriptHash
            + "'; style-src 'self'; img-src 'self' blob:; font-src 'self'; connect-src 'self';"
            + " base-uri 'none'; form-action 'none'; frame-ancestors 'none'";
  }

  /** Before every request. */
  void check(Context c) {
    headers(c);
    Set<String> names = names();
    String host = c.header("Host");
    if (host == null || !names.contains(host)) {
      throw new Refusal(403, "this server answers only to its own address on this machine");
    }
    String origin = c.header("Origin");
    if (origin != null && !(origin.startsWith("http://") && names.contains(origin.substring(7)))) {
      throw new Refusal(403, "this came from another site, and is not answered");
    }
    if (crossSite(c.header("Sec-Fetch-Site")) && c.path().startsWith("/api")) {
      throw new Refusal(403, "this came from another site, and is not answered");
    }
    if (c.path().startsWith("/api")) {
      String given = c.header(Key.HEADER);
      if (given == null || !key.opens(given)) {
        throw new Refusal(
            401, "open the page by the whole address that hingeleaf serve printed: it has a key");
      }
    }
  }

  private static boolean crossSite(@Nullable String site) {
    return site != null && !site.equals("same-origin") && !site.equals("none");
  }

  private Set<String> names() {
    int p = port.getAsInt();
    return Set.of("127.0.0.1:" + p, "localhost:" + p);
  }

  private void headers(Context c) {
    c.header("Content-Security-Policy", policy);
    c.header("X-Content-Type-Options", "nosniff");
    c.header("Referrer-Policy", "no-referrer");
    c.header("Cross-Origin-Resource-Policy", "same-origin");
    c.header("Cross-Origin-Opener-Policy", "same-origin");
    c.header("Cache-Control", "no-store");
  }

  /**
   * The body of a request, as long as it is short and comes in time. One that is somewhat too long
   * is heard to its end all the same: who is cut short while still sending never reads why.
   */
  static byte[] body(Context c) {
    if (c.req().getContentLengthLong() > MOST_HEARD) {
      throw tooLong();
    }
    long start = System.nanoTime();
    ByteArrayOutputStream all = new ByteArrayOutputStream();
    byte[] part = new byte[16_384];
    long heard = 0;
    try {
      InputStream in = c.req().getInputStream();
      for (int n = in.read(part); n >= 0; n = in.read(part)) {
        heard += n;
        if (heard <= MOST_BYTES) {
          all.write(part, 0, n);
        }
        if (heard > MOST_HEARD) {
          throw tooLong();
        }
        if (System.nanoTime() - start > BODY_NANOS) {
          throw new Refusal(408, "this took too long to arrive");
        }
      }
    } catch (IOException e) {
      throw new Refusal(400, "this did not arrive whole");
    }
    if (heard > MOST_BYTES) {
      throw tooLong();
    }
    return all.toByteArray();
  }

  private static Refusal tooLong() {
    return new Refusal(413, "this is longer than " + MOST_BYTES / 1_000_000 + " MB");
  }
}
