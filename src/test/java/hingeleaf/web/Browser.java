package hingeleaf.web;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.BrowserType;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Playwright;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;

/** A real browser without a window, drawing in software. */
final class Browser implements AutoCloseable {
  private final Playwright playwright;
  private final com.microsoft.playwright.Browser chromium;
  private final BrowserContext context;
  final Page page;

  /** What the page's own scripts complained of. */
  final List<String> complaints = new ArrayList<>();

  Browser(int width, int height) {
    playwright =
        Playwright.create(
            new Playwright.CreateOptions().setEnv(Map.of("PLAYWRIGHT_SKIP_BROWSER_DOWNLOAD", "1")));
    chromium =
        playwright
            .chromium()
            .launch(
                new BrowserType.LaunchOptions()
                    .setExecutablePath(Path.of("/usr/bin/chromium"))
                    .setArgs(
                        List.of(
                            "--headless",
                            "--no-sandbox",
                            "--disable-gpu",
                            "--disable-quic",
                            "--no-first-run",
                            "--disable-background-networking",
                            "--disable-component-update",
                            "--disable-sync",
                            "--use-gl=angle",
                            "--use-angle=swiftshader",
                            "--enable-unsafe-swiftshader")));
    context =
        chromium.newContext(
            new com.microsoft.playwright.Browser.NewContextOptions()
                .setViewportSize(width, height)
                .setReducedMotion(com.microsoft.playwright.options.ReducedMotion.REDUCE));
    page = context.newPage();
    page.setDefaultTimeout(60_000);
    page.onPageError(complaints::add);
  }

  /** Opens one of the cards in the folder, by its file, and waits until it is shown. */
  void openCard(ServedPage server, String file) {
    page.navigate(server.address());
    assertThat(page.locator(".tiles").first()).isVisible();
    page.evaluate("file => { location.hash = '#/card/' + file; }", file);
    assertThat(page.locator(".work .stage")).hasAttribute("data-shown", Pattern.compile("\\d+"));
  }

  @Override
  public void close() {
    context.close();
    chromium.close();
    playwright.close();
  }
}
