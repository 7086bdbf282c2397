import hingeleaf.web.PageServer;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;

/**
 * Measures how long the server takes for changes of a card: 200 of them by one client, after 60 to
 * warm up, for each example. Run by scripts/page-latency.
 */
public final class PageLatency {
  private static final int WARM = 60;
  private static final int EDITS = 200;

  public static void main(String[] args) throws Exception {
    Path folder = Files.createTempDirectory("hingeleaf-latency");
    try (PageServer server = new PageServer(folder, 0, Throwable::printStackTrace)) {
      for (String example : List.of("fair-winds", "harvest-supper", "into-the-wood")) {
        new PageLatency(server, example).run();
      }
    }
  }

  private final HttpClient client = HttpClient.newBuilder().version(HttpClient.Version.HTTP_1_1).build();
  private final PageServer server;
  private final String example;

  private PageLatency(PageServer server, String example) {
    this.server = server;
    this.example = example;
  }

  private HttpResponse<String> send(String method, String path, String body) throws Exception {
    String key = server.address().substring(server.address().indexOf("key=") + 4);
    HttpRequest request =
        HttpRequest.newBuilder(URI.create("http://127.0.0.1:" + server.port() + "/api" + path))
            .header("X-Hingeleaf-Key", key)
            .method(method, HttpRequest.BodyPublishers.ofString(body))
            .build();
    HttpResponse<String> answer = client.send(request, HttpResponse.BodyHandlers.ofString());
    if (answer.statusCode() >= 300) {
      throw new IllegalStateException(answer.statusCode() + " " + answer.body());
    }
    return answer;
  }

  private void run() throws Exception {
    send("POST", "/cards", "{\"from\":\"example\",\"name\":\"" + example + "\"}");
    String card = "/cards/" + example + ".yaml";
    send("GET", card + "?unit=mm", "");
    List<Double> times = new ArrayList<>();
    for (int i = 0; i < WARM + EDITS; i++) {
      int base = i + 1;
      double width = (example.startsWith("into") ? 170 : example.startsWith("harvest") ? 165 : 150) + i % 17 * 0.5;
      String change =
          "{\"base\":" + base + ",\"changes\":[{\"op\":\"length\",\"path\":\"base.stacked-frames.width\",\"text\":\""
              + (width + (i / 17 % 2) * 0.25) + " mm\"}]}";
      long start = System.nanoTime();
      send("POST", card + "/edit?unit=mm", change);
      if (i >= WARM) {
        times.add((System.nanoTime() - start) / 1e6);
      }
    }
    Collections.sort(times);
    System.out.printf(
        Locale.ROOT,
        "%-16s card and front findings: median %.0f ms, p95 %.0f ms, worst %.0f ms%n",
        example,
        times.get(times.size() / 2),
        times.get(times.size() * 95 / 100),
        times.get(times.size() - 1));
  }
}
