package hingeleaf.web;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Download;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.assertions.PlaywrightAssertions;
import com.microsoft.playwright.options.AriaRole;
import com.microsoft.playwright.options.BoundingBox;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Pattern;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.condition.EnabledIf;
import org.junit.jupiter.api.io.TempDir;

/** A maker's way through the page, in a real browser against the real server. */
@Timeout(400)
@EnabledIf("chromium")
class PageTest {
  @TempDir Path home;
  private ServedPage server;
  private Browser browser;
  private Page page;

  static boolean chromium() {
    return Files.isExecutable(Path.of("/usr/bin/chromium"));
  }

  @BeforeEach
  void open() {
    PlaywrightAssertions.setDefaultAssertionTimeout(60_000);
    server = new ServedPage(home);
    browser = new Browser(1360, 900);
    page = browser.page;
    page.navigate(server.address());
  }

  @AfterEach
  void end() {
    browser.close();
    server.close();
    assertThat(browser.complaints).isEmpty();
    assertThat(server.bugs).isEmpty();
  }

  private Locator button(String name) {
    return page.getByRole(
        AriaRole.BUTTON, new Page.GetByRoleOptions().setName(name).setExact(true));
  }

  private Locator field(String path) {
    return page.locator(".sheet [data-path=\"" + path + "\"]").first();
  }

  private void openFairWinds() {
    button("Millimetres").last().click();
    button("Open “Fair winds”").click();
    assertThat(field("base.stacked-frames.width")).hasValue("150 mm");
    assertThat(page.locator(".work .stage")).hasAttribute("data-shown", Pattern.compile("\\d+"));
  }

  private String file() throws IOException {
    return Files.readString(home.resolve("fair-winds.yaml"));
  }

  private void waitFor(String inFile) throws IOException, InterruptedException {
    for (int i = 0; i < 300 && !file().contains(inFile); i++) {
      Thread.sleep(100);
    }
    assertThat(file()).contains(inFile);
  }

  @Test
  void aMakersWay() throws Exception {
    openFairWinds();
    field("base.stacked-frames.side").fill("14");
    field("base.stacked-frames.side").press("Enter");
    waitFor("side: 14");
    button("Undo").click();
    waitFor("side: 12");
    field("base.stacked-frames.width").fill("5 km");
    field("base.stacked-frames.width").press("Enter");
    assertThat(page.locator(".refused")).containsText("km");
    field("base.stacked-frames.width").press("Escape");
    foldIt();
    addByDragging();
    mendIt();
    killAndReopen();
    readThePack();
  }

  private void foldIt() {
    assertThat(page.locator(".fold")).hasAttribute("data-ready", Pattern.compile("\\d+"));
    assertThat(page.getByLabel("Which way it lies flat")).containsText("leaning left");
    byte[] made = page.locator(".work .stage canvas").screenshot();
    page.getByLabel("Fold the card from made to flat").fill("1000");
    page.waitForTimeout(800);
    assertThat(page.locator(".work .stage canvas").screenshot()).isNotEqualTo(made);
    page.getByLabel("Fold the card from made to flat").fill("0");
  }

  private void addByDragging() throws IOException, InterruptedException {
    button("Front").click();
    Locator chip = page.locator("[data-shape=circle]");
    chip.scrollIntoViewIfNeeded();
    BoundingBox from = chip.boundingBox();
    BoundingBox stage = page.locator(".work .stage canvas").boundingBox();
    page.mouse().move(from.x + 20, from.y + 15);
    page.mouse().down();
    page.mouse()
        .move(from.x + 60, from.y, new com.microsoft.playwright.Mouse.MoveOptions().setSteps(3));
    page.mouse()
        .move(
            stage.x + stage.width / 2,
            stage.y + stage.height * 0.6,
            new com.microsoft.playwright.Mouse.MoveOptions().setSteps(4));
    page.mouse().up();
    waitFor("name: circle");
    String line = file().lines().filter(l -> l.contains("name: circle")).findFirst().orElse("");
    assertThat(line).contains("on: boat").containsPattern("at: \\[-?\\d");
    button("Undo").click();
    for (int i = 0; i < 100 && file().contains("name: circle"); i++) {
      Thread.sleep(100);
    }
    assertThat(file()).doesNotContain("name: circle");
  }

  private void mendIt() throws IOException, InterruptedException {
    Locator opening = field("base.stacked-frames.frames[2].aperture.circle");
    opening.fill("136");
    opening.press("Enter");
    waitFor("{circle: 136}");
    Locator finding = page.locator("[data-kind=tab-shows]").first();
    assertThat(finding).isVisible();
    finding.getByText("Show me").click();
    assertThat(page.locator(".sheet [data-part=near]")).hasClass(Pattern.compile("lit"));
    finding.getByText("Do it: make the opening").click();
    waitFor("{circle: 126}");
    assertThat(page.locator("[data-kind=tab-shows]")).hasCount(0);
  }

  private void killAndReopen() {
    server.close();
    server = new ServedPage(home);
    page.navigate("about:blank");
    page.navigate(server.address());
    page.locator(".tiles button", new Page.LocatorOptions().setHasText("fair-winds"))
        .first()
        .click();
    assertThat(field("base.stacked-frames.frames[2].aperture.circle")).hasValue("126 mm");
    button("Undo").click();
    assertThat(field("base.stacked-frames.frames[2].aperture.circle")).hasValue("136 mm");
    button("Redo").click();
    assertThat(field("base.stacked-frames.frames[2].aperture.circle")).hasValue("126 mm");
  }

  private void readThePack() throws IOException {
    Locator zip = page.locator("#zip");
    Download download =
        page.waitForDownload(
            new Page.WaitForDownloadOptions().setTimeout(180_000), () -> zip.click());
    Map<String, byte[]> files = new TreeMap<>();
    try (ZipInputStream in =
        new ZipInputStream(new ByteArrayInputStream(Files.readAllBytes(download.path())))) {
      for (ZipEntry e = in.getNextEntry(); e != null; e = in.getNextEntry()) {
        files.put(e.getName(), in.readAllBytes());
      }
    }
    assertThat(files).containsKeys("plan.pdf", "templates.pdf", "pack.json");
    assertThat(new String(files.getOrDefault("pack.json", new byte[0]), StandardCharsets.UTF_8))
        .contains("\"title\":\"Fair winds\"");
    assertThat(
            new String(
                files.getOrDefault("plan.pdf", new byte[0]), 0, 5, StandardCharsets.US_ASCII))
        .isEqualTo("%PDF-");
  }

  @Test
  void byTheKeyboardAlone() throws Exception {
    tabTo("Millimetres", "Enter");
    tabTo("Open “Fair winds”", "Enter");
    assertThat(field("base.stacked-frames.width")).hasValue("150 mm");
    field("base.stacked-frames.tab").focus();
    page.keyboard().press("ArrowDown");
    waitFor("tab: 11");
    assertThat(page.locator(":focus")).hasAttribute("data-path", "base.stacked-frames.tab");
    page.keyboard().press("Control+z");
    waitFor("tab: 12");
    tabTo("Add a cut-out: arch", "Enter");
    waitFor("name: arch, on: back");
    page.getByLabel("Fold the card from made to flat").focus();
    page.keyboard().press("End");
    assertThat(page.getByLabel("Fold the card from made to flat")).hasValue("1000");
  }

  /** Presses Tab until something of this name has the focus, then the key. */
  private void tabTo(String name, String key) {
    assertThat(button(name).last()).isVisible();
    for (int i = 0; i < 200; i++) {
      page.keyboard().press("Tab");
      Object now =
          page.evaluate(
              "() => document.activeElement?.getAttribute('aria-label')"
                  + " ?? document.activeElement?.textContent");
      if (name.equals(now)) {
        page.keyboard().press(key);
        return;
      }
    }
    throw new AssertionError("the Tab key never reaches " + name);
  }

  @Test
  void partsHaveTheColoursOfTheirPapers() throws IOException {
    openFairWinds();
    button("Front").click();
    page.waitForTimeout(1500);
    BufferedImage seen =
        ImageIO.read(new ByteArrayInputStream(page.locator(".work .stage canvas").screenshot()));
    int x = seen.getWidth() / 2;
    int y = seen.getHeight() / 2;
    double perMm = frontWidth(seen, y) / 150.0;
    near(seen, x, y - (int) (68 * perMm), 0x22, 0x32, 0x5a); // near: navy card, above its opening
    near(seen, x + (int) (33 * perMm), y + (int) (2 * perMm), 0xb0, 0x83, 0x52); // sea: kraft card
    near(seen, x - (int) (49 * perMm), y + (int) (3 * perMm), 0xf4, 0xf2, 0xec); // far: white card
  }

  /** How many pixels the navy front is wide, near its top. */
  private static int frontWidth(BufferedImage seen, int middle) {
    int most = 0;
    for (int y = middle / 8; y < middle; y++) {
      int count = 0;
      for (int x = 0; x < seen.getWidth(); x++) {
        int rgb = seen.getRGB(x, y);
        count += (rgb & 255) > (rgb >> 16 & 255) + 25 && (rgb >> 16 & 255) < 90 ? 1 : 0;
      }
      most = Math.max(most, count);
    }
    return most;
  }

  /** Light and shade change a colour by up to a third; its hue stays. */
  private static void near(BufferedImage seen, int x, int y, int r, int g, int b) {
    int rgb = seen.getRGB(x, y);
    int[] is = {rgb >> 16 & 255, rgb >> 8 & 255, rgb & 255};
    int[] paper = {r, g, b};
    double bright = (is[0] + is[1] + is[2]) / (double) (r + g + b);
    assertThat(bright).as("brightness at %d, %d: %06x", x, y, rgb & 0xffffff).isBetween(0.6, 1.35);
    for (int i = 0; i < 3; i++) {
      assertThat(is[i] / bright)
          .as("at %d, %d: %06x", x, y, rgb & 0xffffff)
          .isBetween(paper[i] - 24.0, paper[i] + 24.0);
    }
  }

  @Test
  void noSeriousFaultOfAccessibility() throws Exception {
    String axe = Assets.text("/axe.min.js");
    for (String theme : List.of("light", "dark")) {
      page.evaluate("t => { localStorage.setItem('hingeleaf-theme', t); }", theme);
      page.navigate("about:blank");
      page.navigate(server.address());
      assertThat(page.locator(".tiles").first()).isVisible();
      checkWith(axe, theme + ", start");
    }
    server.post("/api/cards", "{\"from\":\"example\",\"name\":\"fair-winds\"}").body();
    for (String theme : List.of("light", "dark")) {
      page.evaluate("t => { localStorage.setItem('hingeleaf-theme', t); }", theme);
      page.navigate("about:blank");
      page.navigate(server.address());
      page.locator(".tiles button").first().click();
      assertThat(page.locator("#files")).isVisible();
      page.waitForTimeout(500);
      checkWith(axe, theme + ", card");
    }
  }

  @SuppressWarnings("unchecked")
  private void checkWith(String axe, String where) {
    page.evaluate(axe);
    List<String> grave =
        (List<String>)
            page.evaluate(
                "async () => (await axe.run(document, {runOnly: ['wcag2a', 'wcag2aa', 'wcag21aa',"
                    + " 'wcag22aa']})).violations.filter(v => v.impact === 'serious' || v.impact"
                    + " === 'critical').map(v => v.id + ': ' + v.nodes.map(n => n.target + ' ' +"
                    + " n.failureSummary).slice(0, 4).join(' | '))");
    assertThat(grave).as(where).isEmpty();
  }
}
