package spangle.plan.event;

import static org.assertj.core.api.Assertions.assertThat;
import static spangle.plan.PlanFixtures.dip;
import static spangle.plan.PlanFixtures.load;
import static spangle.plan.PlanFixtures.powderLot;
import static spangle.plan.PlanFixtures.simpleBake;
import static spangle.plan.PlanFixtures.yard;
import static spangle.plan.PlanFixtures.zincLot;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import spangle.equipment.Span;
import spangle.equipment.WorkCalendar;
import spangle.plan.BathSpec;
import spangle.plan.Brief;
import spangle.plan.BriefBuilder;
import spangle.plan.LoadTimes;
import spangle.plan.PlacesOut;
import spangle.plan.PlannedBatch;

/** How what was reported moves the times of what stays. */
class SlippageTest {
  private static final PlannedBatch LATE = simpleBake("oven-1 #1", "P1", 360, "A");

  private static PlannedBatch doneAt(int minute) {
    LoadState done = LoadState.planned("P1", "oven-1 #1").at(Stage.DONE, minute);
    return new Slippage(yard().lots(powderLot("A")).build(), 410).settle(LATE, Map.of("P1", done));
  }

  private static int last(PlannedBatch batch) {
    return LoadTimes.last(batch, batch.loads().get(0));
  }

  @Test
  void whatIsDoneSoonerThanPlannedWasSoonerAllAlong() {
    int sooner = last(LATE) - 390;
    PlannedBatch settled = doneAt(390);
    assertThat(last(settled)).isEqualTo(390);
    assertThat(settled.startMin()).isEqualTo(LATE.startMin() - sooner);
  }

  @Test
  void nothingBeganBeforeTheWeekDid() {
    PlannedBatch settled = doneAt(5);
    assertThat(settled.setupStartMin()).isNotNegative();
    assertThat(settled.dwellMin()).isEqualTo(LATE.dwellMin());
    // Hang 0 to 10, booth to 15, oven to 35, off by 40: one after the other from zero on.
    assertThat(LoadTimes.first(settled)).isZero();
    assertThat(settled.startMin()).isEqualTo(15);
    assertThat(last(settled)).isEqualTo(40);
  }

  /** Two loads hang and are to be pickled; the second tank is out from 400 to 500. */
  @Test
  void whatHangsTakesATankThatWorks() {
    PlannedBatch planned =
        dip(
            "kettle #1",
            450,
            454,
            load("Z1", "beam", "z")
                .visit("pickle", 2, 418, 418, 448)
                .visit("flux", 448, 450)
                .visit("cool", 454, 464));
    LoadState hung = LoadState.planned("Z1", "kettle #1").at(Stage.HUNG, 400);
    Brief brief =
        yard()
            .lots(zincLot("z"))
            .station(
                "pickle", s -> s.having(s.alike(), List.of(new PlacesOut(1, new Span(400, 500)))))
            .build();
    PlannedBatch settled = new Slippage(brief, 410).settle(planned, Map.of("Z1", hung));
    assertThat(settled.loads().get(0).visits().get(0).place()).isEqualTo(1);
    assertThat(settled.startMin()).isEqualTo(450);

    Slippage busy = new Slippage(brief, 410);
    busy.place(
        dip(
            "kettle #0",
            900,
            904,
            load("Z0", "beam", "o").number(2).visit("pickle", 1, 410, 410, 430)));
    PlannedBatch waits = busy.settle(planned, Map.of("Z1", hung));
    // the first tank is free at 430: twelve minutes later than planned
    assertThat(waits.loads().get(0).visits().get(0).place()).isEqualTo(1);
    assertThat(waits.startMin()).isEqualTo(462);
  }

  /** In the kettle for four minutes, then ten of cooling: each as soon as its own hours allow. */
  @Test
  void whatWaitsForTheMorningDoesNotWaitForTheSameHourOfTheNextDay() {
    int end = BriefBuilder.shifts().open().get(0).endMin();
    int morning = BriefBuilder.shifts().open().get(1).startMin();
    PlannedBatch planned =
        dip(
            "kettle #1",
            end - 6,
            end - 2,
            load("Z1", "beam", "z")
                .visit("pickle", 1, end - 40, end - 40, end - 10)
                .visit("flux", end - 10, end - 8)
                .visit("cool", morning, morning + 10));
    LoadState hung = LoadState.planned("Z1", "kettle #1").at(Stage.HUNG, end - 40);
    PlannedBatch settled =
        new Slippage(yard().lots(zincLot("z")).build(), end - 3)
            .settle(planned, Map.of("Z1", hung));

    assertThat(settled.startMin()).isEqualTo(morning);
    assertThat(settled.loads().get(0).visits().get(2).startMin()).isEqualTo(morning + 4);
    assertThat(settled.loads().get(0).visits().get(0).startMin()).isEqualTo(end - 40);

    LoadState inside = hung.at(Stage.IN_PROCESS, end - 5);
    PlannedBatch late =
        new Slippage(yard().lots(zincLot("z")).build(), end - 3)
            .settle(planned, Map.of("Z1", inside));
    // A minute late into the zinc; cooling begins when it was to begin all the same.
    assertThat(late.startMin()).isEqualTo(end - 5);
    assertThat(late.loads().get(0).visits().get(2).startMin()).isEqualTo(morning);
  }

  /** Read 200 mm down at 380; it covers the work no more than 150 mm down; filled up at 600. */
  @Test
  void whatHangsWaitsForZincThatCoversIt() {
    PlannedBatch planned =
        dip(
            "kettle #1",
            450,
            454,
            load("Z1", "beam", "z")
                .visit("pickle", 1, 418, 418, 448)
                .visit("flux", 448, 450)
                .visit("cool", 454, 464));
    LoadState hung = LoadState.planned("Z1", "kettle #1").at(Stage.HUNG, 380);
    BathSpec low =
        new BathSpec(
            "kettle",
            List.of(new BathSpec.Mark(380, 200, false), new BathSpec.Mark(600, 0, true)),
            0,
            List.of(new BathSpec.Need("z", 150)));
    Brief brief = yard().lots(zincLot("z")).bath(low).build();
    assertThat(new Slippage(brief, 400).settle(planned, Map.of("Z1", hung)).startMin())
        .isEqualTo(600);

    BathSpec enough = new BathSpec("kettle", low.marks(), 0, List.of(new BathSpec.Need("z", 200)));
    Brief covered = yard().lots(zincLot("z")).bath(enough).build();
    assertThat(new Slippage(covered, 400).settle(planned, Map.of("Z1", hung)).startMin())
        .isEqualTo(450);

    // What dips before it take counts too: 10 mm for each kilogram of zinc.
    BathSpec falling = new BathSpec("kettle", low.marks(), 10, enough.needs());
    Slippage after =
        new Slippage(
            yard().lots(zincLot("z"), zincLot("o").material(1)).bath(falling).build(), 400);
    after.place(dip("kettle #0", 410, 414, load("Z0", "beam", "o").number(2)));
    assertThat(after.settle(planned, Map.of("Z1", hung)).startMin()).isEqualTo(600);
  }

  private static PlannedBatch pickled(String batch, String load, String lot, int number) {
    return dip(
        batch,
        450,
        454,
        load(load, "beam", lot)
            .number(number)
            .visit("pickle", number, 418, 418, 448)
            .visit("flux", 448, 450)
            .visit("cool", 454, 464));
  }

  /** Nobody fills the bath: the low one waits behind the week and takes nothing from the other. */
  @Test
  void whatTheZincNeverCoversWaitsBehindTheWeekAndTakesOnlyItsCarrier() {
    BathSpec low =
        new BathSpec(
            "kettle",
            List.of(new BathSpec.Mark(380, 200, false)),
            0,
            List.of(new BathSpec.Need("z", 150)));
    Brief brief = yard().lots(zincLot("z"), zincLot("o")).bath(low).build();
    Map<String, LoadState> hung =
        Map.of(
            "Z1", LoadState.planned("Z1", "kettle #1").at(Stage.HUNG, 380),
            "Z2", LoadState.planned("Z2", "kettle #2").at(Stage.HUNG, 380));
    Slippage slippage = new Slippage(brief, 400);
    PlannedBatch waits = slippage.settle(pickled("kettle #1", "Z1", "z", 1), hung);
    int horizon = brief.horizonMin();
    assertThat(waits.startMin()).isEqualTo(horizon + 450 - 418);
    assertThat(waits.dwellMin()).isEqualTo(4);
    assertThat(waits.loads().get(0).visits())
        .extracting(v -> v.startMin() - waits.startMin())
        .containsExactly(-32, -2, 4);
    // The same stays, the same minutes, another load: nothing is in its way.
    assertThat(slippage.settle(pickled("kettle #2", "Z2", "o", 2), hung).startMin()).isEqualTo(450);

    // Filled at 500 it goes on from the minute of the next replan, not from where it waited.
    BathSpec full =
        new BathSpec(
            "kettle",
            List.of(new BathSpec.Mark(380, 200, false), new BathSpec.Mark(500, 0, false)),
            0,
            low.needs());
    Brief filled = yard().lots(zincLot("z"), zincLot("o")).bath(full).build();
    PlannedBatch again = new Slippage(filled, 505).settle(waits, hung);
    assertThat(again.startMin()).isEqualTo(505 + 32);
    // Reported in at 520, or done at 560, it was: its past stays are where they were.
    assertThat(
            new Slippage(filled, 530)
                .settle(waits, Map.of("Z1", hung.get("Z1").at(Stage.IN_PROCESS, 520)))
                .startMin())
        .isEqualTo(520);
    assertThat(
            last(
                new Slippage(filled, 570)
                    .settle(waits, Map.of("Z1", hung.get("Z1").at(Stage.DONE, 560)))))
        .isEqualTo(560);
  }

  /** In the kettle at 450; what follows finds its station shut for good. */
  @Test
  void whatCannotBeCooledThisWeekWaitsBehindTheMachineToo() {
    Brief brief =
        yard()
            .lots(zincLot("z"))
            .station("cool", s -> s.during(new WorkCalendar(List.of(new Span(360, 440)))))
            .build();
    LoadState in = LoadState.planned("Z1", "kettle #1").at(Stage.IN_PROCESS, 450);
    PlannedBatch settled =
        new Slippage(brief, 452).settle(pickled("kettle #1", "Z1", "z", 1), Map.of("Z1", in));
    assertThat(settled.startMin()).isEqualTo(450);
    assertThat(settled.loads().get(0).visits().get(2).startMin()).isEqualTo(brief.horizonMin());

    LoadState hung = LoadState.planned("Z1", "kettle #1").at(Stage.HUNG, 418);
    PlannedBatch out =
        new Slippage(brief, 430).settle(pickled("kettle #1", "Z1", "z", 1), Map.of("Z1", hung));
    assertThat(brief.isBeyond(out.startMin())).as("not dipped to lie hot").isTrue();
  }
}
