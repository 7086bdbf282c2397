package hingeleaf.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;

/** Changes through the API: what the file says afterwards, and what is refused. */
@Timeout(120)
class EditTest {
  @TempDir Path home;
  private ServedPage page;
  private String name;
  private int version = 1;

  @BeforeEach
  void serve() throws IOException, InterruptedException {
    page = new ServedPage(home);
    name = page.example("fair-winds");
    page.get("/api/cards/" + name);
  }

  @AfterEach
  void end() {
    page.close();
    assertThat(page.bugs).isEmpty();
  }

  private HttpResponse<String> edit(String unit, String... changes)
      throws IOException, InterruptedException {
    String body = "{\"base\":" + version + ",\"changes\":[" + String.join(",", changes) + "]}";
    HttpResponse<String> answer = page.post("/api/cards/" + name + "/edit?unit=" + unit, body);
    if (answer.statusCode() == 200) {
      version = ServedPage.json(answer).get("version").intValue();
    }
    return answer;
  }

  private static String length(String path, String text) {
    return "{\"op\":\"length\",\"path\":\"" + path + "\",\"text\":\"" + text + "\"}";
  }

  private String file() throws IOException {
    return Files.readString(home.resolve(name));
  }

  @Test
  void onlyTheNumberChanges() throws Exception {
    String before = file();
    assertThat(edit("mm", length("base.stacked-frames.tab", "10 mm")).statusCode()).isEqualTo(200);
    assertThat(file()).isEqualTo(before.replace("    tab: 12 ", "    tab: 10 "));
    assertThat(file()).contains("# tabs folded in, behind their own frame");
  }

  @Test
  void inchesGoIntoAMetricFileWithTheirUnit() throws Exception {
    edit("in", length("base.stacked-frames.width", "6"));
    assertThat(file()).contains("width: 6 in");
    edit("in", length("base.stacked-frames.height", "5 7/8 in"));
    assertThat(file()).contains("height: 5 7/8 in");
  }

  /** What stands in a field is a length that can be read back: 150 mm / 25.4 is 5.9055 in. */
  @Test
  void theOtherSystemIsShownAsItIsTyped() throws Exception {
    String inches = page.get("/api/cards/" + name + "?unit=in").body();
    assertThat(inches).contains("\"text\":\"5.906 in\"").doesNotContain("\"text\":\"about");
    String supper = page.example("harvest-supper");
    String metric = page.get("/api/cards/" + supper + "?unit=mm").body();
    // By the inch of 25.4 mm: 6 1/2 in, 3/8 in.
    assertThat(metric).contains("\"text\":\"165.1 mm\"").contains("\"text\":\"9.525 mm\"");
    assertThat(metric).doesNotContain("\"text\":\"about");
  }

  @Test
  void outOfRangeIsRefusedWithTheReason() throws Exception {
    String before = file();
    HttpResponse<String> far = edit("mm", length("base.stacked-frames.width", "5 m"));
    assertThat(far.statusCode()).isEqualTo(422);
    HttpResponse<String> wide = edit("mm", length("base.stacked-frames.width", "2000"));
    assertThat(wide.statusCode()).isEqualTo(422);
    assertThat(ServedPage.json(wide).get("message").stringValue()).contains("1000");
    HttpResponse<String> words = edit("mm", length("base.stacked-frames.width", "twelve"));
    assertThat(ServedPage.json(words).get("message").stringValue()).contains("twelve");
    assertThat(file()).isEqualTo(before);
  }

  @Test
  void oneRefusedChangeRefusesAll() throws Exception {
    String before = file();
    edit("mm", length("base.stacked-frames.tab", "10"), length("base.stacked-frames.side", "-3"));
    assertThat(file()).isEqualTo(before);
  }

  @Test
  void aFrameTakesItsPartsAlong() throws Exception {
    edit("mm", "{\"op\":\"rename\",\"path\":\"base.stacked-frames.frames[2]\",\"text\":\"reef\"}");
    assertThat(file()).contains("name: reef").contains("on: reef").doesNotContain("on: near");
    edit("mm", "{\"op\":\"move\",\"path\":\"base.stacked-frames.frames[2]\",\"to\":0}");
    assertThat(file().indexOf("name: reef")).isLessThan(file().indexOf("name: far"));
    edit("mm", "{\"op\":\"remove\",\"path\":\"base.stacked-frames.frames[0]\"}");
    assertThat(file()).doesNotContain("reef").doesNotContain("gull").contains("boat");
  }

  @Test
  void twoWindowsDoNotWriteOverEachOther() throws Exception {
    edit("mm", length("base.stacked-frames.tab", "10"));
    version = 1;
    assertThat(edit("mm", length("base.stacked-frames.tab", "11")).statusCode()).isEqualTo(409);
    assertThat(file()).contains("tab: 10 ");
  }

  @Test
  void aMendCuresItsFindingAndNothingElse() throws Exception {
    // Trade case A: the near frame's border of 10 is less than its tab of 12, so 2 mm show; the
    // opening must be 126 mm or less.
    edit(
        "mm",
        "{\"op\":\"put\",\"path\":\"base.stacked-frames.frames[2].aperture\","
            + "\"yaml\":\"{circle: 130}\"}");
    JsonNode found = ServedPage.json(page.get("/api/cards/" + name + "/findings")).get("findings");
    int shows = -1;
    for (int i = 0; i < found.size(); i++) {
      shows = found.get(i).get("kind").stringValue().equals("tab-shows") ? i : shows;
    }
    assertThat(shows).isNotNegative();
    JsonNode mends = ServedPage.json(page.get("/api/cards/" + name + "/mends")).get("mends");
    assertThat(mends.get(shows).get(0).stringValue()).isEqualTo("make the opening 126 mm");
    String body = "{\"base\":" + version + ",\"finding\":" + shows + ",\"mend\":0}";
    JsonNode after = ServedPage.json(page.post("/api/cards/" + name + "/mend?unit=mm", body));
    assertThat(after.get("findings").toString()).doesNotContain("tab-shows");
    assertThat(file()).contains("{circle: 126}");
  }

  @Test
  void aCardThatLeansIsOfferedAStay() throws Exception {
    JsonNode all = ServedPage.json(page.get("/api/cards/" + name + "/findings?whole=yes"));
    JsonNode found = all.get("findings");
    int leans = -1;
    for (int i = 0; i < found.size(); i++) {
      leans = found.get(i).get("kind").stringValue().equals("needs-a-stay") ? i : leans;
    }
    assertThat(leans).isNotNegative();
    assertThat(found.get(leans).get("mendable").booleanValue()).isTrue();
    JsonNode mends = ServedPage.json(page.get("/api/cards/" + name + "/mends")).get("mends");
    assertThat(mends.get(leans).get(0).stringValue()).isEqualTo("add a base tab");
    String body = "{\"base\":" + version + ",\"finding\":" + leans + ",\"mend\":0}";
    page.post("/api/cards/" + name + "/mend?unit=mm", body);
    assertThat(file()).contains("base-tab:");
    JsonNode after = ServedPage.json(page.get("/api/cards/" + name + "/findings?whole=yes"));
    assertThat(after.toString()).doesNotContain("needs-a-stay");
  }

  @Test
  void theLargestCardThatAnEnvelopeTakes() throws Exception {
    HttpResponse<String> made =
        page.post(
            "/api/cards",
            "{\"from\":\"envelope\",\"name\":\"stacked-frames\",\"width\":\"229 mm\","
                + "\"height\":\"162 mm\",\"upright\":false}");
    name = ServedPage.json(made).get("name").stringValue().replace(" ", "%20");
    JsonNode found = ServedPage.json(page.get("/api/cards/" + name + "/findings")).get("findings");
    assertThat(found.toString()).doesNotContain("\"blocks\"").doesNotContain("\"warns\"");
    JsonNode rests = ServedPage.json(page.get("/api/cards/" + name + "/flats")).get("rests");
    double width = rests.get(0).get("width").doubleValue();
    double height = rests.get(0).get("height").doubleValue();
    // Snug room is 3 mm and the thickness (common practice); a few mm are left at most.
    assertThat(width).isBetween(229 - 16.0, 229 - 3.0);
    assertThat(height).isBetween(162 - 16.0, 162 - 3.0);
    HttpResponse<String> small =
        page.post(
            "/api/cards",
            "{\"from\":\"envelope\",\"name\":\"stacked-frames\",\"width\":\"30 mm\","
                + "\"height\":\"30 mm\",\"upright\":false}");
    assertThat(small.statusCode()).isEqualTo(422);
  }
}
