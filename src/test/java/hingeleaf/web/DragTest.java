package hingeleaf.web;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Mouse;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.assertions.PlaywrightAssertions;
import com.microsoft.playwright.options.AriaRole;
import com.microsoft.playwright.options.BoundingBox;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.condition.EnabledIf;
import org.junit.jupiter.api.io.TempDir;

/**
 * Words, mats and doors are moved by dragging them on the card, and by the keyboard: the design
 * says the new place and is otherwise as its maker wrote it.
 */
@Timeout(300)
@EnabledIf("chromium")
class DragTest {
  /** Each part has a colour that nothing else on the card has, so that it is found by looking. */
  private static final String CARD =
      """
      hingeleaf: 1
      title: Drag # my own title
      unit: mm
      base:
        stacked-frames:
          width: 150
          height: 150
          stock: white-300
          side: 12
          tab: 12
          frames:
            - {name: near, aperture: {rect: [120, 80], at: [0, 30]}}
      mechanisms:
        # the flap below the opening
        - door: {name: flap, on: near, hinge: left, width: 40, height: 30, at: [-20, -40], stock: navy-220} # moved
      mats:
        # no place of its own yet
        - {name: hill, on: back, width: 50, height: 30, stock: red-220} # moved
      cut-outs:
        - {name: scale, on: near, at: [-60, -60], outline: {square: 20}, stock: kraft-220}
      words:
        - {text: Hello, on: near, at: [30, -40], height: 12, colour: "#00a000"} # moved
      """;

  private static final int[] DOOR = {0x22, 0x32, 0x5a};
  private static final int[] SCALE = {0xb0, 0x83, 0x52};
  private static final int[] MAT = {0xb1, 0x28, 0x2d};
  private static final int[] WORDS = {0, 0xa0, 0};

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
    Files.writeString(home.resolve("drag.yaml"), CARD);
    browser = new Browser(1360, 900);
    page = browser.page;
    browser.openCard(server, "drag.yaml");
    page.getByRole(AriaRole.BUTTON, new Page.GetByRoleOptions().setName("Front").setExact(true))
        .click();
    page.waitForTimeout(1000);
  }

  @AfterEach
  void end() {
    browser.close();
    server.close();
    assertThat(browser.complaints).isEmpty();
    assertThat(server.bugs).isEmpty();
  }

  @Test
  void wordsAreDragged() throws Exception {
    drag(find(WORDS), find(SCALE).width / 20, new double[] {20, 15});
    at("words[0]", "{text: Hello, on: near, at: [%s], height", 50, -25);
    back();
  }

  @Test
  void aDoorIsDraggedOnceItWasPicked() throws Exception {
    Seen door = find(DOOR); // once picked it is lit and has another colour
    double perMm = find(SCALE).width / 20;
    pick(door, "flap");
    drag(door, perMm, new double[] {-25, 8});
    at("mechanisms[0].door", "height: 30, at: [%s], stock: navy-220", -45, -32);
    back();
  }

  /** A mat that nobody has moved has no place in the file; then its place is added. */
  @Test
  void aMatIsDraggedOnceItWasPicked() throws Exception {
    Seen mat = find(MAT);
    pick(mat, "hill");
    drag(mat, mat.width / 50, new double[] {-18, 12});
    at("mats[0]", "stock: red-220, at: [%s]}", -18, 12);
    back();
  }

  /** Large parts move only once they were picked, so that turning the card is safe. */
  @Test
  void aDragThatDidNotPickTurnsTheCard() throws Exception {
    drag(find(MAT), 4, new double[] {15, 0});
    drag(find(DOOR), 4, new double[] {15, 0});
    page.waitForTimeout(1500);
    assertThat(file()).isEqualTo(CARD);
  }

  @Test
  void theKeyboardMovesThemToo() throws Exception {
    step("words[0].at[0]", "ArrowUp", 3);
    at("words[0]", "{text: Hello, on: near, at: [%s], height", 33, -40);
    back();
    step("mechanisms[0].door.at[1]", "ArrowDown", 2);
    at("mechanisms[0].door", "height: 30, at: [%s], stock: navy-220", -20, -42);
    back();
    page.locator(".sheet button[data-path='mats[0].at']").focus();
    page.keyboard().press("Enter");
    at("mats[0]", "stock: red-220, at: [%s]}", 0, 0);
    assertThat(page.locator(":focus")).hasAttribute("data-path", "mats[0].at[0]");
    page.keyboard().press("PageDown");
    at("mats[0]", "stock: red-220, at: [%s]}", -10, 0);
    page.keyboard().press("Control+z");
    at("mats[0]", "stock: red-220, at: [%s]}", 0, 0);
    back();
  }

  private void step(String path, String key, int times) {
    page.locator(".sheet [data-path='" + path + "']").first().focus();
    for (int i = 0; i < times; i++) {
      page.keyboard().press(key);
    }
  }

  private void pick(Seen seen, String part) {
    BoundingBox card = page.locator(".work .stage canvas").boundingBox();
    page.mouse().click(card.x + seen.x, card.y + seen.y);
    assertThat(page.locator(".sheet [data-part=" + part + "]")).hasClass(Pattern.compile("lit"));
    page.waitForTimeout(500);
  }

  /** Takes hold of a part in its middle and lets it go so many mm right of and above it. */
  private void drag(Seen seen, double perMm, double[] by) {
    page.locator(".work .stage canvas").scrollIntoViewIfNeeded();
    BoundingBox card = page.locator(".work .stage canvas").boundingBox();
    double x = card.x + seen.x;
    double y = card.y + seen.y;
    page.mouse().move(x, y);
    page.mouse().down();
    page.mouse().move(x + by[0] * perMm, y - by[1] * perMm, new Mouse.MoveOptions().setSteps(6));
    page.mouse().up();
  }

  /**
   * Waits until the part is at a place, to a mm each way that a finger may be off, and holds that
   * all else is as it was, comments too.
   *
   * @param spliced what stands round the place in the file, with %s for the two numbers
   */
  private void at(String part, String spliced, double x, double y)
      throws IOException, InterruptedException {
    Pattern pair =
        Pattern.compile(Pattern.quote(spliced).replace("%s", "\\E(-?[\\d.]+), (-?[\\d.]+)\\Q"));
    for (int i = 0; i < 200 && !near(pair.matcher(file()), x, y); i++) {
      Thread.sleep(100);
    }
    Matcher found = pair.matcher(file());
    assertThat(near(found, x, y)).as("%s is at %s, %s in%n%s", part, x, y, file()).isTrue();
    String place = "at: [" + found.group(1) + ", " + found.group(2) + "]";
    String own = spliced.replace("at: [%s]", place);
    String was =
        CARD.lines()
            .filter(l -> l.contains("# moved") && l.contains(stem(spliced)))
            .findFirst()
            .orElseThrow();
    String is = file().lines().filter(l -> l.contains(own)).findFirst().orElseThrow();
    assertThat(is.replaceFirst("(, )?at: \\[[^]]*]", ""))
        .isEqualTo(was.replaceFirst("(, )?at: \\[[^]]*]", ""));
    assertThat(file()).isEqualTo(CARD.replace(was, is));
    assertThat(page.locator(".sheet [data-path='" + part + ".at[0]" + "']").first())
        .hasValue(found.group(1) + " mm");
  }

  private static String stem(String spliced) {
    return spliced.substring(0, spliced.indexOf(", at:"));
  }

  private static boolean near(Matcher found, double x, double y) {
    return found.find()
        && Math.abs(Double.parseDouble(found.group(1)) - x) <= 1
        && Math.abs(Double.parseDouble(found.group(2)) - y) <= 1;
  }

  /** One undo, and the file is what it was, byte for byte. */
  private void back() throws IOException, InterruptedException {
    page.getByRole(AriaRole.BUTTON, new Page.GetByRoleOptions().setName("Undo").setExact(true))
        .click();
    for (int i = 0; i < 100 && !file().equals(CARD); i++) {
      Thread.sleep(100);
    }
    assertThat(file()).isEqualTo(CARD);
  }

  private String file() throws IOException {
    return Files.readString(home.resolve("drag.yaml"));
  }

  /**
   * Where a colour is seen on the card, in pixels from the corner of the picture of the card; the
   * page may scroll meanwhile.
   *
   * @param width of what is seen of it, in its widest row
   */
  private record Seen(double x, double y, double width) {}

  private Seen find(int[] colour) throws IOException {
    BufferedImage seen =
        ImageIO.read(new ByteArrayInputStream(page.locator(".work .stage canvas").screenshot()));
    double sumX = 0;
    double sumY = 0;
    int count = 0;
    int widest = 0;
    for (int y = 0; y < seen.getHeight(); y++) {
      int row = 0;
      for (int x = 0; x < seen.getWidth(); x++) {
        if (like(seen.getRGB(x, y), colour)) {
          sumX += x;
          sumY += y;
          row++;
        }
      }
      count += row;
      widest = Math.max(widest, row);
    }
    assertThat(count).as("pixels of the part's colour").isGreaterThan(100);
    return new Seen(sumX / count, sumY / count, widest);
  }

  /** Of the same hue; light and shade may change how bright it is. */
  private static boolean like(int rgb, int[] colour) {
    int[] is = {rgb >> 16 & 255, rgb >> 8 & 255, rgb & 255};
    double bright = (is[0] + is[1] + is[2]) / (double) (colour[0] + colour[1] + colour[2]);
    boolean same = bright > 0.6 && bright < 1.5;
    for (int i = 0; i < 3; i++) {
      same &= Math.abs(is[i] / bright - colour[i]) < 20;
    }
    return same;
  }
}
