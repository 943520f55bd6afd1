package spangle.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import spangle.plan.LoadTimes;
import spangle.plan.PlannedBatch;
import spangle.plan.PlannedLoad;
import spangle.plan.json.Replanned.Recalled;

/** A sheet that is out moves only with a reason, and whoever has it is told to give it back. */
class ReleasedSheetTest {
  private static final int NOON = 12 * 60;
  @TempDir Path folder;

  /** The first dip hung on Monday afternoon. */
  private static PlannedLoad afternoon(LivingWeek week) {
    PlannedBatch dip =
        week.plan().plan().batches().stream()
            .filter(b -> b.lineId().equals("zinc") && LoadTimes.first(b) > NOON)
            .min(Comparator.comparingInt(b -> LoadTimes.first(b)))
            .orElseThrow();
    return dip.loads().get(0);
  }

  private static List<ChangeList.Line> lines(ReplanDesk.Rest rest, String load) {
    return rest.changes().lines().stream().filter(l -> l.load().equals(load)).toList();
  }

  @Test
  void whatForcesItIsSaidAndTheSheetIsTakenBack() {
    LivingWeek week = new LivingWeek(Path.of("samples/harbour-week"), folder.resolve("week"), 1);
    String load = afternoon(week).id();
    week.event("when: mon 07:30, what: as-planned");
    week.event("when: mon 07:30, what: released, load: " + load);
    week.event("when: mon 07:31, what: slow, station: pickle, factor: 2");

    ReplanDesk.Rest rest = week.sound("mon 07:32");

    assertThat(week.plan().replanned().orElseThrow().recalled())
        .extracting(Recalled::load)
        .contains(load);
    assertThat(lines(rest, load))
        .singleElement()
        .satisfies(
            line -> {
              assertThat(line.reason())
                  .contains("takes longer now")
                  .endsWith("; its sheet is out, take it back");
              assertThat(line.sheet()).isEqualTo("B");
            });
    assertThat(rest.changes().lines())
        .filteredOn(l -> !l.load().equals(load))
        .noneMatch(l -> l.reason().contains("its sheet is out"));
  }

  @Test
  void withNothingAgainstItItStays() {
    LivingWeek week = new LivingWeek(Path.of("samples/harbour-week"), folder.resolve("week"), 1);
    String load = afternoon(week).id();
    week.event("when: mon 07:30, what: as-planned");
    week.event("when: mon 07:30, what: released, load: " + load);

    ReplanDesk.Rest rest = week.sound("mon 07:32");

    assertThat(week.plan().replanned().orElseThrow().recalled()).isEmpty();
    assertThat(lines(rest, load)).isEmpty();
  }
}
