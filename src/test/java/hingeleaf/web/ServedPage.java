package hingeleaf.web;

import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** A real server for tests, and a client that holds its key. */
final class ServedPage implements AutoCloseable {
  final List<Throwable> bugs = Collections.synchronizedList(new ArrayList<>());
  private final PageServer server;
  private final HttpClient client =
      HttpClient.newBuilder().version(HttpClient.Version.HTTP_1_1).build();

  ServedPage(Path folder) {
    this.server = new PageServer(folder, 0, bugs::add);
  }

  /** What the routes would ask; here only to list them. */
  static java.util.List<Route> routes(Path folder) {
    Desk desk = new Desk(hingeleaf.store.CardFolder.open(folder));
    Reckoner none = Reckoner.patient();
    return Route.all(new StartApi(desk, none, none), new CardApi(desk, none, none), new Assets());
  }

  String address() {
    return server.address();
  }

  int port() {
    return server.port();
  }

  String key() {
    return server.address().substring(server.address().indexOf("key=") + 4);
  }

  HttpRequest.Builder to(String path) {
    return HttpRequest.newBuilder(URI.create("http://127.0.0.1:" + port() + path));
  }

  HttpResponse<String> send(HttpRequest.Builder request) throws IOException, InterruptedException {
    return client.send(request.build(), HttpResponse.BodyHandlers.ofString());
  }

  HttpResponse<byte[]> bytes(String path) throws IOException, InterruptedException {
    return client.send(
        to(path).header("X-Hingeleaf-Key", key()).build(), HttpResponse.BodyHandlers.ofByteArray());
  }

  HttpResponse<String> get(String path) throws IOException, InterruptedException {
    return send(to(path).header("X-Hingeleaf-Key", key()));
  }

  HttpResponse<String> post(String path, String body) throws IOException, InterruptedException {
    return send(
        to(path).header("X-Hingeleaf-Key", key()).POST(HttpRequest.BodyPublishers.ofString(body)));
  }

  static JsonNode json(HttpResponse<String> answer) {
    return new JsonMapper().readTree(answer.body());
  }

  /** A new card from an example; tells the file's name. */
  String example(String name) throws IOException, InterruptedException {
    HttpResponse<String> made =
        post("/api/cards", "{\"from\":\"example\",\"name\":\"" + name + "\"}");
    return json(made).get("name").stringValue();
  }

  @Override
  public void close() {
    server.close();
  }
}
