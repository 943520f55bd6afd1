package spangle.desk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import spangle.audit.Audit;
import spangle.estimate.Purchase;
import spangle.intake.brief.BriefMaker;
import spangle.intake.brief.PreparedWeek;
import spangle.intake.read.Besides;
import spangle.intake.read.WeekReader;
import spangle.plan.Lot;
import spangle.plan.Plan;
import spangle.plan.PlannedBatch;
import spangle.plan.PlannedLoad;
import spangle.solve.ProgressListener;
import spangle.solve.SolveOptions;
import spangle.solve.Solver;

/**
 * The harbour week with the zinc 40 mm under its mark on Monday and filled up on Wednesday 14:00.
 */
class BathLevelTest {
  @TempDir static Path folder;

  private static final PreparedWeek USUAL = week(Optional.empty());
  private static PreparedWeek low = USUAL;
  private static Plan plan = quick(USUAL);

  private static PreparedWeek week(Optional<Path> overlay) {
    return BriefMaker.prepare(
        WeekReader.read(Path.of("samples/harbour-week"), Besides.overlay(overlay))
            .input()
            .orElseThrow());
  }

  private static Plan quick(PreparedWeek week) {
    return new Solver()
        .solve(week.brief(), new SolveOptions(60, 20_000, 1, 1), ProgressListener.NOBODY);
  }

  @BeforeAll
  static void sink() throws Exception {
    Path overlay = folder.resolve("low.yaml");
    Files.writeString(
        overlay,
        """
        title: low
        shop:
          lines:
            - id: zinc
              stations:
                - {id: kettle, level_mm: 40}
        """);
    low = week(Optional.of(overlay));
    plan = quick(low);
  }

  private static double zincKg(PreparedWeek week) {
    return new StoreDesk(week, plan)
        .purchases().stream()
            .filter(p -> p.item().id().equals("zinc"))
            .map(Purchase::need)
            .findFirst()
            .orElseThrow()
            .likely();
  }

  @Test
  void theZincThatBringsTheBathUpIsOnTheOrderList() {
    assertThat(Audit.of(low.brief(), plan)).isEmpty();
    // The bath is 4.5 x 1.3 m; zinc at 450 C weighs 6590 - 0.97 x 31 kg/m3.
    double kg = 0.040 * 4.5 * 1.3 * (6590 - 0.97 * 31);
    assertThat(zincKg(low) - zincKg(USUAL)).isCloseTo(kg, within(0.5));
  }

  @Test
  void theTopUpOfWednesdayHoldsTheIngotsForIt() {
    BathDesk.Bath bath = new BathDesk(low, plan).baths().get(0);
    BathDesk.Bath usual = new BathDesk(USUAL, plan).baths().get(0);
    double more =
        (bath.level().topUps().get(0).ingots() - usual.level().topUps().get(0).ingots())
            * bath.ingotKg();
    assertThat(bath.level().topUps().get(0).atMin()).isEqualTo(2 * 1440 + 14 * 60);
    assertThat(more).isCloseTo(0.040 * 4.5 * 1.3 * (6590 - 0.97 * 31), within(26.0));
    assertThat(BathWords.of(bath)).contains("top up by Wednesday 14:00");
  }

  /**
   * The tilted cabinet leaves 181 mm of zinc over it at the mark, which is 2300 less 150 mm over
   * the floor; on Monday the bath stands 40 mm under it.
   */
  @Test
  void theDipSheetOfADeepPartSaysTheLevelItNeeds() {
    LevelWords words = new LevelWords(low, plan);
    List<String> said = new ArrayList<>();
    for (PlannedBatch batch : plan.batches()) {
      for (PlannedLoad load : batch.loads()) {
        boolean deep = load.lotIds().stream().anyMatch(id -> id.startsWith("H-205/"));
        String level = words.of(batch, load);
        assertThat(level.isEmpty()).as(load.id()).isEqualTo(!deep);
        if (deep && batch.startMin() < 3 * 1440) {
          said.add(level);
        }
      }
    }
    assertThat(said)
        .isNotEmpty()
        .allSatisfy(
            level ->
                assertThat(level)
                    .startsWith(
                        "at least 1.97 m of zinc over the floor of the kettle, no more than 181 mm"
                            + " under its mark; by the plan 2.1"));
  }

  @Test
  void beforeTheFillingTheSheetSaysHowLowItStandsAndWhenItIsFilled() {
    PlannedBatch first =
        plan.batches().stream()
            .filter(b -> b.machineId().equals("kettle"))
            .min(Comparator.comparingInt(PlannedBatch::startMin))
            .orElseThrow();
    Lot cabinet =
        low.brief().lots().stream()
            .filter(l -> l.jobId().equals("H-205"))
            .findFirst()
            .orElseThrow();
    PlannedLoad deep = first.loads().get(0).carrying(List.of(cabinet.id()));

    assertThat(new LevelWords(low, plan).of(first, deep))
        .endsWith("by the plan 2.11 m, 40 mm under it; filled up next by Wednesday 14:00");
    assertThat(new LevelWords(USUAL, plan).of(first, deep))
        .endsWith("by the plan 2.15 m, at its mark; filled up next by Wednesday 14:00");
  }
}
