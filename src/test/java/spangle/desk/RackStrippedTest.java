package spangle.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import spangle.intake.read.WeekFiles;
import spangle.plan.CarrierRun;
import spangle.report.LoadNote;
import spangle.report.ReportFiles;
import spangle.solve.ProgressListener;
import spangle.solve.SolveOptions;

/** Two racks that are stripped for eight hours after every load, and four loads to hang. */
class RackStrippedTest {
  @TempDir Path folder;

  @Test
  void theSheetSaysSoAndTheListOfRacksShowsWhenEachIsBack() throws IOException {
    String rack =
        Files.readString(Path.of("rack-profiles/flat-rack.yaml"))
            .replace("strip_after_cycles: 5", "strip_after_cycles: 1");
    WeekFiles.rows(
            folder,
            "J-1,Pilot House,LB-20,14,steel,1,plate 1700x700 mm,,,powder,P-GREY,mon 07:00,fri,no,"
                + "no,,,,")
        .put("rack-profiles/flat-rack.yaml", rack)
        .put(
            "shop.yaml",
            WeekFiles.SHOP
                .replace(
                    "profile: flat-rack, owned: 6, in_strip: 1", "profile: flat-rack, owned: 2")
                .replace("      - {id: deep-cart, profile: deep-cart, owned: 3}\n", ""));
    PlanDesk.Made made =
        new PlanDesk()
            .plan(folder, new SolveOptions(60, 400, 1, 1), ProgressListener.NOBODY)
            .made()
            .orElseThrow();

    assertThat(made.findings()).isEmpty();
    List<CarrierRun> runs = CarrierRun.of(made.week().brief(), made.plan());
    assertThat(runs).hasSizeGreaterThan(2).allMatch(CarrierRun::stripped);
    assertThat(CarrierRun.most(runs).count()).isEqualTo(2);
    for (CarrierRun run : runs) {
      List<String> sheet =
          made.report().facts().loads().stream()
              .filter(n -> n.loadId().equals(run.loadId()))
              .map(LoadNote::cautions)
              .findFirst()
              .orElseThrow();
      assertThat(sheet)
          .contains(
              "After this load Flat rack, two faces, number %d goes to be stripped: cycle %d; back %s."
                  .formatted(run.number(), run.cycle(), DayWords.of(run.untilMin() + 480)));
    }
    String page =
        new String(ReportFiles.render(made.report()).get("index.html"), StandardCharsets.UTF_8);
    assertThat(page.contains("at most 2 of 2 loaded or being stripped at once")).isTrue();
    assertThat(page.contains(", then stripped, back ")).isTrue();
  }
}
