package spangle.intake.brief;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import spangle.intake.read.WeekFiles;
import spangle.plan.Brief;
import spangle.plan.Lot;
import spangle.plan.Supply;

/**
 * 400 plates of 160 x 120 x 3 mm take about 3.5 kg of this powder with their hooks; 0.8 kg stay in
 * the hoses. Lot A-117 is in the store, A-131 comes on Wednesday at 10:00.
 */
class PowderLotsTest {
  private static final String ROW =
      "%s,Pilot House,LB-20,400,steel,3,plate 160x120 mm,,,powder,P-GREY,mon 07:00,thu,no,no,,,,";

  @TempDir Path folder;

  private Brief brief(double inStoreKg, String kits) {
    WeekFiles files =
        WeekFiles.rows(folder, ROW.formatted("J-1"), ROW.formatted("J-2"))
            .put("kits.yaml", kits)
            .put("coatings.yaml", WeekFiles.COATINGS.replace("kg: 42.5", "kg: " + inStoreKg));
    return BriefMaker.prepare(files.read().input().orElseThrow()).brief();
  }

  private static String kits(String... rows) {
    return "kits:\n" + String.join("", rows);
  }

  private static String kit(String id, String due, String oneLot, String job) {
    return "  - {id: %s, sets: 50, due: %s, one_lot: %s, lines: [{part: LB-20, job: %s, per_set: 4}]}\n"
        .formatted(id, due, oneLot, job);
  }

  private static List<String> lotsOf(Brief brief, String job) {
    return brief.lots().stream()
        .filter(l -> l.jobId().equals(job))
        .map(l -> l.finish().materialLot())
        .distinct()
        .toList();
  }

  private static List<Supply> grey(Brief brief) {
    return brief.supplies().stream().filter(s -> s.materialId().equals("P-GREY")).toList();
  }

  @Test
  void theLotInTheStoreIsKeptForTheKitAndNothingElseIsPlannedOnIt() {
    Brief brief = brief(4.5, kits(kit("K-1", "thu 16:00", "yes", "J-1")));

    assertThat(lotsOf(brief, "J-1")).containsExactly("A-117");
    assertThat(lotsOf(brief, "J-2")).containsExactly("");
    double need =
        brief.lots().stream()
            .filter(l -> l.jobId().equals("J-1"))
            .mapToDouble(Lot::materialKg)
            .sum();
    Supply any = grey(brief).get(0);
    Supply kept = grey(brief).get(1);
    assertThat(any.keptLot()).isEmpty();
    assertThat(any.arrivals().get(0).amount()).isCloseTo(4.5 - 0.8 - need, within(1e-9));
    assertThat(any.arrivals().get(1)).isEqualTo(new Supply.Arrival(2 * 1440 + 600, 20, "A-131"));
    assertThat(kept.keptLot()).isEqualTo("A-117");
    assertThat(kept.arrivals()).hasSize(1);
    assertThat(kept.arrivals().get(0).amount()).isCloseTo(need, within(1e-9));
  }

  @Test
  void itSharesNoLoadWithWorkFromAnyLot() {
    Brief brief = brief(4.5, kits(kit("K-1", "thu 16:00", "yes", "J-1")));

    assertThat(brief.lots().stream().map(l -> l.finish().key()).distinct())
        .containsExactlyInAnyOrder("P-GREY|steel|lot A-117", "P-GREY|steel");
  }

  @Test
  void aLotTooSmallIsPassedOverForTheOneThatComesInTime() {
    Brief brief = brief(4.0, kits(kit("K-1", "thu 16:00", "yes", "J-1")));

    assertThat(lotsOf(brief, "J-1")).containsExactly("A-131");
    assertThat(grey(brief).get(1).arrivals().get(0).atMin()).isEqualTo(2 * 1440 + 600);
  }

  @Test
  void aLotThatComesAfterTheKitIsDueIsNoLotForIt() {
    Brief brief = brief(4.0, kits(kit("K-1", "tue 16:00", "yes", "J-1")));

    assertThat(lotsOf(brief, "J-1")).containsExactly("");
    assertThat(grey(brief)).hasSize(1);
  }

  @Test
  void aKitThatDoesNotAskTakesAnyLot() {
    Brief brief = brief(4.5, kits(kit("K-1", "thu 16:00", "no", "J-1")));

    assertThat(lotsOf(brief, "J-1")).containsExactly("");
  }

  @Test
  void theKitDueFirstChoosesFirst() {
    Brief brief =
        brief(
            4.5,
            kits(kit("K-1", "thu 16:00", "yes", "J-1"), kit("K-2", "thu 10:00", "yes", "J-2")));

    assertThat(lotsOf(brief, "J-2")).containsExactly("A-117");
    assertThat(lotsOf(brief, "J-1")).containsExactly("A-131");
  }

  @Test
  void kitsThatShareAPartShareItsLot() {
    String both =
        "  - {id: K-3, sets: 50, due: thu 12:00, one_lot: yes, lines: [{part: LB-20, job: J-1,"
            + " per_set: 4}, {part: LB-20, job: J-2, per_set: 2}]}\n";
    Brief brief = brief(4.5, kits(both, kit("K-1", "fri 10:00", "yes", "J-1")));

    assertThat(lotsOf(brief, "J-1")).containsExactly("A-131");
    assertThat(lotsOf(brief, "J-2")).containsExactly("A-131");
  }
}
