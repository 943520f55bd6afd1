package spangle.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import spangle.intake.read.WeekFiles;
import spangle.plan.LeftOut;
import spangle.plan.Lot;
import spangle.solve.ProgressListener;
import spangle.solve.SolveOptions;

/** Grey powder for one of two alike jobs: the one a kit waits for gets it, the other waits. */
class KitsFirstTest {
  private static final String ROW =
      "%s,Pilot House,LB-20,400,steel,3,plate 160x120 mm,,,powder,P-GREY,mon 07:00,wed,no,no,,,,";
  private static final String KITS =
      """
      kits:
        - id: K-1
          name: ladder set
          sets: 100
          due: wed 16:00
          lines: [{part: LB-20, job: %s, per_set: 4}]
      """;

  @TempDir Path folder;

  /**
   * 400 plates of 160 x 120 x 3 mm take about 3.5 kg of this powder with their hooks; 4.5 kg less
   * 0.8 kg for the colour run are there.
   */
  private PlanDesk.Made planned(String kitJob) {
    WeekFiles.rows(folder, ROW.formatted("J-1"), ROW.formatted("J-2"))
        .put("kits.yaml", KITS.formatted(kitJob))
        .put(
            "coatings.yaml",
            WeekFiles.COATINGS
                .replace("kg: 42.5", "kg: 4.5")
                .replace("on_order: [{kg: 20, arrives: wed 10:00, lot: A-131}]", "on_order: []"));
    return new PlanDesk()
        .plan(folder, new SolveOptions(60, 400, 1, 1), ProgressListener.NOBODY)
        .made()
        .orElseThrow();
  }

  private static List<String> jobsLeftOut(PlanDesk.Made made) {
    List<String> left = made.plan().leftOut().stream().map(LeftOut::lotId).toList();
    return made.week().brief().lots().stream()
        .filter(l -> left.contains(l.id()))
        .map(Lot::jobId)
        .distinct()
        .toList();
  }

  @Test
  void whatIsShortGoesToTheKitWhicheverJobItIs() {
    PlanDesk.Made first = planned("J-1");
    assertThat(first.findings()).isEmpty();
    assertThat(jobsLeftOut(first)).containsExactly("J-2");

    PlanDesk.Made second = planned("J-2");
    assertThat(second.findings()).isEmpty();
    assertThat(jobsLeftOut(second)).containsExactly("J-1");
  }

  @Test
  void aKitsLotCountsOneMoreThanTheSamePartForStock() {
    List<Lot> lots = planned("J-1").week().brief().lots();

    assertThat(lots)
        .filteredOn(l -> l.jobId().equals("J-1"))
        .isNotEmpty()
        .allMatch(l -> l.weight() == 2);
    assertThat(lots)
        .filteredOn(l -> l.jobId().equals("J-2"))
        .isNotEmpty()
        .allMatch(l -> l.weight() == 1);
  }
}
