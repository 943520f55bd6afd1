package spangle.solve;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;
import static spangle.plan.WeekOf.LotOf.lot;

import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import spangle.plan.Brief;
import spangle.plan.LeftOut;
import spangle.plan.LineKind;
import spangle.plan.Supply;
import spangle.plan.WeekOf;
import spangle.plan.clock.Batch;
import spangle.plan.clock.Floor;
import spangle.plan.clock.Load;
import spangle.plan.clock.Loss;
import spangle.plan.clock.WeekClock;
import spangle.plan.clock.WeekPlan;

/** Why a batch with no time leaves out each of its lots; kilograms by hand. */
class LeftOutsTest {
  private static final Supply GREY =
      new Supply("grey", "grey", List.of(new Supply.Arrival(0, 5, "G-1")));
  private static final Supply BLUE =
      new Supply("blue", "blue", List.of(new Supply.Arrival(0, 9, "B-1")));

  private static WeekOf.LotOf on(String id) {
    return lot(id, "paint").dwell(0, 20, 60).in("oven").on("rack").finish(0).due(1000);
  }

  /** All lots in one batch of one oven. */
  private static List<LeftOut> leftOut(WeekOf.LotOf... lots) {
    WeekOf week =
        new WeekOf()
            .line(
                "paint",
                LineKind.POWDER,
                List.of(),
                List.of(WeekOf.oven("oven", 6, WeekOf.always())),
                List.of(),
                WeekOf.changes(1, 0))
            .rack("rack", "paint", 9)
            .supply(GREY)
            .supply(BLUE);
    for (WeekOf.LotOf each : lots) {
      week.lot(each);
    }
    Brief brief = week.brief();
    Floor floor = Floor.of(brief);
    Load[] loads =
        IntStream.range(0, lots.length).mapToObj(k -> floor.single(k, 0)).toArray(Load[]::new);
    WeekPlan plan = new WeekClock(floor).plan(new Batch[][][] {{{Batch.of(0, loads)}}});
    return new LeftOuts(plan, Map.of()).list();
  }

  @Test
  void twoThatTogetherWantMoreThanIsThereLackItThoughEachAloneWouldNot() {
    // 3 kg and 3 kg of the 5 kg there are
    assertThat(leftOut(on("a").draws("grey", 3), on("b").draws("grey", 3)))
        .extracting(LeftOut::lotId, LeftOut::code)
        .containsExactly(tuple("a", Loss.NO_SUPPLY.code()), tuple("b", Loss.NO_SUPPLY.code()));
  }

  @Test
  void whatHasEnoughBesideThemLacksTime() {
    assertThat(leftOut(on("a").draws("grey", 6), on("c").draws("blue", 1)))
        .extracting(LeftOut::lotId, LeftOut::code)
        .containsExactly(tuple("a", Loss.NO_SUPPLY.code()), tuple("c", Loss.NO_TIME.code()));
  }

  @Test
  void whatIsThereIsEnoughForBoth() {
    assertThat(leftOut(on("a").draws("grey", 3), on("b").draws("grey", 2))).isEmpty();
  }
}
