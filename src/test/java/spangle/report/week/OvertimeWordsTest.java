package spangle.report.week;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import spangle.report.Overtime;
import spangle.report.Overtime.Gain;
import spangle.report.Overtime.Hours;
import spangle.report.Overtime.Offer;
import spangle.report.Overtime.State;

/** What overtime would buy, as the supervisor and the boss read it. */
class OvertimeWordsTest {
  private static final int FRI = 4 * 1440;
  private static final int SAT = 5 * 1440;
  private static final Hours EVENING = new Hours(FRI + 870, FRI + 930, List.of("Powder line"), 2);
  private static final Hours MORNING =
      new Hours(SAT + 360, SAT + 840, List.of("Powder line", "Kettle line"), 0);

  private static OvertimeWords words(Overtime overtime) {
    return new OvertimeWords(overtime, new WeekTime(LocalDate.of(2026, 11, 30)));
  }

  private static Overtime tried(int out, int tried, int beyond, Offer... offers) {
    return new Overtime(State.TRIED, 3, out, tried, beyond, 4, List.of(offers));
  }

  @Test
  void anHourOnFridayBringsAJobInByItsDate() {
    Offer hour =
        new Offer(
            List.of(EVENING),
            1,
            List.of(new Gain("H-104", "cleat", 30, FRI + 925, true)),
            List.of("H-104"));
    OvertimeWords words = words(tried(1, 1, 0, hour));

    assertThat(words.head()).isEqualTo("overtime Fri 14:30-15:30: 1 of 1 lot");
    assertThat(words.lines())
        .containsExactly(
            "Fri 14:30 to 15:30 on Powder line (2 people): 1 of the 1 lot left out comes in: H-104"
                + " 30 x cleat Fri 15:25. H-104 is then wholly in time.");
    assertThat(hour.costMin()).isEqualTo(120);
  }

  @Test
  void severalStretchesAreNamedOnceForEachCrewAndWhatComesLateIsSaid() {
    Offer all =
        new Offer(
            List.of(EVENING, new Hours(FRI + 1000, FRI + 1060, List.of("Powder line"), 2), MORNING),
            5,
            List.of(new Gain("H-1", "plate", 50, SAT + 700, false)),
            List.of("A", "B", "C", "D", "E", "F"));

    assertThat(words(tried(10, 9, 1, all)).lines())
        .containsExactly(
            "Fri 14:30 to 15:30, Fri 16:40 to 17:40 on Powder line (2 people); Sat 06:00 to 14:00"
                + " on Powder line and Kettle line: 5 of the 10 lots left out come in: H-1 50 x"
                + " plate Sat 11:40 (after its date). A, B, C, D and 2 more are then wholly in"
                + " time.",
            "No hours help 1 of the 10 lots left out: see the reason of each.");
    assertThat(words(tried(10, 9, 1, all)).head()).isEqualTo("overtime on 2 days: 5 of 10 lots");
  }

  @Test
  void whereItOnlySavesLateWorkTheHeadSaysSo() {
    Offer saves = new Offer(List.of(EVENING), 0, List.of(), List.of("H-7", "H-8"));

    assertThat(words(tried(0, 0, 0, saves)).head())
        .isEqualTo("overtime Fri 14:30-15:30: 2 late jobs in time");
    assertThat(words(tried(0, 0, 0, saves)).lines())
        .containsExactly(
            "Fri 14:30 to 15:30 on Powder line (2 people): H-7, H-8 are then wholly in time.");
  }

  @Test
  void whatWasNotTriedOrBringsNothingIsSaid() {
    assertThat(words(tried(8, 3, 1)).lines())
        .containsExactly(
            "Overtime: 3 ways to work what the shop file allows were tried; none brings anything"
                + " in or in time.",
            "Of what is left out the 3 lots due first were tried.",
            "No hours help 1 of the 8 lots left out: see the reason of each.");
    assertThat(words(new Overtime(State.TOO_MUCH_OUT, 0, 900, 0, 0, 50, List.of())).lines())
        .singleElement()
        .asString()
        .contains("was not tried", "extra_days");
    assertThat(words(Overtime.NONE).lines()).isEmpty();
    assertThat(words(Overtime.NONE).head()).isEmpty();
  }

  @Test
  void onePersonIsOnePerson() {
    Offer alone =
        new Offer(
            List.of(new Hours(FRI + 870, FRI + 930, List.of("Liquid booth"), 1)),
            0,
            List.of(),
            List.of("H-7"));

    assertThat(words(tried(0, 0, 0, alone)).lines())
        .containsExactly(
            "Fri 14:30 to 15:30 on Liquid booth (one person): H-7 is then wholly in time.");
  }

  @Test
  void whereOnlyMaterialIsLackingNobodyIsAskedForHours() {
    Overtime lacking = new Overtime(State.NOT_ALLOWED, 0, 2, 0, 2, 1, List.of());
    Overtime hours = new Overtime(State.NOT_ALLOWED, 0, 2, 0, 1, 1, List.of());

    assertThat(words(lacking).lines())
        .containsExactly("No hours help 2 of the 2 lots left out: see the reason of each.");
    assertThat(words(hours).lines())
        .hasSize(2)
        .first()
        .asString()
        .contains("the shop file allows none");
  }
}
