package hingeleaf.mend;

import static org.assertj.core.api.Assertions.assertThat;

import hingeleaf.finding.Level;
import hingeleaf.finding.Problem;
import hingeleaf.pack.Pack;
import hingeleaf.pack.SamplePacks;
import hingeleaf.stock.BuiltInBench;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Every kind of finding of contact, doors, accuracy, stand and stays: provoked by a design, then
 * mended by its own advice and gone, with nothing graver than a note in its stead. A kind that the
 * code tells and this table does not have fails the test. Invented designs.
 */
class EveryFindingTest {
  /** What tells such findings; what a pack does not tell has its own tests. */
  private static final List<String> TELLING =
      List.of(
          "pack/WayFindings",
          "pack/StayFindings",
          "pack/DoorFindings",
          "pack/Misfits",
          "structure/StayParts",
          "structure/BaseTab",
          "structure/BellyStrip",
          "structure/SlotLock",
          "structure/FoldDownBrace",
          "structure/Doors",
          "structure/Crowding");

  private static final String TOOL = "";

  /**
   * One kind.
   *
   * @param advice words of its message
   * @param from what a hand changes in the design as the message says; empty where mend does it
   */
  record Row(String kind, String design, String advice, String from, String to) {
    @Override
    public String toString() {
      return kind + ": " + advice;
    }
  }

  private static Row byTool(String kind, String design, String advice) {
    return new Row(kind, design, advice, TOOL, TOOL);
  }

  private static String card(String side, String frames, String more) {
    return "hingeleaf: 1\ntitle: t\nbase:\n  stacked-frames:\n    width: 150\n    height: 100\n"
        + ("    stock: white-300\n    tab: 10\n    side: " + side + "\n    frames:\n" + frames)
        + more;
  }

  private static final String PLAIN =
      "    - {name: far, plain: yes}\n    - {name: near, aperture: {rect: [120, 80]}}\n";

  private static final String ROUND =
      "    - {name: far, aperture: {circle: 60}}\n    - {name: near, aperture: {circle: 70}}\n";

  private static String cutOut(String on, String at, String rect, double raised) {
    String glued = ", stock: navy-220, raised-by: " + raised + ", seen: any}\n";
    return "  - {name: c"
        + (on + at).replaceAll("[^a-z0-9]", "")
        + ", on: "
        + (on + ", at: " + at + ", outline: {rect: " + rect + "}" + glued);
  }

  private static String ornament(String on, String at, String rect, double raised) {
    return card("[15, 15]", PLAIN, "cut-outs:\n" + cutOut(on, at, rect, raised));
  }

  private static String mechanism(String side, String frames, String stay) {
    return card(side, frames, "mechanisms:\n  - " + stay + "\n");
  }

  private static String stay(String stay) {
    return mechanism("15", ROUND, stay.replace("}", ", name: stay, stock: white-300}"));
  }

  private static String door(String keys) {
    return mechanism("15", PLAIN, "door: {name: flap, " + keys + "}");
  }

  private static Stream<Row> rows() {
    return Stream.of(contact(), crowding(), doors(), accuracy(), stays()).flatMap(List::stream);
  }

  private static List<Row> contact() {
    return List.of(
        byTool(
            "jams",
            ornament("far", "[0, 0]", "[128, 60]", 2).replace("tab: 10", "tab: 6"),
            "move it 4.5 mm"),
        byTool("stands-through", ornament("back", "[-10, 4]", "[14, 60]", 16), "or less high"),
        // A frame of 150 on feet 290 apart: its panel swings through the back on the way.
        byTool(
            "crosses",
            card("[45]", "    - {name: near, aperture: {rect: [60, 50]}}\n", "")
                .replace("tab: 10", "tab: 8\n    back: {width: 290}"),
            "cut its panel 290 mm wide"),
        // 39.996 high in an opening of 40: 0.002 below its upper and above its lower edge.
        byTool(
            "way-not-followed",
            ornament("far", "[0, 0]", "[100, 39.996]", 10).replace("120, 80", "130, 40"),
            "leave 0.5 mm between them - move it"));
  }

  private static List<Row> crowding() {
    String two = cutOut("back", "[0, 0]", "[20, 30]", 0) + cutOut("back", "[15, 2]", "[20, 30]", 0);
    return List.of(
        byTool("parts-overlap", card("[15, 15]", PLAIN, "cut-outs:\n" + two), "move it 5 mm"),
        byTool("over-glue-strip", ornament("back", "[60, 0]", "[20, 20]", 0), "move it 5 mm"));
  }

  private static List<Row> doors() {
    String leaves =
        "    - {name: far, aperture: {circle: 60}}\n"
            + "    - {name: near, aperture: {rect: [56, 60]}}\n";
    String pair =
        "{name: one, on: near, hinge: left, width: 30, height: 64, at: [-14, 0], stock: navy-220}"
            + "\n  - door: {name: two, on: near, hinge: right, width: 30, height: 64, at: [14, 0],"
            + " stock: navy-220}";
    String cut = "{name: one, on: near, width: 30, height: 60}\n  - door: ";
    String plain = "    - {name: near, plain: yes}\n";
    return List.of(
        byTool(
            "door-opens-little",
            door("on: back, width: 30, height: 40, at: [30, 0]")
                .replace("far, plain: yes", "far, aperture: {rect: [20, 20], at: [-40, 0]}"),
            "let it reach"),
        byTool("leaves-bind", mechanism("15", leaves, "door: " + pair), "move one"),
        new Row(
            "no-straight-edge",
            door("on: near, shape: arched, hinge: top, width: 30, height: 40, stock: navy-220")
                .replace("aperture: {rect: [120, 80]}", "plain: yes"),
            "hang it at another edge",
            "hinge: top",
            "hinge: bottom"),
        new Row(
            "nothing-to-glue-to",
            door("on: near, width: 30, height: 40, stock: navy-220")
                .replace("aperture: {rect: [120, 80]}", "aperture: {rect: [40, 80]}"),
            "move it",
            "height: 40,",
            "height: 40, at: [-50, 0],"),
        new Row(
            "door-past-panel",
            door("on: far, width: 160, height: 40"),
            "make it smaller",
            "width: 160",
            "width: 14"),
        new Row(
            "doors-overlap",
            mechanism(
                "40",
                plain,
                "door: " + cut + "{name: two, on: near, width: 20, height: 60, at: [20, 0]}"),
            "move it",
            "at: [20, 0]",
            "at: [40, 0]"),
        new Row(
            "no-handle",
            mechanism("40", plain, "door: {name: one, on: near, width: 30, height: 60, handle: 6}"),
            "lift it with a fingernail",
            ", handle: 6",
            ""));
  }

  private static List<Row> accuracy() {
    String one = "    - {name: near, aperture: {rect: [60, 50]}, ";
    return List.of(
        byTool("misfit", card("[12]", one + "width: 150.5}\n", ""), "cut its panel 150 mm wide"),
        byTool(
            "stands-askew",
            card("[12]", one + "side-depths: [12, 17], width: 155}\n", ""),
            "both sides 12 mm deep and a panel 150 mm wide"));
  }

  private static List<Row> stays() {
    String stone = cutOut("back", "[0, -41]", "[12, 12]", 5);
    String flap = "mechanisms:\n  - fold-down-brace: {name: brace, stock: white-300}\n";
    String single = "    - {name: near, aperture: {circle: 60}}\n";
    return List.of(
        byTool("needs-a-stay", card("15", ROUND, ""), "give it a stay"),
        byTool("stay-does-not-hold", stay("fold-down-brace: {on: back}"), "such as a base tab"),
        byTool("stay-holds-taut", stay("belly-strip: {edge: top}"), "a base tab or a slot-lock"),
        byTool(
            "stay-blocked",
            card("15", single, flap + "cut-outs:\n" + stone),
            "move that away from the fold"),
        byTool("stay-at-sides", stay("base-tab: {edge: left}"), "a stay goes at bottom or top"),
        byTool("stay-past-border", stay("base-tab: {tongue: 30}"), "make its tongue 15 mm"),
        byTool("stay-past-border", stay("base-tab: {at: 60}"), "move it 5.5 mm to the left"),
        byTool("stay-past-border", stay("belly-strip: {hook: 40}"), "make its hook 15 mm"),
        byTool("stay-past-border", stay("slot-lock: {height: 40}"), "make its height 15 mm"),
        byTool(
            "stay-past-border",
            card("15", single, flap.replace("white-300", "white-300, tab: 40"))
                .replace("    frames", "    back: {aperture: {circle: 60}}\n    frames"),
            "make its tab 20 mm"),
        byTool(
            "stay-too-small",
            stay("base-tab: {edge: bottom}").replace("side: 15", "side: 4"),
            "the sides at least"),
        byTool("stay-too-small", card("4", single, flap), "make its sides 5 mm or more"),
        byTool(
            "stay-too-small",
            card("15", single.replace("60", "30"), flap.replace("white-300", "white-300, tab: 20"))
                .replace("width: 150", "width: 60"),
            "make its tab 19 mm or less"),
        byTool("no-stage", stay("fold-down-brace: {on: near}"), "hang it on the back"));
  }

  private static Pack pack(String yaml) {
    return SamplePacks.of(yaml, BuiltInBench.metric(), 1);
  }

  private static Set<String> graver(Pack pack) {
    return pack.problems().stream()
        .filter(p -> p.level() != Level.NOTES)
        .map(Problem::kind)
        .collect(Collectors.toSet());
  }

  @ParameterizedTest
  @MethodSource("rows")
  void provoked_thenMendedByItsOwnAdvice(Row row) {
    Pack pack = pack(row.design());
    Problem found =
        pack.problems().stream().filter(p -> p.kind().equals(row.kind())).findFirst().orElse(null);
    assertThat(found).as("%s among %s", row.kind(), pack.problems()).isNotNull();
    assertThat(found.message()).contains(row.advice());
    List<Pack> mended = row.from().isEmpty() ? byTool(pack, found) : List.of(byHand(row));
    for (Pack after : mended) {
      assertThat(after.blocked()).as(after.problems().toString()).isFalse();
      assertThat(after.problems())
          .noneMatch(p -> p.kind().equals(row.kind()) && p.part().equals(found.part()));
      assertThat(graver(pack)).containsAll(graver(after));
    }
  }

  private static List<Pack> byTool(Pack pack, Problem found) {
    List<Mend> mends = Mends.of(pack, found);
    assertThat(mends).as(found.message()).isNotEmpty();
    if (!found.wants().isEmpty()) {
      assertThat(mends.get(0).words()).as("its figures cure it").doesNotContain("instead");
    }
    List<Pack> all = new ArrayList<>();
    for (Mend m : mends) {
      Trial trial = Trial.of(pack.inputs().design().tree(), m.changes());
      assertThat(trial).as(m.words()).isInstanceOf(Trial.Read.class);
      all.add(Trial.pack(pack, ((Trial.Read) trial).design()));
    }
    return all;
  }

  private static Pack byHand(Row row) {
    assertThat(row.design()).contains(row.from());
    return pack(row.design().replace(row.from(), row.to()));
  }

  /**
   * The one kind whose advice changes no design but what hands do: {@link
   * MendsTest#cardThatMustBeLaidFlatInOrder_isTold_andLiesFlatSo} follows it.
   */
  private static final Set<String> BY_ORDER_OF_HANDS = Set.of("flat-in-order");

  private static final Pattern KIND =
      Pattern.compile("\\b(?:problem|warns|notes|blocks|level)\\([^\";{]*\"([a-z]+(?:-[a-z]+)*)\"");

  @Test
  void tableHasEveryKindThatTheCodeTells() throws IOException {
    Set<String> told = new TreeSet<>();
    for (String name : TELLING) {
      String code = Files.readString(Path.of("src/main/java/hingeleaf", name + ".java"));
      Matcher m = KIND.matcher(code);
      while (m.find()) {
        told.add(m.group(1));
      }
    }
    Set<String> known = rows().map(Row::kind).collect(Collectors.toCollection(TreeSet::new));
    known.addAll(BY_ORDER_OF_HANDS);
    assertThat(told).isEqualTo(known);
  }
}
