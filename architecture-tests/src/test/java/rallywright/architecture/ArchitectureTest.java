package rallywright.architecture;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.Architectures.layeredArchitecture;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import org.junit.jupiter.api.Test;

class ArchitectureTest {

  /** Fewer classes than this means that the import found the wrong folder. */
  private static final int FEWEST_CLASSES = 40;

  private static final JavaClasses PROJECT =
      new ClassFileImporter()
          .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
          .importPackages("rallywright");

  @Test
  void import_ofTheProject_findsEnoughClasses() {
    assertThat(PROJECT.size()).isGreaterThan(FEWEST_CLASSES);
  }

  @Test
  void modules_dependInOneDirection() {
    layeredArchitecture()
        .consideringOnlyDependenciesInLayers()
        .layer("engine")
        .definedBy("rallywright.engine..")
        .layer("catalogue")
        .definedBy("rallywright.catalogue..")
        .layer("store")
        .definedBy("rallywright.store..")
        .layer("paper")
        .definedBy("rallywright.paper..")
        .layer("web")
        .definedBy("rallywright.web..")
        .layer("cli")
        .definedBy("rallywright.cli..")
        .whereLayer("cli")
        .mayNotBeAccessedByAnyLayer()
        .whereLayer("web")
        .mayOnlyBeAccessedByLayers("cli")
        .whereLayer("paper")
        .mayOnlyBeAccessedByLayers("web", "cli")
        .whereLayer("store")
        .mayOnlyBeAccessedByLayers("web", "cli")
        .whereLayer("catalogue")
        .mayOnlyBeAccessedByLayers("web", "cli")
        .check(PROJECT);
  }

  @Test
  void enginePackages_formNoCircle() {
    slices().matching("rallywright.engine.(*)..").should().beFreeOfCycles().check(PROJECT);
  }

  @Test
  void webFeatures_formNoCircle() {
    slices().matching("rallywright.web.(*)..").should().beFreeOfCycles().check(PROJECT);
  }

  @Test
  void engine_dependsOnNothingButTheLanguage() {
    classes()
        .that()
        .resideInAPackage("rallywright.engine..")
        .should()
        .onlyDependOnClassesThat()
        .resideInAnyPackage("rallywright.engine..", "java..", "org.jspecify..")
        .check(PROJECT);
  }

  @Test
  void engine_hasNoInputOutputClockOrUnseededRandomness() {
    noClasses()
        .that()
        .resideInAPackage("rallywright.engine..")
        .should()
        .dependOnClassesThat()
        .resideInAnyPackage("java.io..", "java.nio..", "java.net..", "java.sql..")
        .check(PROJECT);
    noClasses()
        .that()
        .resideInAPackage("rallywright.engine..")
        .should()
        .dependOnClassesThat()
        .haveNameMatching("java\\.time\\.Clock")
        .orShould()
        .callMethod(System.class, "currentTimeMillis")
        .orShould()
        .callMethod(System.class, "nanoTime")
        .orShould()
        .callMethod(java.time.Instant.class, "now")
        .orShould()
        .callMethod(java.time.LocalDate.class, "now")
        .orShould()
        .callMethod(Math.class, "random")
        .orShould()
        .callConstructor(java.util.Random.class)
        .check(PROJECT);
  }

  @Test
  void onlyTheStore_knowsSql() {
    noClasses()
        .that()
        .resideOutsideOfPackage("rallywright.store..")
        .should()
        .dependOnClassesThat()
        .resideInAnyPackage("java.sql..", "javax.sql..", "org.springframework.jdbc..")
        .check(PROJECT);
  }
}
