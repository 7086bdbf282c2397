package hingeleaf.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.NetworkInterface;
import java.net.Socket;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What others on the net, in the browser and in files might try against the server. */
@Timeout(120)
class AttackTest {
  @TempDir Path home;
  private ServedPage page;

  @BeforeEach
  void serve() throws IOException {
    Files.writeString(home.resolve("secret.yaml"), "title: secret");
    page = new ServedPage(home.resolve("cards"));
  }

  @AfterEach
  void end() {
    page.close();
    assertThat(page.bugs).isEmpty();
  }

  /** A request as it goes over the wire, for what a well-bred client would not send. */
  private String raw(String request) throws IOException {
    try (Socket s = new Socket(InetAddress.getLoopbackAddress(), page.port())) {
      s.setSoTimeout(20_000);
      s.getOutputStream().write(request.getBytes(StandardCharsets.ISO_8859_1));
      return new String(s.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    }
  }

  private String get(String path, String host, String more) throws IOException {
    return raw(
        "GET " + path + " HTTP/1.1\r\nHost: " + host + "\r\nConnection: close\r\n" + more + "\r\n");
  }

  private String keyHeader() {
    return "X-Hingeleaf-Key: " + page.key() + "\r\n";
  }

  private String here() {
    return "127.0.0.1:" + page.port();
  }

  @Test
  void listensOnLoopbackAlone() throws IOException {
    for (NetworkInterface n : Collections.list(NetworkInterface.getNetworkInterfaces())) {
      for (InetAddress a : Collections.list(n.getInetAddresses())) {
        if (!a.isLoopbackAddress()) {
          assertThat(reached(a)).as("reached at %s", a).isFalse();
        }
      }
    }
    assertThat(reached(InetAddress.getLoopbackAddress())).isTrue();
  }

  private boolean reached(InetAddress a) {
    try (Socket s = new Socket()) {
      s.connect(new InetSocketAddress(a, page.port()), 1000);
      return true;
    } catch (IOException e) {
      return false;
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"evil.example", "127.0.0.1", "localhost:1", "127.0.0.1.evil.example"})
  void aForeignNameIsNotServed(String host) throws IOException {
    assertThat(get("/", host, "")).startsWith("HTTP/1.1 403");
    assertThat(get("/api/start", host, keyHeader())).startsWith("HTTP/1.1 403");
  }

  @Test
  void anotherSiteIsNotServed() throws IOException {
    assertThat(get("/api/start", here(), keyHeader())).startsWith("HTTP/1.1 200");
    for (String origin : List.of("http://evil.example", "null", "https://" + here(), "http://")) {
      assertThat(get("/api/start", here(), keyHeader() + "Origin: " + origin + "\r\n"))
          .as(origin)
          .startsWith("HTTP/1.1 403");
    }
    assertThat(get("/api/start", here(), keyHeader() + "Sec-Fetch-Site: cross-site\r\n"))
        .startsWith("HTTP/1.1 403");
  }

  @Test
  void withoutTheKeyNothingIsTold() throws IOException, InterruptedException {
    for (Route r : ServedPage.routes(home.resolve("none"))) {
      if (r.path().startsWith("/api")) {
        HttpRequest.Builder request =
            page.to(r.path().replaceAll("\\{\\w+}", "x"))
                .method(r.method(), HttpRequest.BodyPublishers.noBody());
        assertThat(page.send(request).statusCode()).as(r.path()).isEqualTo(401);
        request.header("X-Hingeleaf-Key", "wrong" + page.key());
        assertThat(page.send(request).statusCode()).as(r.path()).isEqualTo(401);
      }
    }
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "/api/cards/../secret.yaml",
        "/api/cards/..%2fsecret.yaml",
        "/api/cards/..%2Fsecret.yaml/design",
        "/api/cards/%2e%2e%2fsecret.yaml/design",
        "/api/cards/..%5csecret.yaml/design",
        "/api/cards/%252e%252e%252fsecret.yaml/design",
        "/api/cards/%2fetc%2fpasswd/design",
        "/api/cards/..;/secret.yaml/design",
        "/api/cards/x%00.yaml/design",
        "/page/../index.html",
        "/page/..%2findex.html",
        "/page/%2e%2e/index.html",
        "/three/..%2fpackage.json",
        "/fonts/..%2fpack.schema.json"
      })
  void noPathLeadsOut(String path) throws IOException {
    String answer = get(path, here(), keyHeader());
    assertThat(answer).matches("(?s)HTTP/1\\.1 4\\d\\d .*");
    assertThat(answer).doesNotContain("title: secret").doesNotContain("root:");
  }

  @Test
  void linksInTheFolderAreNotFollowed() throws IOException, InterruptedException {
    Path cards = home.resolve("cards");
    Files.createSymbolicLink(cards.resolve("link.yaml"), home.resolve("secret.yaml"));
    HttpResponse<String> answer = page.get("/api/cards/link.yaml/design");
    assertThat(answer.statusCode()).isEqualTo(404);
    assertThat(page.get("/api/start").body()).doesNotContain("link.yaml");
  }

  @Test
  void bodiesHaveAnEnd() throws IOException, InterruptedException {
    String name = page.example("fair-winds");
    String path = "/api/cards/" + name + "/edit?unit=mm";
    assertThat(page.post(path, "x".repeat(1_100_000)).statusCode()).isEqualTo(413);
    assertThat(page.post(path, "{").statusCode()).isEqualTo(400);
    assertThat(page.post(path, "[".repeat(100_000)).statusCode()).isEqualTo(400);
    assertThat(
            raw(
                "POST "
                    + path
                    + " HTTP/1.1\r\nHost: "
                    + here()
                    + "\r\n"
                    + keyHeader()
                    + "Content-Length: 99999999999\r\nConnection: close\r\n\r\nx"))
        .startsWith("HTTP/1.1 413");
  }

  @Test
  void drawingsAreReadAsHostile() throws IOException, InterruptedException {
    String bomb =
        "<!DOCTYPE svg [<!ENTITY a \"aaaaaaaaaa\"><!ENTITY b \"&a;&a;&a;&a;&a;&a;&a;&a;\">]>"
            + "<svg xmlns='http://www.w3.org/2000/svg'><path d='&b;'/></svg>";
    String leak =
        "<!DOCTYPE svg [<!ENTITY x SYSTEM 'file:///etc/passwd'>]>"
            + "<svg xmlns='http://www.w3.org/2000/svg'><text>&x;</text></svg>";
    for (String body : List.of(bomb, leak, "no drawing", "<svg/>", "")) {
      HttpResponse<String> answer = page.post("/api/drawings?name=a.svg", body);
      assertThat(answer.statusCode()).as(body).isEqualTo(422);
      assertThat(answer.body()).doesNotContain("root:");
    }
    assertThat(page.post("/api/drawings?name=..%2Fa.svg", square()).statusCode()).isEqualTo(422);
    assertThat(page.post("/api/drawings?name=a.svg", square()).statusCode()).isEqualTo(201);
    assertThat(home.resolve("a.svg")).doesNotExist();
  }

  private static String square() {
    return "<svg xmlns='http://www.w3.org/2000/svg'><path d='M0 0H9V9H0Z'/></svg>";
  }

  @Test
  void thePageRunsNoForeignScript() throws IOException, InterruptedException {
    HttpResponse<String> answer = page.send(page.to("/"));
    String policy = answer.headers().firstValue("Content-Security-Policy").orElse("");
    assertThat(policy)
        .contains("default-src 'none'", "script-src 'self' 'sha256-", "frame-ancestors 'none'")
        .doesNotContain("unsafe")
        .doesNotContain("http:");
    assertThat(answer.body()).doesNotContain(page.key());
    assertThat(answer.body().split("<script", -1)).hasSize(3);
  }

  @Test
  void twoHundredAtOnceAreAnswered() throws Exception {
    String name = page.example("fair-winds");
    page.get("/api/cards/" + name + "?unit=mm");
    ExecutorService crowd = Executors.newFixedThreadPool(200);
    try {
      List<Future<Integer>> answers = new ArrayList<>();
      for (int i = 0; i < 200; i++) {
        answers.add(crowd.submit(() -> page.get("/api/cards/" + name + "?unit=mm").statusCode()));
      }
      for (Future<Integer> f : answers) {
        assertThat(f.get(60, TimeUnit.SECONDS)).isEqualTo(200);
      }
    } finally {
      crowd.shutdownNow();
    }
  }

  @Test
  void slowClientsKeepNobodyWaiting() throws IOException, InterruptedException {
    String name = page.example("fair-winds");
    List<Socket> slow = new ArrayList<>();
    try {
      for (int i = 0; i < 150; i++) {
        Socket s = new Socket(InetAddress.getLoopbackAddress(), page.port());
        slow.add(s);
        String head =
            "POST /api/cards/"
                + name
                + "/edit HTTP/1.1\r\nHost: "
                + here()
                + "\r\n"
                + keyHeader()
                + "Content-Length: 1000\r\n\r\n{";
        s.getOutputStream().write(head.getBytes(StandardCharsets.ISO_8859_1));
      }
      assertThat(page.get("/api/start").statusCode()).isEqualTo(200);
      Socket first = slow.get(0);
      first.setSoTimeout(30_000);
      try (InputStream in = first.getInputStream()) {
        String end = new String(in.readAllBytes(), StandardCharsets.UTF_8);
        assertThat(end).matches("(?s)(HTTP/1\\.1 4\\d\\d .*)?"); // told, or simply let go
      }
    } finally {
      for (Socket s : slow) {
        s.close();
      }
    }
  }
}
