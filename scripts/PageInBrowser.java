import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.BrowserType;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Playwright;
import hingeleaf.web.PageServer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * Measures the page in a real browser on this machine, drawing in software: how long the first view
 * takes in a browser that has never seen the page, and how much script each step of the slider
 * costs. Run by scripts/page-latency.
 */
public final class PageInBrowser {
  private static final List<String> ARGS =
      List.of("--headless", "--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run",
          "--disable-background-networking", "--disable-component-update", "--disable-sync",
          "--use-gl=angle", "--use-angle=swiftshader", "--enable-unsafe-swiftshader");

  /** Times the slider's own handler for 200 steps there and back, a frame apart. */
  private static final String SLIDE =
      "async () => { const s = document.querySelector('.fold input[type=range]'); const all = [];"
          + " for (let i = 0; i < 200; i++) { s.value = String(1000 * (1 - Math.abs(1 - i / 100)));"
          + " const t = performance.now(); s.dispatchEvent(new Event('input', {bubbles: true}));"
          + " all.push(performance.now() - t); await new Promise(requestAnimationFrame); }"
          + " return all; }";

  /** When the words of the page and the card itself were first to be seen, ms after it was asked. */
  private static final String SHOWN =
      "async () => { const until = async f => { while (!f()) await new Promise(requestAnimationFrame);"
          + " return performance.now(); }; return [await until(() => document.querySelector('h1')),"
          + " await until(() => document.querySelector('.stage canvas')?.width > 300)]; }";

  public static void main(String[] args) throws Exception {
    Path chromium = Path.of("/usr/bin/chromium");
    if (!Files.isExecutable(chromium)) {
      System.out.println("page in a browser: skipped, chromium is not installed");
      return;
    }
    Path folder = Files.createTempDirectory("hingeleaf-browser");
    Map<String, String> env = new HashMap<>(System.getenv());
    env.put("PLAYWRIGHT_SKIP_BROWSER_DOWNLOAD", "1");
    try (PageServer server = new PageServer(folder, 0, Throwable::printStackTrace);
        Playwright playwright = Playwright.create(new Playwright.CreateOptions().setEnv(env))) {
      for (String example : List.of("fair-winds", "harvest-supper", "into-the-wood")) {
        post(server, "{\"from\":\"example\",\"name\":\"" + example + "\"}");
      }
      firstView(playwright, chromium, server, 5);
      slider(playwright, chromium, server);
    }
  }

  private static void post(PageServer server, String body) throws Exception {
    var request =
        java.net.http.HttpRequest.newBuilder(
                java.net.URI.create("http://127.0.0.1:" + server.port() + "/api/cards"))
            .header("X-Hingeleaf-Key", server.address().replaceFirst(".*key=", ""))
            .POST(java.net.http.HttpRequest.BodyPublishers.ofString(body))
            .build();
    java.net.http.HttpClient.newHttpClient()
        .send(request, java.net.http.HttpResponse.BodyHandlers.ofString());
  }

  private static Browser open(Playwright playwright, Path chromium) {
    return playwright
        .chromium()
        .launch(new BrowserType.LaunchOptions().setExecutablePath(chromium).setArgs(ARGS));
  }

  /** Each time a browser of its own; the first warms the server up and is not counted. */
  private static void firstView(Playwright playwright, Path chromium, PageServer server, int times) {
    List<Double> words = new ArrayList<>();
    List<Double> card = new ArrayList<>();
    for (int i = 0; i <= times; i++) {
      try (Browser browser = open(playwright, chromium)) {
        Page page = browser.newPage(new Browser.NewPageOptions().setViewportSize(1360, 900));
        page.navigate(server.address());
        List<?> shown = (List<?>) page.evaluate(SHOWN);
        if (i > 0) {
          words.add(((Number) shown.get(0)).doubleValue());
          card.add(((Number) shown.get(1)).doubleValue());
        }
      }
    }
    tell("first view, words", words);
    tell("first view, card in 3-D", card);
  }

  private static void slider(Playwright playwright, Path chromium, PageServer server) {
    try (Browser browser = open(playwright, chromium)) {
      for (String example : List.of("fair-winds", "harvest-supper", "into-the-wood")) {
        BrowserContext context =
            browser.newContext(new Browser.NewContextOptions().setViewportSize(1360, 900));
        Page page = context.newPage();
        page.navigate(server.address());
        page.locator(".tiles").first().waitFor();
        page.evaluate("c => { location.hash = '#/card/' + c; }", example + ".yaml");
        page.locator(".fold[data-ready]").waitFor();
        List<Double> all = new ArrayList<>();
        ((List<?>) page.evaluate(SLIDE)).forEach(t -> all.add(((Number) t).doubleValue()));
        tell("slider step, " + example, all);
        context.close();
      }
    }
  }

  private static void tell(String what, List<Double> times) {
    Collections.sort(times);
    System.out.printf(
        Locale.ROOT,
        "%-28s median %.1f ms, p95 %.1f ms, worst %.1f ms%n",
        what,
        times.get(times.size() / 2),
        times.get(Math.min(times.size() - 1, times.size() * 95 / 100)),
        times.get(times.size() - 1));
  }
}
