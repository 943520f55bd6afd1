package spangle.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import spangle.estimate.Purchase;
import spangle.plan.FinishKind;
import spangle.plan.Lot;
import spangle.plan.PlannedBatch;
import spangle.report.Danger;
import spangle.report.Heading;
import spangle.report.HeldPart;
import spangle.report.LoadNote;
import spangle.report.WeekReport;
import spangle.report.Yardstick;

/** Parts that were in a machine when it broke down: every sheet says who decides, and by what. */
class SuspectLoadsTest {
  @TempDir Path folder;

  private LivingWeek week() {
    return new LivingWeek(Path.of("samples/first-steps"), folder.resolve("week"), 300);
  }

  private static PlannedBatch first(LivingWeek week, String machine) {
    return week.plan().plan().batches().stream()
        .filter(b -> b.machineId().equals(machine))
        .min(Comparator.comparingInt(PlannedBatch::startMin))
        .orElseThrow();
  }

  private static String at(int minute) {
    String day = List.of("mon", "tue", "wed", "thu", "fri").get(minute / 1440);
    return String.format(Locale.ROOT, "%s %02d:%02d", day, minute % 1440 / 60, minute % 60);
  }

  private static ReplanDesk.Rest tripped(LivingWeek week, PlannedBatch inside) {
    String at = at(inside.startMin() + 1);
    week.event("when: " + at + ", what: as-planned");
    week.event("when: " + at + ", what: broken, station: " + inside.machineId());
    return week.replan(at(inside.startMin() + 2));
  }

  private static List<HeldLoad> suspects(ReplanDesk.Rest rest) {
    return SuspectLoads.of(rest.start().state(), rest.start().week().brief(), rest.plan());
  }

  @Test
  void ofAnOvenTheInspectorDecidesByCureTestAndProbe() {
    LivingWeek week = week();
    PlannedBatch inside = first(week, "oven");
    ReplanDesk.Rest rest = tripped(week, inside);

    assertThat(rest.findings()).isEmpty();
    assertThat(suspects(rest))
        .extracting(HeldLoad::load)
        .containsExactlyInAnyOrderElementsOf(inside.loads().stream().map(l -> l.id()).toList());
    String load = inside.loads().get(0).id();
    assertThat(rest.changes().held())
        .anyMatch(
            h ->
                h.startsWith(load + " is held until inspected: oven broke down with it inside. ")
                    && h.contains("The inspector decides: how hot the parts were")
                    && h.contains("solvent rub on the heaviest part")
                    && h.contains("inspected load=" + load));
  }

  @Test
  void sheetsNameTheLoadAmongWhatWaitsAndOnItsOwnSheet() {
    LivingWeek week = week();
    PlannedBatch inside = first(week, "oven");
    ReplanDesk.Rest rest = tripped(week, inside);
    WeekReport report =
        new ReportDesk(rest.start().week(), rest.plan(), suspects(rest))
            .report(Heading.plain("week"), List.<Purchase>of(), rest.findings(), Yardstick.EMPTY);

    int pieces =
        inside.loads().stream()
            .flatMap(l -> l.lotIds().stream())
            .flatMap(
                id -> rest.start().week().brief().lots().stream().filter(l -> l.id().equals(id)))
            .mapToInt(Lot::pieces)
            .sum();
    List<HeldPart> held =
        report.waiting().held().stream().filter(h -> h.gate().equals("suspect")).toList();
    assertThat(held).isNotEmpty().allMatch(h -> h.whoAnswers().equals("inspector"));
    assertThat(held).allMatch(h -> h.danger() == Danger.WORK);
    assertThat(held.stream().mapToInt(HeldPart::pieces).sum()).isEqualTo(pieces);
    List<String> marked =
        report.facts().loads().stream()
            .filter(n -> n.cautions().get(0).startsWith("HELD: oven broke down"))
            .map(LoadNote::loadId)
            .toList();
    assertThat(marked)
        .containsExactlyInAnyOrderElementsOf(inside.loads().stream().map(l -> l.id()).toList());
  }

  @Test
  void ofAKettleTheKettleLeadDecidesAndNobodyGoesNear() {
    LivingWeek week = week();
    PlannedBatch inside = first(week, "kettle");
    ReplanDesk.Rest rest = tripped(week, inside);

    assertThat(suspects(rest)).isNotEmpty();
    assertThat(suspects(rest).get(0).lots()).allMatch(l -> l.finish().kind() == FinishKind.ZINC);
    assertThat(suspects(rest).get(0).words())
        .contains(
            "The kettle lead decides: nobody near until the kettle is safe by the local code");
  }

  @Test
  void whatIsNotFinishedIsNotSaidToBeRejected() {
    LivingWeek week = week();
    List<String> onTheWay =
        week.plan().brief().lots().stream().filter(l -> !l.lastLeg()).map(Lot::id).toList();
    PlannedBatch inside =
        week.plan().plan().batches().stream()
            .filter(b -> b.loads().stream().anyMatch(l -> onTheWay.containsAll(l.lotIds())))
            .min(Comparator.comparingInt(PlannedBatch::startMin))
            .orElseThrow();
    List<HeldLoad> suspects = suspects(tripped(week, inside));

    assertThat(suspects)
        .filteredOn(s -> s.lots().stream().noneMatch(Lot::lastLeg))
        .isNotEmpty()
        .allMatch(s -> s.look().contains("stays held and its next step waits"))
        .noneMatch(s -> s.look().contains("rejected"));
    assertThat(suspects)
        .filteredOn(s -> s.lots().stream().allMatch(Lot::lastLeg))
        .allMatch(s -> s.look().endsWith("then rejected with a count"));
  }

  @Test
  void whatWasInspectedIsHeldNoLonger() {
    LivingWeek week = week();
    PlannedBatch inside = first(week, "oven");
    tripped(week, inside);
    String at = at(inside.startMin() + 3);
    inside.loads().forEach(l -> week.event("when: " + at + ", what: inspected, load: " + l.id()));

    assertThat(suspects(week.replan(at(inside.startMin() + 4)))).isEmpty();
  }
}
