package spangle.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import spangle.plan.LineKind;
import spangle.plan.LineSpec;
import spangle.plan.PlannedLoad;
import spangle.plan.PlannedLoad.PlannedVisit;
import spangle.plan.StationSpec;
import spangle.solve.ProgressListener;
import spangle.solve.SolveOptions;

/**
 * Nobody leaves degreased steel wet overnight, and nothing hangs for days before it is begun
 * (common practice: 30 minutes and 18 hours, in the profiles).
 */
class WetWorkTest {
  private static final Path HARBOUR = Path.of("samples/harbour-week");

  private static PlanDesk.Made made(Optional<Path> overlay) {
    return new PlanDesk()
        .plan(HARBOUR, overlay, new SolveOptions(0, 0, 1, 1), ProgressListener.NOBODY)
        .made()
        .orElseThrow();
  }

  private static void keepsItsWaits(PlannedLoad load, LineSpec line) {
    var stations =
        line.before().stream().collect(Collectors.toMap(StationSpec::id, Function.identity()));
    List<PlannedVisit> visits =
        load.visits().stream()
            .filter(v -> stations.containsKey(v.stationId()))
            .sorted(Comparator.comparingInt(PlannedVisit::startMin))
            .toList();
    for (int i = 1; i < visits.size(); i++) {
      PlannedVisit before = visits.get(i - 1);
      assertThat(visits.get(i).startMin() - before.endMin())
          .as(load.id() + " after " + before.stationId())
          .isLessThanOrEqualTo(
              Optional.ofNullable(stations.get(before.stationId()))
                  .orElseThrow()
                  .longestWaitAfterMin());
    }
  }

  @Test
  void degreasedWorkGoesOnWithinHalfAnHourAndHungWorkTheNextMorning() {
    PlanDesk.Made made = made(Optional.empty());
    LineSpec zinc =
        made.week().brief().lines().stream()
            .filter(l -> l.kind() == LineKind.ZINC)
            .findFirst()
            .orElseThrow();

    assertThat(zinc.before())
        .filteredOn(s -> s.id().equals("degrease"))
        .extracting(StationSpec::longestWaitAfterMin)
        .containsExactly(30);
    assertThat(zinc.before())
        .filteredOn(s -> s.id().equals("jig"))
        .extracting(StationSpec::longestWaitAfterMin)
        .containsExactly(18 * 60);
    assertThat(made.findings()).isEmpty();
    made.plan().batches().stream()
        .filter(b -> b.lineId().equals(zinc.id()))
        .flatMap(b -> b.loads().stream())
        .forEach(load -> keepsItsWaits(load, zinc));
  }

  @Test
  void whatIsPackedWaitsForItsTruckHoweverLong() {
    PlanDesk.Made made = made(Optional.of(Path.of("samples/what-if/kettle-outside.yaml")));

    assertThat(made.week().brief().lines())
        .filteredOn(l -> l.kind() == LineKind.OUTSIDE)
        .flatExtracting(LineSpec::before)
        .extracting(StationSpec::longestWaitAfterMin)
        .containsOnly(Integer.MAX_VALUE);
  }
}
