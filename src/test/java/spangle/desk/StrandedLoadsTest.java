package spangle.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import spangle.estimate.Purchase;
import spangle.plan.LoadTimes;
import spangle.plan.PlannedBatch;
import spangle.plan.PlannedLoad;
import spangle.report.Heading;
import spangle.report.ReportFiles;
import spangle.report.WeekReport;
import spangle.report.Yardstick;

/** What hangs and cannot go on this week waits, is said to wait, and goes on when it can. */
class StrandedLoadsTest {
  private static final Path SMALL = Path.of("samples/first-steps");
  @TempDir Path folder;

  private LivingWeek week;
  private PlannedBatch first;
  private PlannedLoad load;
  private int now;

  private void hung(String machine) {
    week = new LivingWeek(SMALL, folder.resolve("week"), 60);
    first =
        week.plan().plan().batches().stream()
            .filter(b -> b.machineId().equals(machine))
            .min(Comparator.comparingInt(PlannedBatch::startMin))
            .orElseThrow();
    load = first.loads().get(0);
    now = first.startMin() - 2;
    week.event("when: " + at(now) + ", what: as-planned");
  }

  private static String at(int minute) {
    return DayWords.of(minute);
  }

  private PlannedBatch same() {
    return week.plan().plan().batches().stream()
        .filter(b -> b.id().equals(first.id()))
        .findFirst()
        .orElseThrow();
  }

  private Map<String, byte[]> sheets(ReplanDesk.Rest rest) {
    WeekReport report =
        new ReportDesk(rest.start().week(), rest.plan(), rest.start().stopped(rest.plan()))
            .report(Heading.plain("week"), List.<Purchase>of(), rest.findings(), Yardstick.EMPTY);
    return ReportFiles.render(report);
  }

  private static String text(Map<String, byte[]> files, String name) {
    return new String(files.getOrDefault(name, new byte[0]), StandardCharsets.UTF_8);
  }

  @Test
  void aKettleBrokenWithoutAnEndLetsWhatHangsWaitAndSaysSo() {
    hung("kettle");
    week.event("when: " + at(now) + ", what: broken, station: kettle");
    ReplanDesk.Rest rest = week.replan(now + 1);

    assertThat(rest.findings()).isEmpty();
    assertThat(week.everyLotOnce()).isTrue();
    assertThat(week.sums()).allSatisfy((part, sum) -> assertThat(sum.holds()).as(part).isTrue());
    int horizon = week.plan().brief().horizonMin();
    assertThat(same().startMin()).isGreaterThanOrEqualTo(horizon);
    assertThat(same().loads().get(0).lotIds()).isEqualTo(load.lotIds());
    assertThat(rest.changes().held())
        .anyMatch(
            h ->
                h.startsWith(load.id())
                    && h.contains("wait: ") == h.contains(", ")
                    && h.contains("does not work any more this week")
                    && h.contains("The kettle lead decides: report it repaired"));
    assertThat(rest.changes().lines())
        .filteredOn(l -> l.load().equals(load.id()))
        .singleElement()
        .satisfies(
            l -> {
              assertThat(l.kind()).isEqualTo(ChangeList.Kind.LATER);
              assertThat(l.after()).isEqualTo("not this week");
              assertThat(l.tell()).contains("kettle crew");
            });

    Map<String, byte[]> files = sheets(rest);
    assertThat(text(files, "index.html")).contains("not this week").doesNotContain(">Sat 00");
    assertThat(text(files, "schedule.csv")).containsPattern("waits,.*," + load.id() + ",");
    assertThat(text(files, "week.ics")).doesNotContain(" " + load.id() + "\r\n");

    String job = load.lotIds().get(0).split("/")[0];
    assertThat(WhyDesk.why(week.plan(), job))
        .anySatisfy(
            w -> {
              assertThat(w.place()).containsPattern("not (finished|in) this week: ");
              assertThat(w.notes())
                  .anyMatch(
                      n -> n.contains(load.id()) && n.contains("does not work any more this week"));
            });

    // A second look moves nothing and says nothing twice.
    ReplanDesk.Rest calm = week.replan(now + 1);
    assertThat(calm.changes().lines()).noneMatch(l -> l.load().equals(load.id()));
    assertThat(calm.findings()).isEmpty();

    week.event("when: " + at(now + 30) + ", what: repaired, station: kettle");
    ReplanDesk.Rest good = week.replan(now + 30);
    assertThat(good.findings()).isEmpty();
    assertThat(same().startMin()).isBetween(now + 30, now + 120);
    assertThat(good.changes().held()).isEmpty();
    assertThat(good.changes().lines())
        .filteredOn(l -> l.load().equals(load.id()))
        .singleElement()
        .satisfies(l -> assertThat(l.before()).isEqualTo("hung and waited"));
  }

  @Test
  void zincTooLowWithNoFillingPlannedIsToldWithBothFigures() {
    hung("kettle");
    week.event("when: " + at(now) + ", what: level, station: kettle, level_down_mm: 1850");
    ReplanDesk.Rest rest = week.replan(now + 1);

    assertThat(rest.findings()).isEmpty();
    assertThat(week.plan().brief().isBeyond(same().startMin())).isTrue();
    assertThat(rest.changes().held())
        .anyMatch(
            h ->
                h.contains("the zinc stands 1850 mm below its mark and covers this work only down")
                    && h.contains("it is not dipped"));
    // What hangs keeps its beam, and nothing else is planned on that one.
    assertThat(week.plan().plan().batches())
        .filteredOn(b -> !b.id().equals(first.id()) && b.startMin() > now)
        .flatExtracting(PlannedBatch::loads)
        .noneMatch(
            l ->
                l.carrierId().equals(load.carrierId())
                    && l.carrierNumber() == load.carrierNumber());
  }

  @Test
  void anOvenThatIsShutForGoodLetsItsRacksWait() {
    hung("oven");
    week.event("when: " + at(now) + ", what: broken, station: oven");
    ReplanDesk.Rest rest = week.replan(now + 1);

    assertThat(rest.findings()).isEmpty();
    assertThat(rest.changes().held())
        .anyMatch(h -> h.contains("The supervisor decides") && h.contains("gathers dust"));
    assertThat(text(sheets(rest), "index.html")).doesNotContain(">Sat 00");
    assertThat(LoadTimes.first(same(), same().loads().get(0))).isLessThan(now + 1);
  }
}
