package spangle.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import spangle.plan.json.PlanFile;

/** The demo week in which all runs as planned: a replan moves nothing for nothing. */
class CalmWeekTest {
  private static final Path DEMO = Path.of("samples/harbour-week");
  @TempDir Path folder;

  /** One move of search: what a replan begins with is the plan people know. */
  @Test
  void whereAllRanAsPlannedNothingMoves() {
    LivingWeek week = new LivingWeek(DEMO, folder.resolve("calm"), 1);
    week.event("when: mon 14:20, what: as-planned");

    ReplanDesk.Rest rest = week.replan("mon 14:30");

    assertThat(rest.findings()).isEmpty();
    assertThat(rest.changes().loadsMoved()).isZero();
    assertThat(rest.plan().leftOut())
        .hasSizeLessThanOrEqualTo(week.before().plan().leftOut().size());
  }

  /**
   * With a search of its own: each line a person reads is counted against what it gains, so where
   * nothing has happened next to nothing moves, and no kit is complete on a later day.
   */
  @Test
  void whereNothingHasHappenedASearchMovesNextToNothing() {
    LivingWeek week = new LivingWeek(DEMO, folder.resolve("still"), 20_000);
    week.event("when: mon 11:00, what: as-planned");

    ReplanDesk.Rest rest = week.replan("mon 11:00");

    assertThat(rest.findings()).isEmpty();
    long loads = week.before().plan().batches().stream().mapToInt(b -> b.loads().size()).sum();
    assertThat((long) rest.changes().loadsMoved()).as("of " + loads).isLessThan(loads / 6);
    assertThat(rest.changes().lines().size())
        .as("lines, of which each counts")
        .isLessThanOrEqualTo(rest.plan().figures().moved() + 5);
    assertThat(laterKits(week.before(), week.plan())).isEmpty();
  }

  private static List<String> laterKits(PlanFile before, PlanFile now) {
    Map<String, Integer> days = new HashMap<>();
    Balance.kits(before)
        .forEach(k -> k.completeMin().ifPresent(at -> days.put(k.kit().id(), at / 1440)));
    return Balance.kits(now).stream()
        .filter(k -> days.containsKey(k.kit().id()))
        .filter(
            k ->
                k.completeMin().orElse(Integer.MAX_VALUE) / 1440
                    > days.getOrDefault(k.kit().id(), 0))
        .map(k -> k.kit().id())
        .toList();
  }
}
