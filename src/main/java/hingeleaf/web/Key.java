package hingeleaf.web;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.SecureRandom;
import java.util.Base64;

/**
 * What the page shows to be let in. It is made anew by every server, told in the part of the
 * address that browsers never send, and carried in a header that no other site can set.
 */
final class Key {
  static final String HEADER = "X-Hingeleaf-Key";

  private final byte[] bytes;
  private final String text;

  private Key(String text) {
    this.text = text;
    this.bytes = text.getBytes(StandardCharsets.US_ASCII);
  }

  static Key fresh() {
    byte[] random = new byte[24];
    new SecureRandom().nextBytes(random);
    return new Key(Base64.getUrlEncoder().withoutPadding().encodeToString(random));
  }

  /** For the address that is handed to the user, and for nothing else. */
  String text() {
    return text;
  }

  /** Compares in a time that tells nothing of where the texts differ. */
  boolean opens(String given) {
    return MessageDigest.isEqual(bytes, given.getBytes(StandardCharsets.UTF_8));
  }

  @Override
  public String toString() {
    return "a key";
  }
}
