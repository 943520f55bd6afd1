package spangle.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import spangle.plan.LoadTimes;
import spangle.plan.PlannedLoad;
import spangle.plan.event.WeekState;

/** A load that hangs is taken off its carrier again: its pieces wait, its number is void. */
class TakenDownTest {
  @TempDir Path folder;
  private LivingWeek week;

  private static int first(LoadMatch.Spot spot) {
    return LoadTimes.first(spot.batch(), spot.load());
  }

  /** The first load of the brackets. */
  private LoadMatch.Spot firstLoad() {
    return week.loadsOf("F-1").stream()
        .min(Comparator.comparingInt(TakenDownTest::first))
        .orElseThrow();
  }

  private static String at(int minute) {
    return DayWords.of(minute).replaceFirst("^(...)[a-z]* ", "$1 ").toLowerCase(Locale.ROOT);
  }

  private Set<String> numbers() {
    Set<String> numbers = new HashSet<>();
    week.plan().plan().batches().forEach(b -> b.loads().forEach(l -> numbers.add(l.id())));
    return numbers;
  }

  @Test
  void itsPiecesArePlannedAnewUnderAnotherNumberForGood() {
    week = new LivingWeek(Path.of("samples/first-steps"), folder.resolve("week"), 200);
    LoadMatch.Spot was = firstLoad();
    int now = first(was) + 1;
    week.event("when: " + at(now) + ", what: hung, load: " + was.id());
    week.event("when: " + at(now) + ", what: taken-down, load: " + was.id());
    ReplanDesk.Rest rest = week.heard(at(now + 1));

    assertThat(week.plan().brief().retired()).containsExactly(was.id());
    assertThat(numbers()).doesNotContain(was.id());
    assertThat(week.plan().brief().frozen())
        .allMatch(b -> b.loads().stream().noneMatch(l -> l.lotIds().equals(was.load().lotIds())));
    List<PlannedLoad> anew =
        week.plan().plan().batches().stream()
            .flatMap(b -> b.loads().stream())
            .filter(l -> l.lotIds().stream().anyMatch(was.load().lotIds()::contains))
            .toList();
    assertThat(anew).isNotEmpty();
    assertThat(rest.changes().lines())
        .anyMatch(l -> l.load().equals(anew.get(0).id()) || l.load().equals(was.id()));
    assertThat(week.sums().get("F-1/LB-20").inLots()).isEqualTo(200);

    // The number stays void in all plans after it, and the old reports say nothing of another load.
    week.event("when: " + at(now + 30) + ", what: as-planned");
    week.heard(at(now + 31));
    assertThat(week.plan().brief().retired()).containsExactly(was.id());
    assertThat(numbers()).doesNotContain(was.id());
  }

  @Test
  void onceAStationHasBegunItGoesOn() {
    week = new LivingWeek(Path.of("samples/first-steps"), folder.resolve("week"), 200);
    LoadMatch.Spot was = firstLoad();
    int now = was.batch().startMin();
    week.event("when: " + at(now) + ", what: as-planned");
    week.event("when: " + at(now) + ", what: taken-down, load: " + was.id());
    ReplanDesk.Rest rest = week.sound(at(now + 1));
    assertThat(rest.start().state().refused())
        .extracting(WeekState.Refusal::why)
        .singleElement()
        .asString()
        .isEqualTo(was.id() + " is in process: what has begun is not taken down");
    assertThat(week.plan().brief().retired()).isEmpty();
    assertThat(numbers()).contains(was.id());
  }
}
