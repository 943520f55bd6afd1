package spangle.solve;

import static org.assertj.core.api.Assertions.assertThat;
import static spangle.plan.WeekOf.LotOf.lot;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import spangle.audit.Audit;
import spangle.plan.Brief;
import spangle.plan.LineKind;
import spangle.plan.Plan;
import spangle.plan.SetupTable;
import spangle.plan.WeekOf;

/**
 * Two kits of two sets, eight pieces, an oven that bakes one piece an hour and four a day. The sets
 * that a day holds are made on it: 120, 240 and, from the next morning at 1440, 1560 and 1680, in
 * the mean of each kit and both together 1800. Handles first and plates after them come to 3180: no
 * set on the first day.
 */
class SetsByDayTest {
  private static Brief week() {
    WeekOf week =
        new WeekOf()
            .line(
                "powder",
                LineKind.POWDER,
                List.of(),
                List.of(WeekOf.oven("oven", 1, WeekOf.open(0, 240, 1440, 1680))),
                List.of(),
                SetupTable.none(List.of("180 C")))
            .rack("rack", "powder", 8)
            .kit("gate", 2, 5000, 1, "gate handle", 1, "gate plate", 1)
            .kit("lamp", 2, 5000, 1, "lamp handle", 1, "lamp plate", 1);
    for (String part : List.of("gate handle", "lamp handle", "gate plate", "lamp plate")) {
      for (int k = 1; k <= 2; k++) {
        week.lot(
            lot(part + k, "powder")
                .part(part)
                .kit(part.substring(0, 4))
                .alone()
                .dwell(0, 60, 90)
                .in("oven")
                .on("rack"));
      }
    }
    return week.brief();
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3})
  void setsAreMadeDayByDay(long seed) {
    Brief brief = week();
    Plan plan =
        new Solver().solve(brief, new SolveOptions(0, 20_000, seed, 1), ProgressListener.NOBODY);
    assertThat(plan.figures().setMinutes()).isEqualTo(1800);
    assertThat(plan.figures().leftOut()).isZero();
    assertThat(Audit.of(brief, plan)).isEmpty();
  }
}
