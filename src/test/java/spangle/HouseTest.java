package spangle;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.Architectures.layeredArchitecture;

import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;

/** Keeps the directions of the house: nobody calls back up, and only one room knows OptaPlanner. */
@AnalyzeClasses(packages = "spangle", importOptions = ImportOption.DoNotIncludeTests.class)
class HouseTest {

  @ArchTest
  static final ArchRule LAYERS =
      layeredArchitecture()
          .consideringOnlyDependenciesInLayers()
          .layer("measure")
          .definedBy("spangle.measure..")
          .layer("part")
          .definedBy("spangle.part..")
          .layer("equipment")
          .definedBy("spangle.equipment..")
          .layer("coating")
          .definedBy("spangle.coating..")
          .layer("fit")
          .definedBy("spangle.fit..")
          .layer("plan")
          .definedBy("spangle.plan..")
          .layer("intake")
          .definedBy("spangle.intake..")
          .layer("solve")
          .definedBy("spangle.solve..")
          .layer("audit")
          .definedBy("spangle.audit..")
          .layer("estimate")
          .definedBy("spangle.estimate..")
          .layer("report")
          .definedBy("spangle.report..")
          .layer("desk")
          .definedBy("spangle.desk..")
          .layer("cli")
          .definedBy("spangle.cli..")
          .withOptionalLayers(true)
          .whereLayer("cli")
          .mayNotBeAccessedByAnyLayer()
          .whereLayer("desk")
          .mayOnlyBeAccessedByLayers("cli")
          .whereLayer("intake")
          .mayOnlyBeAccessedByLayers("desk", "cli")
          .whereLayer("solve")
          .mayOnlyBeAccessedByLayers("desk", "cli")
          .whereLayer("audit")
          .mayOnlyBeAccessedByLayers("desk", "cli")
          .whereLayer("estimate")
          .mayOnlyBeAccessedByLayers("desk", "cli")
          .whereLayer("report")
          .mayOnlyBeAccessedByLayers("desk", "cli")
          .whereLayer("plan")
          .mayOnlyBeAccessedByLayers(
              "intake", "solve", "audit", "estimate", "report", "desk", "cli")
          .whereLayer("fit")
          .mayOnlyBeAccessedByLayers(
              "plan", "intake", "solve", "audit", "estimate", "report", "desk", "cli")
          .whereLayer("coating")
          .mayOnlyBeAccessedByLayers(
              "fit", "plan", "intake", "solve", "audit", "estimate", "report", "desk", "cli");

  @ArchTest
  static final ArchRule ONLY_SOLVE_KNOWS_OPTAPLANNER =
      noClasses()
          .that()
          .resideOutsideOfPackage("spangle.solve..")
          .should()
          .dependOnClassesThat()
          .resideInAPackage("org.optaplanner..");

  @ArchTest
  static final ArchRule ONLY_CLI_TALKS_TO_THE_SCREEN =
      noClasses()
          .that()
          .resideOutsideOfPackage("spangle.cli..")
          .should()
          .callMethod(System.class, "exit", int.class)
          .orShould()
          .accessField(System.class, "out")
          .orShould()
          .accessField(System.class, "err");
}
