package hingeleaf.intake;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import hingeleaf.card.Joint;
import hingeleaf.geom.Vec3;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class MechanismTextTest {
  private static final String GOOD =
      """
      {"unit": "mm, rad",
       "panels": [
        {"id": "left", "outline": [[0,0,0],[-50,0,0],[-50,80,0],[0,80,0]]},
        {"id": "right", "outline": [[0,0,0],[50,0,0],[50,80,0],[0,80,0]], "holes": [[[10,10,0],[20,10,0],[20,20,0]]]}],
       "folds": [
        {"id": "middle", "a": "left", "b": "right", "axis": [[0,0,0],[0,80,0]]}],
       "glue": [],
       "fixed": "left",
       "states": [{"drive": {"middle": 0.5}}]}
      """;

  @Test
  void readsPanelsFoldsAndStates() throws BadInput {
    MechanismFile f = MechanismText.read("card.json", GOOD);
    assertThat(f.mechanism().facets()).extracting(p -> p.id()).containsExactly("left", "right");
    assertThat(f.mechanism().facets().get(1).holes()).hasSize(1);
    assertThat(f.mechanism().fixed()).containsExactly(0);
    assertThat(f.states().get(0).drive()).containsEntry("middle", 0.5);
    assertThat(f.states().get(0).near()).isEmpty();
    assertThat(f.notes()).isEmpty();
  }

  /** 1 in = 25.4 mm exactly (NIST SP 811, 2008, appendix B). */
  @Test
  void turnsInchesAndDegreesIntoMillimetresAndRadians() throws BadInput {
    MechanismFile f = MechanismText.read("c", GOOD.replace("mm, rad", "in,deg"));
    Joint.Hinge h = (Joint.Hinge) f.mechanism().joints().get(0);
    assertThat(h.to()).isEqualTo(new Vec3(0, 80 * 25.4, 0));
    assertThat(f.states().get(0).drive().getOrDefault("middle", 0.0))
        .isCloseTo(0.5 * Math.PI / 180, within(1e-18));
  }

  @Test
  void takesTheOtherSpellingsOfUnit() throws BadInput {
    String units = GOOD.replace("\"unit\": \"mm, rad\"", "\"units\": [\"cm\", \"rad\"]");
    Joint.Hinge h = (Joint.Hinge) MechanismText.read("c", units).mechanism().joints().get(0);
    assertThat(h.to().y()).isEqualTo(800);
    String none = GOOD.replace("\"unit\": \"mm, rad\",", "");
    h = (Joint.Hinge) MechanismText.read("c", none).mechanism().joints().get(0);
    assertThat(h.to().y()).isEqualTo(80);
  }

  @Test
  void takesSeveralRoots() throws BadInput {
    MechanismFile f =
        MechanismText.read(
            "c", GOOD.replace("\"fixed\": \"left\"", "\"fixed\": [\"left\", \"right\"]"));
    assertThat(f.mechanism().fixed()).containsExactly(0, 1);
  }

  @Test
  void notesAFoldThatGlueHoldsShut() throws BadInput {
    MechanismFile f =
        MechanismText.read(
            "c",
            GOOD.replace("\"glue\": []", "\"glue\": [[\"left\",\"right\"],[\"right\",\"left\"]]"));
    assertThat(f.notes()).hasSize(1);
    assertThat(f.notes().get(0).message()).contains("fold middle cannot fold");
    assertThat(f.mechanism().bonds()).hasSize(1);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "[50,80,0],[0,80,0]], \"holes\" | [50,80,3],[0,80,0]], \"holes\" | 4:3 | panel right is not flat",
        "[[0,0,0],[0,80,0]]} | [[0,0,5],[0,80,5]]} | 6:55 | the axis of fold middle lies 5.000 mm off panel left",
        "[[0,0,0],[0,80,0]]} | [[7,0,0],[7,80,0]]} | 6:55 | lies 7.000 mm off panel left",
        "[[0,0,0],[0,80,0]]} | [[0,80,0],[0,80,0]]} | 6:55 | needs two points that are not the same",
        "\"b\": \"right\" | \"b\": \"rihgt\" | 6:38 | that is not there; did you mean \"right\"?",
        "\"b\": \"right\" | \"b\": \"left\" | 6:3 | joins a panel with itself",
        "{\"middle\": 0.5} | {\"midle\": 0.5} | 9:33 | there is no fold \"midle\"; did you mean \"middle\"?",
        "{\"middle\": 0.5} | {\"middle\": 1e999} | 9:34 | should be a finite number",
        "{\"middle\": 0.5} | {\"middle\": \"x\"} | 9:34 | should be a finite number, not \"x\"",
        "{\"middle\": 0.5} | {\"middle\": NaN} | 9:37 | NaN is no number",
        "{\"middle\": 0.5} | 7 | 9:23 | should be an object",
        "\"id\": \"right\" | \"id\": \"left\" | 4:10 | there are two panels \"left\"",
        "\"mm, rad\" | \"furlong\" | 1:10 | no unit known here",
        "\"fixed\": \"left\" | \"fixed\": \"lift\" | 8:11 | did you mean \"left\"?",
        "\"fixed\": \"left\" | \"unit\": \"mm\" | 8:2 | stands here twice",
        "[[0,0,0],[-50,0,0],[-50,80,0],[0,80,0]] | [[0,0,0],[-50,0,0]] | 3:29 | needs three points or more",
        "[[0,0,0],[-50,0,0],[-50,80,0],[0,80,0]] | [[0,0,0],[-50,0,0],[-25,0,0]] | 3:3 | panel left has no area",
        "[[0,0,0],[-50,0,0],[-50,80,0],[0,80,0]] | [[0,0],[-50,0,0],[-50,80,0]] | 3:30 | should be three numbers",
        "\"glue\": [] | \"glue\": [[\"left\"]] | 7:11 | glue joins two panels, this names 1",
        "\"glue\": [] | \"glue\": [[\"left\",\"left\"]] | 7:11 | joins a panel with itself",
      })
  void tellsWhatIsWrongAndWhere(String from, String to, String place, String message) {
    String text = GOOD.replace(from, to);
    assertThat(text).isNotEqualTo(GOOD);
    assertThatThrownBy(() -> MechanismText.read("card.json", text))
        .isInstanceOf(BadInput.class)
        .hasMessageContaining(message)
        .hasMessageStartingWith("card.json:" + place + ": ");
  }

  @Test
  void refusesWhatIsNotAFile() {
    for (String text : new String[] {"", "[", "{}", "{\"panels\": []}", "3", "{\"panels\": {}}"}) {
      assertThatThrownBy(() -> MechanismText.read("x", text)).isInstanceOf(BadInput.class);
    }
  }

  @Test
  void refusesAHundredThousandPanelsWithABound() {
    StringBuilder b = new StringBuilder("{\"panels\": [");
    for (int i = 0; i < 100_000; i++) {
      b.append(i == 0 ? "" : ",");
      b.append("{\"id\":\"p").append(i).append("\",\"outline\":[[0,0,0],[1,0,0],[0,1,0]]}");
    }
    b.append("]}");
    assertThatThrownBy(() -> MechanismText.read("big", b.toString()))
        .hasMessageContaining("100000 panels are too many: at most 20000");
  }
}
