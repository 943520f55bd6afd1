package spangle.desk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import spangle.plan.Held;
import spangle.plan.Lot;
import spangle.plan.event.WeekState;

/**
 * Brackets of F-1 in light grey, aimed at 80 um and never over 120 um a coat: two coats and 240 um
 * in all where the coatings file says nothing of rework.
 */
class ReworkTest {
  private static final String BRACKETS = "job: F-1, part: LB-20";
  @TempDir Path folder;
  private LivingWeek week;

  @BeforeEach
  void mondayIsDone() {
    week = new LivingWeek(Path.of("samples/first-steps"), folder.resolve("week"), 300);
    week.event("when: mon 14:30, what: as-planned");
  }

  private static List<String> refused(ReplanDesk.Rest rest) {
    return rest.start().state().refused().stream().map(WeekState.Refusal::why).toList();
  }

  @Test
  void aRejectedPieceIsCoatedOverOnceWithItsOwnGunSetting() {
    week.event("when: mon 14:31, what: rejected, " + BRACKETS + ", count: 6, note: orange peel");
    week.sound("mon 14:32");

    assertThat(week.again()).extracting(Lot::pieces, Lot::jobId).containsExactly(tuple(6, "F-1"));
    Lot rework = week.again().get(0);
    assertThat(rework.finish().key()).endsWith("|rework");
    assertThat(rework.finish().index())
        .as("one colour run with the same colour")
        .isEqualTo(
            week.plan().brief().lots().stream()
                .filter(l -> l.id().startsWith("F-1/LB-20#1"))
                .findFirst()
                .orElseThrow()
                .finish()
                .index());
    assertThat(week.cautions(rework.id()))
        .anyMatch(w -> w.startsWith("REWORK, set the gun: current held at 20 to 40 uA"))
        .anyMatch(w -> w.contains("coat 2 of at most 2; what is rejected after it is stripped"));
    assertThat(week.toStrip()).isEmpty();
  }

  @Test
  void afterTheLastCoatItIsStrippedAndPlannedAgainOnceItIsBare() {
    week.event("when: mon 14:31, what: rejected, " + BRACKETS + ", count: 6");
    week.sound("mon 14:32");
    week.event("when: tue 14:30, what: as-planned");
    week.event("when: tue 14:31, what: rejected, " + BRACKETS + ", count: 4, coats: 2");
    ReplanDesk.Rest full = week.sound("tue 14:32");

    assertThat(refused(full)).isEmpty();
    assertThat(week.again()).extracting(Lot::pieces).containsExactly(6);
    assertThat(week.toStrip()).extracting(Held::pieces).containsExactly(4);
    assertThat(week.plan().brief().rejectedWithoutLot("F-1", "LB-20")).isEqualTo(4);
    assertThat(full.changes().held())
        .singleElement()
        .asString()
        .contains("F-1", "4 rejected pieces bear all the coats they may", "2 coats", "240 um")
        .contains("report them stripped");

    week.event("when: wed 06:30, what: stripped, " + BRACKETS + ", count: 3");
    ReplanDesk.Rest bare = week.sound("wed 06:31");
    assertThat(refused(bare)).isEmpty();
    assertThat(week.toStrip()).extracting(Held::pieces).containsExactly(1);
    assertThat(week.plan().brief().rejectedWithoutLot("F-1", "LB-20")).isEqualTo(1);
    Lot anew = week.again().get(week.again().size() - 1);
    assertThat(anew.pieces()).isEqualTo(3);
    assertThat(anew.finish().key()).doesNotContain("rework");
    assertThat(week.cautions(anew.id())).anyMatch(w -> w.startsWith("Stripped pieces: bare metal"));
    assertThat(bare.changes().lines())
        .anyMatch(l -> l.before().equals("stripped") || l.after().endsWith(", stripped"));

    week.event("when: wed 06:40, what: stripped, " + BRACKETS + ", count: 2");
    ReplanDesk.Rest tooMany = week.replan("wed 06:41");
    assertThat(refused(tooMany)).singleElement().asString().contains("1 rejected ones wait to be");
  }

  @Test
  void coatsAreCountedFromTheLogAndNotTakenOnTrust() {
    week.event("when: mon 14:31, what: rejected, " + BRACKETS + ", count: 2, coats: 2");
    assertThat(refused(week.replan("mon 14:32")))
        .singleElement()
        .asString()
        .contains("2 pieces with 2 coats rejected, but 0 such are finished", "say coats: 1");
  }

  /** 80 um for each coat: 150 um in all allow one, whatever the number of coats. */
  @Test
  void theFilmOfAllCoatsIsTheOtherLimit() {
    week.coatings("film_um: {min: 60, aim: 80, max: 120}", "rework: {coats: 3, total_um: 150}");
    week.event("when: mon 14:31, what: rejected, " + BRACKETS + ", count: 6");
    week.sound("mon 14:32");
    assertThat(week.again()).isEmpty();
    assertThat(week.toStrip()).extracting(Held::pieces).containsExactly(6);
  }

  @Test
  void theShopsOwnSettingAndNumberOfCoatsStandOnTheSheet() {
    week.coatings(
        "film_um: {min: 60, aim: 80, max: 120}", "rework: {coats: 3, gun: \"60 kV, 15 uA, slow\"}");
    week.event("when: mon 14:31, what: rejected, " + BRACKETS + ", count: 6");
    week.sound("mon 14:32");
    assertThat(week.cautions(week.again().get(0).id()))
        .contains("REWORK, set the gun: 60 kV, 15 uA, slow.", "F-1 LB-20: coat 2 of at most 3.");
  }
}
