package hingeleaf.paper.book;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Page breaks against trying all of them, and by small examples done by hand. */
class BreaksTest {
  private static final double PAGE = 100;
  private static final double STEP_ROOM = 5;

  private static Slab step(double height) {
    return Slab.of(STEP_ROOM, height, List.of());
  }

  private static Slab line(double height) {
    return Slab.of(0, height, List.of());
  }

  private static List<Integer> counts(List<Slab> slabs) {
    return Breaks.pages(slabs, PAGE).stream().map(List::size).toList();
  }

  @ParameterizedTest
  @CsvSource({
    // heights of steps on a page of 100, 5 between them; how many go on each page; by hand
    "40 40, 2", // 85
    "40 60, 1 1", // 105
    "30 30 30, 3", // 100, just
    "30 30 31, 2 1",
    // Filling every page in turn gives 95, 60, 90; moving one step gives 95, 90, 60.
    "45 45 60 25 60, 2 2 1",
    // In turn: 95, then 30 alone, then 85; two and two are the evener.
    "30 30 30 75 20, 3 2",
    "50 10 30 70 90, 3 1 1", // 100, 70, 90: nothing else goes on three
  })
  void fewAndEven(String heights, String onPages) {
    List<Slab> steps = new ArrayList<>();
    for (String h : heights.split(" ")) {
      steps.add(step(Double.parseDouble(h)));
    }
    List<Integer> expected = new ArrayList<>();
    for (String n : onPages.split(" ")) {
      expected.add(Integer.parseInt(n));
    }
    assertThat(counts(steps)).isEqualTo(expected);
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 2, 3, 4, 5, 6, 7, 8})
  void noOtherBreaksAreBetter(int seed) {
    Random random = new Random(seed);
    for (int round = 0; round < 40; round++) {
      List<Slab> steps = new ArrayList<>();
      int n = 1 + random.nextInt(10);
      for (int i = 0; i < n; i++) {
        steps.add(step(5 + random.nextInt(90)));
      }
      List<Integer> found = counts(steps);
      double best = Double.POSITIVE_INFINITY;
      for (int set = 0; set < 1 << n - 1; set++) {
        best = Math.min(best, cost(steps, broken(set, n)));
      }
      assertThat(cost(steps, found)).isCloseTo(best, within(1e-9));
      assertThat(found).hasSize(inTurn(steps));
    }
  }

  private static List<Integer> broken(int set, int n) {
    List<Integer> pages = new ArrayList<>();
    int size = 1;
    for (int i = 0; i < n - 1; i++) {
      if ((set >> i & 1) == 1) {
        pages.add(size);
        size = 0;
      }
      size++;
    }
    pages.add(size);
    return pages;
  }

  /** Emptiness squared, a third of it on the last page, a hundred for each page. */
  private static double cost(List<Slab> steps, List<Integer> pages) {
    double cost = 0;
    int at = 0;
    for (int p = 0; p < pages.size(); p++) {
      double used = -STEP_ROOM;
      for (int i = 0; i < pages.get(p); i++) {
        used += STEP_ROOM + steps.get(at++).height();
      }
      if (used > PAGE) {
        return Double.POSITIVE_INFINITY;
      }
      double empty = 1 - used / PAGE;
      cost += 100 + (p == pages.size() - 1 ? 0.3 : 1) * empty * empty;
    }
    return cost;
  }

  /** Filling each page in turn needs the fewest pages where the order is given. */
  private static int inTurn(List<Slab> steps) {
    int pages = 1;
    double used = -STEP_ROOM;
    for (Slab s : steps) {
      if (used + STEP_ROOM + s.height() > PAGE) {
        pages++;
        used = -STEP_ROOM;
      }
      used += STEP_ROOM + s.height();
    }
    return pages;
  }

  @Test
  void linesOfOneBlockAreTornOnlyWhereThatSavesAPage() {
    List<Slab> all = new ArrayList<>(List.of(step(85)));
    for (int i = 0; i < 5; i++) {
      all.add(i == 0 ? step(6) : line(6));
    }
    // 85 + 5 + 6 fits, but then four lines would stand alone: less empty, yet torn.
    assertThat(counts(all)).containsExactly(1, 5);
    // Whole they and a step of 70 would take 105 and so a third page; torn 96 and 99.
    all.add(step(70));
    assertThat(counts(all)).containsExactly(2, 5);
  }

  @Test
  void roomAtTheFootGoesBetweenSteps_butNotMuch_andNotOnTheLastPage() {
    List<List<Slab>> pages =
        Breaks.pages(List.of(step(40), step(45), step(40), step(20), step(60)), PAGE);
    assertThat(pages).hasSize(3);
    // 40 + 5 + 45 leaves 10 for one gap, of which 6 are taken.
    assertThat(pages.get(0)).extracting(Slab::before).containsExactly(5.0, 11.0);
    // 40 + 5 + 20 leaves 35.
    assertThat(pages.get(1)).extracting(Slab::before).containsExactly(5.0, 11.0);
    assertThat(pages.get(2)).extracting(Slab::before).containsExactly(5.0);
  }
}
