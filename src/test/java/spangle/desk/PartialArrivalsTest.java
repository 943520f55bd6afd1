package spangle.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import spangle.intake.read.WeekFiles;
import spangle.plan.Held;
import spangle.plan.Lot;
import spangle.solve.ProgressListener;
import spangle.solve.SolveOptions;

/** 100 plates are ordered and other counts are announced: ordered = planned + waiting, always. */
class PartialArrivalsTest {
  private static final String HEADING =
      "job,part,qty,material,thickness_mm,shape,route,finish,due,arrivals\n";
  private static final String ROW =
      "J-1,LB-20,100,steel,3,plate 160x120 mm,powder,P-GREY,fri 12:00,";

  @TempDir Path folder;

  private PlanDesk.Made planned(String arrivals) {
    WeekFiles.sound(folder).put("jobs/a.csv", HEADING + ROW + arrivals + "\n");
    return new PlanDesk()
        .plan(folder, new SolveOptions(60, 200, 1, 1), ProgressListener.NOBODY)
        .made()
        .orElseThrow();
  }

  private static List<Integer> readyMin(PlanDesk.Made made) {
    return made.week().brief().lots().stream().map(Lot::readyMin).distinct().toList();
  }

  private static int pieces(PlanDesk.Made made) {
    return made.week().brief().lots().stream().mapToInt(Lot::pieces).sum();
  }

  @Test
  void whatIsAnnouncedIsPlannedAndTheRestWaits() {
    PlanDesk.Made made = planned("60@mon 06:00");

    assertThat(made.findings()).isEmpty();
    assertThat(pieces(made)).isEqualTo(60);
    assertThat(made.plan().leftOut()).isEmpty();
    Held waiting = made.week().held().get(0);
    assertThat(waiting.pieces()).isEqualTo(40);
    assertThat(waiting.words()).isEqualTo("40 of 100 pieces: nobody says when they come");
    assertThat(waiting.whoAnswers()).isEqualTo("bending");
  }

  @Test
  void ofMoreThanAreOrderedTheFirstAreEnough() {
    PlanDesk.Made made = planned("60@mon 06:00; 60@tue 06:00");

    assertThat(made.findings()).isEmpty();
    assertThat(made.week().held()).isEmpty();
    assertThat(pieces(made)).isEqualTo(100);
    assertThat(made.week().brief().lots().stream().filter(l -> l.readyMin() > 1440))
        .extracting(Lot::pieces)
        .containsExactly(40);
  }

  @Test
  void aStreamIsUsableFromItsFirstDay() {
    PlanDesk.Made made = planned("50@mon 06:00; 50@tue 06:00");

    assertThat(made.week().held()).isEmpty();
    assertThat(readyMin(made)).containsExactly(360, 1440 + 360);
    assertThat(pieces(made)).isEqualTo(100);
  }

  @Test
  void theRestIsPlannedOnceSomebodySaysWhen() {
    Path sample = folder.resolve("week");
    WeekFiles.sound(sample).put("jobs/a.csv", HEADING + ROW + "60@mon 06:00\n");
    LivingWeek week = new LivingWeek(sample, folder.resolve("living"), 200);

    week.event("when: mon 06:00, what: arrived, job: J-1, part: LB-20, count: 60");
    ReplanDesk.Rest waiting = week.replan("mon 06:05");
    assertThat(waiting.findings()).isEmpty();
    assertThat(week.sums()).allSatisfy((part, sum) -> assertThat(sum.holds()).isTrue());
    assertThat(waiting.start().week().held()).extracting(Held::pieces).containsExactly(40);

    week.event(
        "when: mon 06:10, what: expected, job: J-1, part: LB-20, count: 40, until: tue 08:00");
    ReplanDesk.Rest all = week.replan("mon 06:15");
    assertThat(all.findings()).isEmpty();
    assertThat(all.start().week().held()).isEmpty();
    assertThat(week.sums()).allSatisfy((part, sum) -> assertThat(sum.holds()).isTrue());
    assertThat(all.plan().leftOut()).isEmpty();
  }
}
