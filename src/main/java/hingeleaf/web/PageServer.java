package hingeleaf.web;

import hingeleaf.store.CardFolder;
import hingeleaf.store.StoreException;
import io.javalin.Javalin;
import io.javalin.config.JavalinConfig;
import io.javalin.http.Context;
import io.javalin.http.HandlerType;
import java.nio.file.Path;
import java.util.function.Consumer;
import org.eclipse.jetty.server.HttpConfiguration;
import org.eclipse.jetty.util.thread.QueuedThreadPool;

/** The server of the page, listening on this machine's own address and on no other. */
public final class PageServer implements AutoCloseable {
  private static final long IDLE_MILLIS = 15_000;
  private static final int HEADER_BYTES = 8_192;
  private static final int THREADS = 400;

  private final Key key = Key.fresh();
  private final Reckoner reckoner = Reckoner.quick();
  private final Reckoner patient = Reckoner.patient();
  private final Javalin javalin;
  private final Consumer<Throwable> bugs;

  /**
   * Starts the server.
   *
   * @param folder with the maker's cards; made where there is none
   * @param port to listen on; 0 for any free one
   * @param bugs is told of faults that are ours
   * @throws StoreException if the folder cannot be had
   */
  public PageServer(Path folder, int port, Consumer<Throwable> bugs) {
    this.bugs = bugs;
    Desk desk = new Desk(CardFolder.open(folder));
    Assets assets = new Assets();
    this.javalin = Javalin.create(config -> configure(config, desk, assets, port));
    javalin.start();
  }

  private void configure(JavalinConfig config, Desk desk, Assets assets, int port) {
    config.startup.showJavalinBanner = false;
    config.jetty.host = "127.0.0.1";
    config.jetty.port = port;
    config.jetty.threadPool = new QueuedThreadPool(THREADS, 8);
    config.jetty.modifyHttpConfiguration(PageServer::limit);
    config.http.maxRequestSize = Guard.MOST_BYTES;
    config.http.generateEtags = true;
    Guard guard = new Guard(key, this::port, assets.importMapHash());
    config.routes.before(guard::check);
    StartApi start = new StartApi(desk, reckoner, patient);
    CardApi card = new CardApi(desk, reckoner, patient);
    for (Route r : Route.all(start, card, assets)) {
      config.routes.addHttpHandler(HandlerType.findOrCreate(r.method()), r.path(), r.handler());
    }
    config.routes.exception(Refusal.class, (e, c) -> refuse(c, e));
    config.routes.exception(StoreException.class, (e, c) -> refuse(c, stored(e)));
    config.routes.exception(Exception.class, this::bug);
    config.routes.error(404, c -> plain(c, "there is nothing here"));
  }

  private static void limit(HttpConfiguration http) {
    http.setIdleTimeout(IDLE_MILLIS);
    http.setRequestHeaderSize(HEADER_BYTES);
    http.setSendServerVersion(false);
    http.setSendDateHeader(false);
  }

  private static void plain(Context c, String words) {
    if (String.valueOf(c.result()).startsWith("{")) {
      return;
    }
    CardApi.json(c, JsonOut.object(out -> out.put("message", words)));
  }

  private static Refusal stored(StoreException e) {
    int status =
        switch (e.kind()) {
          case MISSING -> 404;
          case NAME -> 422;
          case DISK -> 500;
        };
    return new Refusal(status, e.sentence());
  }

  private static void refuse(Context c, Refusal r) {
    if (r.status() == 413 || r.status() == 408) {
      // What is left of the body is not read, so the connection cannot be used again; say so, or
      // the
      // next request on it is lost.
      c.header("Connection", "close");
    }
    c.status(r.status());
    CardApi.json(
        c,
        JsonOut.object(
            out -> {
              out.put("message", r.getMessage());
              FindingJson.write(out, r.problems());
            }));
  }

  private void bug(Exception e, Context c) {
    bugs.accept(e);
    c.status(500);
    CardApi.json(
        c,
        JsonOut.object(
            out ->
                out.put(
                    "message",
                    "this is our bug; your card is as it was. The terminal tells more")));
  }

  /** The port on which it listens. */
  public int port() {
    return javalin.port();
  }

  /** The address to open, with the key in the part that is never sent nor logged. */
  public String address() {
    return "http://127.0.0.1:" + port() + "/#key=" + key.text();
  }

  @Override
  public void close() {
    javalin.stop();
    reckoner.close();
    patient.close();
  }
}
