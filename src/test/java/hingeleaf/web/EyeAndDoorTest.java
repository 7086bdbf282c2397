package hingeleaf.web;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.assertions.PlaywrightAssertions;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Pattern;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.condition.EnabledIf;
import org.junit.jupiter.api.io.TempDir;

/** The eye and the doors in a real browser, by the keyboard where a hand is not needed. */
@Timeout(200)
@EnabledIf("chromium")
class EyeAndDoorTest {
  /** The near frame's border of 10 leaves 2 of each 12 mm tab to be seen. */
  private static final String CARD =
      """
      hingeleaf: 1
      title: Hatch
      unit: mm
      base:
        stacked-frames:
          width: 150
          height: 150
          stock: white-300
          side: 12
          tab: 12
          frames:
            - {name: near, aperture: {square: 126}, stock: navy-300}
      cut-outs:
        - {name: moon, on: back, at: [50, 0], outline: {square: 20}, stock: cream-220}
      """;

  @TempDir Path home;
  private ServedPage server;
  private Browser browser;
  private Page page;

  static boolean chromium() {
    return PageTest.chromium();
  }

  @BeforeEach
  void open() throws IOException {
    PlaywrightAssertions.setDefaultAssertionTimeout(30_000);
    server = new ServedPage(home);
    Files.writeString(home.resolve("hatch.yaml"), CARD);
    browser = new Browser(1360, 900);
    page = browser.page;
    browser.openCard(server, "hatch.yaml");
  }

  @AfterEach
  void end() {
    browser.close();
    server.close();
    assertThat(browser.complaints).isEmpty();
    assertThat(server.bugs).isEmpty();
  }

  private Locator cell(int right, int above) {
    return page.locator(".eye .pad [data-right='" + right + "'][data-above='" + above + "']");
  }

  @Test
  void theEyeMarksWhatItDoesNotSee() throws IOException {
    assertThat(page.locator(".eye .pad")).hasAttribute("data-ready", Pattern.compile("\\d+"));
    // From far away straight on the tabs of 12 end at the opening's edge of 63: nothing shows.
    page.getByLabel("How far away the eye is").selectOption("from far away");
    assertThat(page.locator(".eye li.none")).isVisible();
    assertThat(cell(0, 0)).hasAccessibleName(Pattern.compile("straight on: nothing amiss"));
    cell(0, 0).focus();
    page.keyboard().press("ArrowRight");
    assertThat(cell(20, 0)).isFocused();
    page.keyboard().press("Enter");
    assertThat(cell(20, 0)).hasAttribute("aria-pressed", "true");
    // From the right the left tab, 12 behind the opening, shows 12 tan 20 = 4.37 mm.
    assertThat(page.locator(".eye li.shows").first()).containsText("left glue tab shows 4.37 mm");
    page.waitForTimeout(500);
    assertThat(marked()).as("pixels of the marks' colour").isGreaterThan(100);
    page.getByText("Put the eye away").click();
    page.waitForTimeout(500);
    assertThat(marked()).isLessThan(20);
    page.locator(".eye li.shows button").first().click();
    assertThat(page.locator(".sheet [data-part=near]")).hasClass(Pattern.compile("lit"));
  }

  /** Pixels of the colour in which what should not show is marked, #c2410c. */
  private int marked() throws IOException {
    BufferedImage seen =
        ImageIO.read(new ByteArrayInputStream(page.locator(".work .stage canvas").screenshot()));
    int count = 0;
    for (int x = 0; x < seen.getWidth(); x++) {
      for (int y = 0; y < seen.getHeight(); y++) {
        int rgb = seen.getRGB(x, y);
        boolean like =
            Math.abs((rgb >> 16 & 255) - 0xc2) < 40
                && Math.abs((rgb >> 8 & 255) - 0x41) < 30
                && (rgb & 255) < 60;
        count += like ? 1 : 0;
      }
    }
    return count;
  }

  @Test
  void aDoorIsHungOpenedMovedAndTakenAway() throws Exception {
    page.getByText("Add a door").click();
    waitFor("door: {name: shutter, on: near");
    Locator slider = page.locator(".doors [data-door=shutter]");
    assertThat(slider).isVisible();
    assertThat(slider).hasAttribute("aria-label", Pattern.compile("Open shutter, which opens"));
    byte[] shut = page.locator(".work .stage canvas").screenshot();
    slider.focus();
    page.keyboard().press("End");
    page.waitForTimeout(500);
    assertThat(page.locator(".work .stage canvas").screenshot()).isNotEqualTo(shut);
    Locator hinge = page.locator(".sheet [data-path='mechanisms[0].door.hinge']").first();
    hinge.selectOption("right");
    waitFor("hinge: right");
    Locator width = page.locator(".sheet [data-path='mechanisms[0].door.width']").first();
    width.focus();
    page.keyboard().press("ArrowDown");
    waitFor("width: 129");
    page.locator("[aria-label='Take away shutter']").click();
    for (int i = 0; i < 100 && file().contains("door:"); i++) {
      Thread.sleep(100);
    }
    assertThat(file()).doesNotContain("door:");
    assertThat(page.locator(".doors")).isHidden();
  }

  private String file() throws IOException {
    return Files.readString(home.resolve("hatch.yaml"));
  }

  private void waitFor(String inFile) throws IOException, InterruptedException {
    for (int i = 0; i < 200 && !file().contains(inFile); i++) {
      Thread.sleep(100);
    }
    assertThat(file()).contains(inFile);
  }
}
