package hingeleaf;

import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.lang.syntax.ArchRuleDefinition;
import java.util.Arrays;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** Holds the arrows between packages: who may import whom. No package is exempt. */
class ArchitectureTest {
  private static final JavaClasses CLASSES =
      new ClassFileImporter()
          .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
          .importPackages("hingeleaf");

  /** What each package may import directly; who may import X may import what X may. */
  private static final Map<String, Set<String>> MAY_IMPORT = new TreeMap<>();

  static {
    allow("finding");
    allow("geom");
    allow("measure");
    allow("stock", "measure");
    allow("outline", "geom");
    allow("design", "outline", "measure");
    allow("card", "geom", "stock");
    allow("structure", "card", "design");
    allow("fold", "card");
    allow("sight", "card");
    allow("sheet", "geom", "measure");
    allow("post", "stock", "measure");
    allow("plan", "card", "sheet", "fold");
    allow("price", "plan", "sheet", "post");
    allow("pack", "price", "structure", "sight", "fold", "design", "post", "sheet", "plan");
    allow("mend", "pack");
    allow("paper", "pack");
    allow("intake", "sheet", "card");
    allow("store");
    allow("web", "paper", "mend", "intake", "pack", "store");
    allow("cli", "paper", "mend", "intake", "pack", "store", "web");
  }

  private static void allow(String from, String... to) {
    Set<String> all = new TreeSet<>(Arrays.asList(to));
    all.add("finding");
    for (String next : to) {
      all.addAll(MAY_IMPORT.getOrDefault(next, Set.of()));
    }
    MAY_IMPORT.put(from, all);
  }

  private static String stage(JavaClass c) {
    String[] parts = c.getPackageName().split("\\.");
    return parts.length < 2 ? "" : parts[1];
  }

  @Test
  void everyPackageStandsInTheTable() {
    Set<String> found = CLASSES.stream().map(ArchitectureTest::stage).collect(Collectors.toSet());
    assertThat(MAY_IMPORT.keySet()).containsAll(found);
  }

  @Test
  void importsFollowTheTable() {
    for (Map.Entry<String, Set<String>> row : MAY_IMPORT.entrySet()) {
      String from = row.getKey();
      ArchRuleDefinition.noClasses()
          .that()
          .resideInAPackage("hingeleaf." + from + "..")
          .should()
          .dependOnClassesThat(
              new DescribedPredicate<>("stand outside what " + from + " may import") {
                @Override
                public boolean test(JavaClass target) {
                  return target.getPackageName().startsWith("hingeleaf")
                      && !stage(target).equals(from)
                      && !row.getValue().contains(stage(target));
                }
              })
          .allowEmptyShould(true)
          .check(CLASSES);
    }
  }

  @Test
  void noCycleBetweenPackages() {
    slices().matching("hingeleaf.(*)..").should().beFreeOfCycles().check(CLASSES);
  }

  @Test
  void belowTheDoorsNoFilesClocksOrLoggers() {
    ArchRuleDefinition.noClasses()
        .that()
        .resideOutsideOfPackages("hingeleaf.cli..", "hingeleaf.web..", "hingeleaf.store..")
        .should()
        .dependOnClassesThat()
        .haveFullyQualifiedName("java.nio.file.Files")
        .orShould()
        .dependOnClassesThat()
        .haveFullyQualifiedName("java.io.File")
        .orShould()
        .dependOnClassesThat()
        .resideInAnyPackage("java.util.logging..", "org.slf4j..", "java.time..")
        .orShould()
        .callMethod(System.class, "currentTimeMillis")
        .orShould()
        .callMethod(System.class, "nanoTime")
        .orShould()
        .callMethod(System.class, "getenv", String.class)
        .orShould()
        .callMethod(Math.class, "random")
        .check(CLASSES);
  }

  @Test
  void noGodPackagesByName() {
    ArchRuleDefinition.noClasses()
        .should()
        .resideInAnyPackage("..util..", "..utils..", "..common..", "..helper..")
        .orShould()
        .haveSimpleNameEndingWith("Manager")
        .orShould()
        .haveSimpleNameEndingWith("Helper")
        .orShould()
        .haveSimpleNameEndingWith("Util")
        .check(CLASSES);
  }
}
