package hingeleaf.paper;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Set;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * The names of processing steps against ISO 19593-1:2018 (Graphic technology, use of PDF to
 * associate processing steps and content data, Part 1): seven groups; a type is required for
 * Structural and Positions and must not stand with the others; names of one's own carry a
 * registered prefix and an underscore.
 */
class StepNamesTest {
  private static final Set<String> UNTYPED =
      Set.of("Dimensions", "Braille", "Legend", "White", "Varnish");
  private static final Set<String> STRUCTURAL =
      Set.of(
          "Cutting",
          "PartialCutting",
          "ReversePartialCutting",
          "Creasing",
          "ReverseCreasing",
          "CuttingCreasing",
          "ReverseCuttingCreasing",
          "PartialCuttingCreasing",
          "ReversePartialCuttingCreasing",
          "Drilling",
          "Gluing",
          "FoilStamping",
          "ColdFoilStamping",
          "Embossing",
          "Debossing",
          "Perforating",
          "Bleed",
          "VarnishFree",
          "InkFree",
          "InkVarnishFree",
          "Folding",
          "Punching",
          "Stapling");
  private static final Set<String> POSITIONS =
      Set.of("Hologram", "Barcode", "ContentArea", "CodingMarking", "Imprinting");

  private static boolean allowed(String group, String type) {
    if (group.contains("_")) {
      return true;
    }
    boolean own = type.contains("_");
    return switch (group) {
      case "Structural" -> own || STRUCTURAL.contains(type);
      case "Positions" -> own || POSITIONS.contains(type);
      default -> UNTYPED.contains(group) && type.isEmpty();
    };
  }

  /** The check itself must be able to fail. */
  @ParameterizedTest
  @CsvSource({
    "Structural, Cutting, true",
    "Structural, Embossing, true",
    "Structural, ReverseCreasing, true",
    "Positions, Barcode, true",
    "Legend, '', true",
    "Structural, ABCD_Scoring, true",
    "Structural, Scoring, false", // no such name, and no prefix
    "Structural, cutting, false",
    "Structural, '', false", // a type is required
    "Legend, Cutting, false", // a type must not be there
    "Dimensions, Dimensions, false",
    "Structure, Cutting, false",
    "Positions, '', false",
  })
  void theStandardsList(String group, String type, boolean expected) {
    assertThat(allowed(group, type)).isEqualTo(expected);
  }

  @ParameterizedTest
  @EnumSource(value = Step.class, mode = EnumSource.Mode.EXCLUDE, names = "PLAIN")
  void everyStepHasANameOfTheStandard(Step step) {
    assertThat(allowed(step.group(), step.type())).as(step.group() + "/" + step.type()).isTrue();
    // A name of our own would need a registered prefix, which we have not.
    assertThat(step.group() + step.type()).doesNotContain("_");
  }
}
