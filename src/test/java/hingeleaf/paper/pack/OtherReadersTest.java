package hingeleaf.paper.pack;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import hingeleaf.pack.Pack;
import hingeleaf.pack.SamplePacks;
import hingeleaf.paper.Fonts;
import hingeleaf.paper.HouseFonts;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/**
 * The files of a pack as programs of other makers read them: DXF by python3-ezdxf, PDF by poppler
 * and by python3-pypdf. {@code ./verify} installs them; where one is missing its tests are skipped
 * with a sentence.
 */
class OtherReadersTest {
  /** Of several python3 the one that has the packages of the system. */
  private static final List<String> PYTHONS = List.of("/usr/bin/python3", "python3");

  @TempDir private static Path dir;
  private static final Fonts FONTS = HouseFonts.read();

  @BeforeAll
  static void makePacks() throws IOException {
    write("fair", SamplePacks.example("fair-winds.yaml"));
    write("harvest", SamplePacks.example("harvest-supper.yaml"));
    String pressed =
        SamplePacks.stack("").replace("{square: 126}}", "{square: 126}, emboss: emboss-150}");
    write("pressed", SamplePacks.of(pressed, hingeleaf.stock.BuiltInBench.metric(), 1));
  }

  private static void write(String name, Pack pack) throws IOException {
    for (Map.Entry<String, byte[]> file : PackFiles.of(pack, FONTS).entrySet()) {
      Path to = dir.resolve(name).resolve(file.getKey());
      Files.createDirectories(to.getParent());
      Files.write(to, file.getValue());
    }
  }

  private static byte[] run(List<String> command) throws IOException {
    Path out = Files.createTempFile(dir, "out", ".txt");
    Process p =
        new ProcessBuilder(command)
            .redirectOutput(out.toFile())
            .redirectError(ProcessBuilder.Redirect.DISCARD)
            .start();
    try {
      if (!p.waitFor(60, TimeUnit.SECONDS)) {
        p.destroyForcibly();
        throw new IOException(command + " does not end");
      }
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IOException(e);
    }
    if (p.exitValue() != 0) {
      throw new IOException(command + " ended with " + p.exitValue());
    }
    return Files.readAllBytes(out);
  }

  private static boolean works(List<String> command) {
    try {
      run(command);
      return true;
    } catch (IOException e) {
      return false;
    }
  }

  private static String python(String module) {
    String found =
        PYTHONS.stream()
            .filter(p -> works(List.of(p, "-c", "import " + module)))
            .findFirst()
            .orElse("");
    assumeTrue(
        !found.isEmpty(),
        "python3-" + module + " is not installed: no other program reads these files here");
    return found;
  }

  private static JsonNode read(String module, String script, Path file) throws IOException {
    Path source = dir.resolve(script);
    try (InputStream in = OtherReadersTest.class.getResourceAsStream(script)) {
      Files.write(source, java.util.Objects.requireNonNull(in).readAllBytes());
    }
    byte[] json = run(List.of(python(module), source.toString(), file.toString()));
    return new JsonMapper().readTree(new String(json, StandardCharsets.UTF_8));
  }

  /** Sums by hand from the designs: lengths and areas of all that is on one layer, mm. */
  @ParameterizedTest
  @CsvSource({
    // the outline of 198 x 150 and a circle of 90
    "fair, far, CUTTING, 2, 978.743, 36061.73",
    "fair, middle, CUTTING, 2, 1029.009, 38524.73", // ... and a circle of 106
    "fair, near, CUTTING, 2, 1072.991, 41009.73", // ... and a circle of 120
    "fair, far, CREASING, 4, 600, 0", // four scores of 150
    "fair, near, CREASING, 4, 600, 0",
    "fair, back, CUTTING, 1, 600, 22500",
    "fair, sea, CUTTING, 1, 544, 18352", // 124 x 148
    "fair, message, CUTTING, 1, 576, 20736", // 144 x 144
    "harvest, pane, CUTTING, 1, 336.55, 7016.115", // 3 5/8 x 3 in
    "harvest, dusk, CUTTING, 1, 495.3, 14112.875", // 6 1/4 x 3 1/2 in
    "harvest, barn, CREASING, 4, 660.4, 0", // four scores of 6 1/2 in
  })
  void ezdxfReadsThePieces(
      String pack, String piece, String layer, int many, double length, double area)
      throws IOException {
    JsonNode dxf = read("ezdxf", "read_dxf.py", dir.resolve(pack + "/pieces/" + piece + ".dxf"));
    assertThat(dxf.get("version").asString()).isEqualTo("AC1009");
    assertThat(dxf.get("errors").asInt()).isZero();
    double sum = 0;
    double covered = 0;
    int count = 0;
    for (JsonNode e : dxf.get("entities")) {
      if (e.get("layer").asString().equals(layer)) {
        count++;
        sum += e.get("length").asDouble();
        covered += e.get("area").asDouble();
      }
    }
    assertThat(count).isEqualTo(many);
    // Circles are drawn as chords that leave them by at most 0.01 mm.
    assertThat(sum).isCloseTo(length, within(0.1));
    assertThat(covered).isCloseTo(area, within(3.0));
  }

  /** ISO 216 and ANSI/ASME Y14.1, in points of 1/72 in. */
  @ParameterizedTest
  @CsvSource({
    "fair/plan.pdf, 595.276, 841.890",
    "fair/templates.pdf, 595.276, 841.890",
    "pressed/plan.pdf, 595.276, 841.890",
    "pressed/templates.pdf, 595.276, 841.890",
    "harvest/plan.pdf, 612, 792",
    "harvest/templates.pdf, 612, 792",
  })
  void popplerFindsPagesOfTheRightSize(String file, double width, double height)
      throws IOException {
    needPoppler();
    String info =
        new String(
            run(List.of("pdfinfo", "-f", "1", "-l", "99", dir.resolve(file).toString())),
            StandardCharsets.UTF_8);
    List<String> sizes = info.lines().filter(l -> l.matches("Page +\\d+ size:.*")).toList();
    assertThat(sizes).isNotEmpty();
    for (String size : sizes) {
      String[] words = size.substring(size.indexOf(':') + 1).strip().split("\\s+");
      assertThat(Double.parseDouble(words[0])).isCloseTo(width, within(0.02));
      assertThat(Double.parseDouble(words[2])).isCloseTo(height, within(0.02));
    }
  }

  private static void needPoppler() {
    assumeTrue(
        works(List.of("pdfinfo", "-v")) && works(List.of("pdftoppm", "-v")),
        "poppler-utils is not installed: no other program draws these pages here");
  }

  /** Ten dots to the millimetre: whole lines of these lengths in mm must be on the page. */
  @ParameterizedTest
  @CsvSource({
    "fair/plan.pdf, 1, 100", // the check bars
    "fair/plan.pdf, 1, 101.6",
    "harvest/plan.pdf, 1, 100",
    "harvest/plan.pdf, 1, 101.6",
    "fair/templates.pdf, 1, 100",
    "fair/templates.pdf, 1, 101.6",
    "fair/templates.pdf, 1, 150", // the back
    "harvest/templates.pdf, 1, 101.6",
    "harvest/templates.pdf, 1, 165.1", // the back, 6 1/2 in
  })
  void popplerDrawsLinesOfTheRightLength(String file, int page, double mm) throws IOException {
    needPoppler();
    byte[] pgm =
        run(
            List.of(
                "pdftoppm",
                "-r",
                "254",
                "-gray",
                "-f",
                "" + page,
                "-l",
                "" + page,
                dir.resolve(file).toString()));
    assertThat(darkRuns(pgm)).anyMatch(run -> Math.abs(run - 10 * mm) <= 6);
  }

  /** Lengths of the dark runs of all rows of a PGM picture, in dots. */
  private static Set<Integer> darkRuns(byte[] pgm) {
    int at = 0;
    int[] head = new int[3];
    for (int n = -1; n < 3; n++) {
      int start = at;
      while (!Character.isWhitespace(pgm[at])) {
        at++;
      }
      if (n >= 0) {
        head[n] = Integer.parseInt(new String(pgm, start, at - start, StandardCharsets.US_ASCII));
      }
      at++;
    }
    Set<Integer> runs = new TreeSet<>();
    for (int y = 0; y < head[1]; y++) {
      int run = 0;
      for (int x = 0; x < head[0]; x++) {
        boolean dark = (pgm[at + y * head[0] + x] & 0xff) < 140;
        if (!dark && run > 0) {
          runs.add(run);
        }
        run = dark ? run + 1 : 0;
      }
    }
    return runs;
  }

  /** Names of ISO 19593-1:2018: groups, and the types of Structural that templates use. */
  @ParameterizedTest
  @CsvSource({
    "fair, Structural, Cutting",
    "fair, Structural, Creasing",
    "fair, Structural, Gluing",
    "fair, Dimensions, ''",
    "fair, Legend, ''",
    "harvest, Structural, Cutting",
    "harvest, Structural, Creasing",
    "pressed, Structural, Embossing",
  })
  void pypdfFindsTheProcessingSteps(String pack, String group, String type) throws IOException {
    JsonNode pdf = read("pypdf", "read_pdf.py", dir.resolve(pack + "/templates.pdf"));
    List<String> found = new ArrayList<>();
    for (JsonNode g : pdf.get("groups")) {
      found.add(g.get("group").asString() + "/" + g.get("type").asString());
    }
    assertThat(found).contains(group + "/" + type).doesNotHaveDuplicates();
    assertThat(pdf.get("images").asInt()).as("no pictures on cut layers").isZero();
  }

  @Test
  void pypdfFindsNoLayersInThePlan_whichIsForReading() throws IOException {
    JsonNode pdf = read("pypdf", "read_pdf.py", dir.resolve("fair/plan.pdf"));
    assertThat(pdf.get("groups")).isEmpty();
  }

  @Test
  void everySpotColourOverprints_asPypdfReadsIt() throws IOException {
    for (String pack : List.of("fair", "harvest", "pressed")) {
      JsonNode pdf = read("pypdf", "read_pdf.py", dir.resolve(pack + "/templates.pdf"));
      Map<String, String> spots = new HashMap<>();
      for (JsonNode s : pdf.get("spots")) {
        spots.put(s.asString(), s.asString());
      }
      // ISO 19593-1:2018: a spot colour, not one of these, set to overprint.
      assertThat(spots.keySet())
          .contains("Cutting")
          .doesNotContain("All", "None", "Cyan", "Magenta", "Yellow", "Black");
      assertThat(pdf.get("overprints").asBoolean()).isTrue();
    }
  }
}
