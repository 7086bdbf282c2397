package hingeleaf.cli;

import hingeleaf.store.StoreException;
import hingeleaf.web.PageServer;
import java.awt.Desktop;
import java.io.IOException;
import java.io.PrintWriter;
import java.net.URI;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.CountDownLatch;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Serves the page on this machine until it is stopped. */
@Command(
    name = "serve",
    mixinStandardHelpOptions = true,
    description = "Open the page: the worksheet beside the card, in your browser, on this machine.",
    footer = {
      "",
      "Cards are kept as files in the folder. Stop with Ctrl-C; nothing is lost.",
      "Example: hingeleaf serve --folder cards --open"
    })
final class ServeCommand implements Callable<Integer> {
  @Option(
      names = "--port",
      paramLabel = "N",
      description = "port on this machine; 8517 where left out, 0 for any free one")
  private int port = 8517;

  @Option(
      names = "--folder",
      paramLabel = "DIR",
      description = "where your cards are; the present folder where left out")
  private Path folder = Path.of("");

  @Option(names = "--open", description = "open the browser too")
  private boolean open;

  @Spec private CommandSpec spec = CommandSpec.create();

  @Override
  public Integer call() throws InterruptedException {
    if (port < 0 || port > 65_535) {
      throw new DoorException(Exit.USAGE, "--port takes 0 to 65535, not " + port);
    }
    PrintWriter out = spec.commandLine().getOut();
    PrintWriter err = spec.commandLine().getErr();
    try (PageServer server = new PageServer(folder, port, e -> tell(err, e))) {
      out.println("Open this in your browser; it works on this machine only:");
      out.println(server.address());
      out.flush();
      if (open) {
        browse(server.address(), err);
      }
      new CountDownLatch(1).await();
    } catch (StoreException e) {
      throw new DoorException(Exit.FILES, e.sentence());
    } catch (io.javalin.util.JavalinBindException e) {
      throw new DoorException(
          Exit.FILES, "port " + port + " is taken on this machine - try --port 0");
    }
    return Exit.FINE;
  }

  private static void tell(PrintWriter err, Throwable e) {
    err.println("hingeleaf: this is our bug, please report it:");
    e.printStackTrace(err);
    err.flush();
  }

  private static void browse(String address, PrintWriter err) {
    try {
      if (Desktop.isDesktopSupported() && Desktop.getDesktop().isSupported(Desktop.Action.BROWSE)) {
        Desktop.getDesktop().browse(URI.create(address));
        return;
      }
      new ProcessBuilder(List.of("xdg-open", address)).start();
    } catch (IOException e) {
      Common.talk(err, "The browser could not be opened from here; open the address yourself.");
    }
  }
}
