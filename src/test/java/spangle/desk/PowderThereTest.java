package spangle.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import spangle.intake.read.WeekFiles;
import spangle.plan.PlannedLoad;
import spangle.solve.ProgressListener;
import spangle.solve.SolveOptions;

/** Powder that comes on Wednesday at 10:00 is sprayed on Wednesday from 10:00. */
class PowderThereTest {
  private static final int WED_10 = 2 * 1440 + 600;
  private static final String ROW =
      "J-1,Pilot House,LB-20,400,steel,3,plate 160x120 mm,,,powder,P-GREY,mon 07:00,fri,no,no,,,,";
  private static final String OTHERS =
      WeekFiles.COATINGS.substring(
          WeekFiles.COATINGS.indexOf("  - id: P-BLACK"), WeekFiles.COATINGS.indexOf("zinc:"));

  @TempDir Path folder;

  /** The booth of a shop with one powder only is a booth like any other. */
  @ParameterizedTest
  @ValueSource(strings = {"one coating", "several"})
  void nothingIsSprayedBeforeItsPowderIsThere(String coatings) {
    String text = WeekFiles.COATINGS.replace("kg: 42.5", "kg: 0");
    WeekFiles.rows(folder, ROW)
        .put("coatings.yaml", coatings.equals("several") ? text : text.replace(OTHERS, ""))
        .put(
            "shop.yaml",
            WeekFiles.SHOP.replace(
                "    - {from: P-BLACK, to: P-GREY, minutes: 40, why: specks last spring}\n",
                "    []\n"));

    PlanDesk.Made made =
        new PlanDesk()
            .plan(folder, new SolveOptions(60, 400, 1, 1), ProgressListener.NOBODY)
            .made()
            .orElseThrow();

    assertThat(made.findings()).isEmpty();
    List<PlannedLoad.PlannedVisit> sprayed =
        made.plan().batches().stream()
            .flatMap(b -> b.loads().stream())
            .flatMap(l -> l.visits().stream())
            .filter(v -> v.stationId().equals("booth"))
            .toList();
    assertThat(sprayed)
        .isNotEmpty()
        .allSatisfy(v -> assertThat(v.startMin()).isGreaterThanOrEqualTo(WED_10));
  }
}
