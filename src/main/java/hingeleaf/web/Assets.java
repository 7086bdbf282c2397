package hingeleaf.web;

import io.javalin.http.Context;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Base64;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The files of the page itself, from the build; a name here can lead to no other place. */
final class Assets {
  private static final String THREE = "/META-INF/resources/webjars/three/0.181.1/";
  private static final Pattern NAME = Pattern.compile("[a-z0-9-]+\\.(js|css|svg)");
  private static final Map<String, String> KINDS =
      Map.of("js", "text/javascript", "css", "text/css", "svg", "image/svg+xml");
  private static final Map<String, String> THREES =
      Map.of(
          "three.module.min.js", "build/three.module.min.js",
          "three.core.min.js", "build/three.core.min.js",
          "OrbitControls.js", "examples/jsm/controls/OrbitControls.js");
  private static final Pattern MAP =
      Pattern.compile("<script type=\"importmap\">(.*?)</script>", Pattern.DOTALL);

  private final String page = text("/hingeleaf/web/index.html");

  /** The hash by which the import map in the page may run, {@code sha256-...}. */
  String importMapHash() {
    Matcher m = MAP.matcher(page);
    if (!m.find()) {
      throw new IllegalStateException("the page has no import map");
    }
    try {
      byte[] hash =
          MessageDigest.getInstance("SHA-256").digest(m.group(1).getBytes(StandardCharsets.UTF_8));
      return "sha256-" + Base64.getEncoder().encodeToString(hash);
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException(e);
    }
  }

  void page(Context c) {
    c.contentType("text/html; charset=utf-8").result(page);
  }

  void file(Context c) {
    String name = c.pathParam("file");
    if (!NAME.matcher(name).matches()) {
      throw missing();
    }
    String kind = KINDS.getOrDefault(name.substring(name.lastIndexOf('.') + 1), "text/plain");
    send(c, "/hingeleaf/web/page/" + name, kind + "; charset=utf-8");
  }

  void font(Context c) {
    String name = c.pathParam("file");
    if (!name.matches("HingeleafSans-(Regular|Italic|Semibold)\\.ttf")) {
      throw missing();
    }
    send(c, "/hingeleaf/paper/fonts/" + name, "font/ttf");
  }

  void three(Context c) {
    String file = THREES.get(c.pathParam("file"));
    if (file == null) {
      throw missing();
    }
    send(c, THREE + file, "text/javascript; charset=utf-8");
  }

  private static Refusal missing() {
    return new Refusal(404, "there is no such file in the page");
  }

  private static void send(Context c, String resource, String kind) {
    c.header("Cache-Control", "max-age=0, must-revalidate");
    c.contentType(kind).result(bytes(resource));
  }

  static String text(String resource) {
    return new String(bytes(resource), StandardCharsets.UTF_8);
  }

  static byte[] bytes(String resource) {
    try (InputStream in = Assets.class.getResourceAsStream(resource)) {
      if (in == null) {
        throw missing();
      }
      return in.readAllBytes();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
