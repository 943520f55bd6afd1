package spangle;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** Keeps the directions of the house: nobody calls back up, and only one room knows OptaPlanner. */
@AnalyzeClasses(packages = "spangle", importOptions = ImportOption.DoNotIncludeTests.class)
class HouseTest {

  private static final List<String> BELOW_PLAN =
      List.of("measure", "part", "equipment", "coating", "fit");

  private static final List<String> BELOW_FIVE = with(BELOW_PLAN, "plan");

  private static final List<String> BELOW_DESK =
      with(BELOW_FIVE, "intake", "solve", "audit", "estimate", "report");

  /** Each room with the rooms it may use. */
  private static final Map<String, List<String>> MAY_USE = mayUse();

  private static Map<String, List<String>> mayUse() {
    Map<String, List<String>> rooms = new LinkedHashMap<>();
    rooms.put("measure", List.of());
    rooms.put("part", List.of("measure"));
    rooms.put("equipment", List.of("measure"));
    rooms.put("coating", List.of("measure", "part", "equipment"));
    rooms.put("fit", List.of("measure", "part", "equipment", "coating"));
    rooms.put("plan", BELOW_PLAN);
    for (String one : List.of("intake", "solve", "audit", "estimate", "report")) {
      rooms.put(one, BELOW_FIVE);
    }
    rooms.put("desk", BELOW_DESK);
    rooms.put("cli", with(BELOW_DESK, "desk"));
    return rooms;
  }

  private static List<String> with(List<String> rooms, String... more) {
    return Stream.concat(rooms.stream(), Stream.of(more)).toList();
  }

  private static String[] packages(Stream<String> rooms) {
    return rooms.map(room -> "spangle." + room + "..").toArray(String[]::new);
  }

  @ArchTest
  static void everyRoomUsesOnlyWhatLiesBelowIt(JavaClasses house) {
    MAY_USE.forEach(
        (room, below) ->
            noClasses()
                .that()
                .resideInAPackage("spangle." + room + "..")
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage(
                    packages(
                        MAY_USE.keySet().stream()
                            .filter(other -> !other.equals(room) && !below.contains(other))))
                .allowEmptyShould(false)
                .check(house));
  }

  @ArchTest
  static final ArchRule NOBODY_LIVES_OUTSIDE_THE_ROOMS =
      classes()
          .that()
          .doNotHaveSimpleName("package-info")
          .should()
          .resideInAnyPackage(packages(MAY_USE.keySet().stream()));

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
