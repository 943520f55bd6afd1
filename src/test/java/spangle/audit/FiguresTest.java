package spangle.audit;

import static org.assertj.core.api.Assertions.assertThat;
import static spangle.plan.PlanFixtures.bake;
import static spangle.plan.PlanFixtures.batch;
import static spangle.plan.PlanFixtures.leftOut;
import static spangle.plan.PlanFixtures.load;
import static spangle.plan.PlanFixtures.plan;
import static spangle.plan.PlanFixtures.powderLot;
import static spangle.plan.PlanFixtures.simpleBake;
import static spangle.plan.PlanFixtures.withFigures;
import static spangle.plan.PlanFixtures.yard;

import java.util.List;
import org.junit.jupiter.api.Test;
import spangle.plan.Brief;
import spangle.plan.Finding;
import spangle.plan.Goals;
import spangle.plan.Kit;
import spangle.plan.Plan;
import spangle.plan.PlanFigures;
import spangle.plan.PlanFixtures;
import spangle.plan.PlannedBatch;

class FiguresTest {
  /** Every weight another power of ten, so that the sum can be read off. */
  private static final Goals TENS =
      new Goals(1, 10, 100, 1_000, 10_000, 100_000, 1_000_000, 0, 0, 0, 0, 0, 0);

  private static Kit kit(int sets, int dueMin, Kit.KitLine... lines) {
    return new Kit("cabinet", "pump cabinet", sets, dueMin, 5, List.of(lines));
  }

  /** All pieces of one lot of the yard. */
  private static Kit.KitLine line(String lot, int perSet) {
    return new Kit.KitLine("part-" + lot, "job-" + lot, perSet, 0);
  }

  private final PlannedBatch grey = simpleBake("oven-1 #1", "P01", 360, "A");

  /** Yellow at 200 C in the same oven: change of 10 in the booth, 15 in the oven. */
  private final PlannedBatch yellow =
      batch(
          "oven-1 #2",
          "paint",
          "oven-1",
          1,
          395,
          410,
          420,
          load("P02", "rack", "B")
              .number(2)
              .visit("hang", 2, 360, 360, 370)
              .visit("booth", 1, 375, 385, 390)
              .visit("unload", 420, 425)
              .row("B", 4, 60));

  @Test
  void everyTermIsCountedByHand() {
    Brief brief =
        yard()
            .lots(
                powderLot("A").due(400),
                powderLot("B").yellow().due(420).weight(2),
                powderLot("C").weight(3))
            .goals(TENS)
            .build();
    Plan plan =
        withFigures(
            plan(List.of(grey, yellow), List.of(leftOut("C"))),
            new PlanFigures(30, 2, 10, 3, 15, 1, 1, 2, 2, 0, 0, 0, 0, 3, 0, 2_254_050));
    // 30 minutes of oven; B is 5 minutes late with weight 2; settings cost 3 and 15 minutes, one
    // colour change of cost 1, two racks: 30 + 20 + 1 000 + 3 000 + 150 000 + 100 000 + 2 000 000.
    assertThat(Audit.of(brief, plan)).isEmpty();
  }

  @Test
  void aWrongFigureIsNamed() {
    Brief brief = yard().lots(powderLot("A")).build();
    PlanFigures right = Figures.of(new PlanView(brief, plan(grey)));
    PlanFigures wrong =
        new PlanFigures(
            right.runMinutes(),
            right.lateLots(),
            right.lateMinutes(),
            right.settingCost(),
            right.settingMinutes(),
            right.colourCost(),
            right.colourChanges(),
            right.loads() + 1,
            right.batches(),
            right.lateKits(),
            right.kitMinutes(),
            right.setMinutes(),
            right.trips(),
            right.leftOut(),
            right.moved(),
            right.goal());
    List<Finding> findings = Audit.of(brief, withFigures(plan(grey), wrong));
    assertThat(findings)
        .containsExactly(
            new Finding(
                "figures-add-up", "loads", "the plan states 2; counted from its batches: 1"));
  }

  @Test
  void aKitIsAsLateAsItsLastLot() {
    Kit kit = kit(1, 424, line("A", 4), line("B", 4));
    Brief brief =
        yard()
            .lots(powderLot("A").kits("cabinet"), powderLot("B").yellow().kits("cabinet"))
            .kit(kit)
            .build();
    PlanFigures figures = Figures.of(new PlanView(brief, plan(grey, yellow)));
    // A is done at 400, B at 425: one minute late, 25 minutes apart.
    assertThat(figures.lateKits()).isEqualTo(5);
    assertThat(figures.kitMinutes()).isEqualTo(25);
    assertThat(figures.setMinutes()).isEqualTo(425 * 5);
  }

  @Test
  void piecesTheSetsDoNotNeedMakeNoKitLate() {
    Kit half = kit(2, 424, line("A", 4), line("B", 2));
    Brief brief =
        yard()
            .lots(powderLot("A").of("J", "P"), powderLot("B").yellow().of("J", "P"))
            .kit(kit(2, 424, new Kit.KitLine("P", "J", 2, 0)))
            .build();
    PlanFigures figures = Figures.of(new PlanView(brief, plan(grey, yellow)));
    // Four pieces at 400 are both sets; the four at 425 are surplus.
    assertThat(figures.lateKits()).isZero();
    assertThat(figures.setMinutes()).isEqualTo(400 * 5);
    Brief both = yard().lots(powderLot("A"), powderLot("B").yellow()).kit(half).build();
    PlanFigures late = Figures.of(new PlanView(both, plan(grey, yellow)));
    // One set of four A and two B at 425; the second has no A: it counts to the horizon, 10080.
    assertThat(late.lateKits()).isEqualTo(5);
    assertThat(late.setMinutes()).isEqualTo((425 + 10_080) / 2 * 5);
    assertThat(late.kitMinutes()).isEqualTo(25 / 2);
  }

  @Test
  void tripsToAnotherFirmAreNoMinutesOfOvens() {
    Brief brief = yard().lots(powderLot("A")).awayLine("paint").build();
    PlanFigures figures = Figures.of(new PlanView(brief, plan(grey)));
    assertThat(figures.runMinutes()).isZero();
    assertThat(figures.trips()).isEqualTo(1);
  }

  @Test
  void aKitInTimeIsNotLate() {
    Kit kit = kit(1, 400, line("A", 4));
    Brief brief = yard().lots(powderLot("A").kits("cabinet")).kit(kit).build();
    PlanFigures figures = Figures.of(new PlanView(brief, plan(grey)));
    assertThat(figures.lateKits()).isZero();
    assertThat(figures.kitMinutes()).isZero();
  }

  @Test
  void aLoadMovesWhenItsPlaceOrTimeDoes() {
    PlannedBatch other =
        bake("oven-2 #1", "oven-2", 0, 375, 395, PlanFixtures.simpleLoad("P01", 360, "A"));
    PlanFigures same =
        Figures.of(new PlanView(yard().lots(powderLot("A")).announced(grey).build(), plan(grey)));
    PlanFigures moved =
        Figures.of(new PlanView(yard().lots(powderLot("A")).announced(grey).build(), plan(other)));
    assertThat(same.moved()).isZero();
    assertThat(moved.moved()).isEqualTo(5);
  }

  /** Each is a line somebody has to read: another carrier, another heat, another time to hang. */
  @Test
  void aLoadThatHangsOrBakesOtherwiseHasMovedToo() {
    PlannedBatch hotter =
        bake("oven-1 #1", "oven-1", 1, 375, 395, PlanFixtures.simpleLoad("P01", 360, "A"));
    PlannedBatch onTheFrame =
        bake(
            "oven-1 #1",
            "oven-1",
            0,
            375,
            395,
            load("P01", "frame", "A")
                .visit("hang", 360, 370)
                .visit("booth", 370, 375)
                .visit("unload", 395, 400));
    Brief brief = yard().lots(powderLot("A")).announced(grey).build();
    assertThat(Figures.of(new PlanView(brief, plan(hotter))).moved()).isEqualTo(5);
    assertThat(Figures.of(new PlanView(brief, plan(onTheFrame))).moved()).isEqualTo(5);
    assertThat(Figures.of(new PlanView(brief, plan(hungAt(330)))).moved()).isZero();
    assertThat(Figures.of(new PlanView(brief, plan(hungAt(329)))).moved()).isEqualTo(5);
  }

  private static PlannedBatch hungAt(int minute) {
    return bake(
        "oven-1 #1",
        "oven-1",
        0,
        375,
        395,
        load("P01", "rack", "A")
            .visit("hang", minute, minute + 10)
            .visit("booth", 370, 375)
            .visit("unload", 395, 400));
  }

  @Test
  void aKitThatIsCompleteADayLaterCountsAsManyLoads() {
    PlannedBatch soon = simpleBake("oven-1 #2", "P02", 400, "B");
    PlannedBatch tuesday = simpleBake("oven-1 #2", "P02", 1800, "B");
    Kit kit = kit(1, 5000, line("A", 4), line("B", 4));
    Brief brief =
        yard()
            .lots(powderLot("A").kits("cabinet"), powderLot("B").kits("cabinet"))
            .kit(kit)
            .announced(grey, soon)
            .build();
    assertThat(Figures.of(new PlanView(brief, plan(grey, soon))).moved()).isZero();
    // The load itself, five times for today, and the kit.
    assertThat(Figures.of(new PlanView(brief, plan(grey, tuesday))).moved()).isEqualTo(5 + 50);
    assertThat(Figures.of(new PlanView(brief, plan(grey))).moved()).isEqualTo(50);
    Brief never =
        yard()
            .lots(powderLot("A").kits("cabinet"), powderLot("B").kits("cabinet"))
            .kit(kit)
            .announced(grey)
            .build();
    // No day was announced for it: none can be later.
    assertThat(Figures.of(new PlanView(never, plan(grey, tuesday))).moved()).isZero();
  }

  @Test
  void aQuarterOfAnHourIsNoMoveAndNewWorkIsNone() {
    PlannedBatch later = PlanFixtures.simpleBake("oven-1 #1", "P01", 375, "A");
    PlannedBatch muchLater = PlanFixtures.simpleBake("oven-1 #1", "P01", 376, "A");
    PlannedBatch added = PlanFixtures.simpleBake("oven-1 #2", "P02", 420, "B");
    Brief brief = yard().lots(powderLot("A"), powderLot("B")).announced(grey).build();
    assertThat(Figures.of(new PlanView(brief, plan(later, added))).moved()).isZero();
    assertThat(Figures.of(new PlanView(brief, plan(muchLater, added))).moved()).isEqualTo(5);
  }

  @Test
  void aLoadOfALaterDayCountsOnceAndLotsAlikeStandInForOneAnother() {
    PlannedBatch tuesday = PlanFixtures.simpleBake("oven-1 #2", "P02", 1800, "B");
    PlannedBatch later = PlanFixtures.simpleBake("oven-1 #2", "P02", 1900, "B");
    Brief brief =
        yard()
            .lots(powderLot("A").of("J", "P"), powderLot("B").of("J", "P"))
            .announced(grey, tuesday)
            .build();
    assertThat(Figures.of(new PlanView(brief, plan(grey, later))).moved()).isEqualTo(5);
    PlannedBatch swappedFirst = PlanFixtures.simpleBake("oven-1 #1", "P01", 360, "B");
    PlannedBatch swappedThen = PlanFixtures.simpleBake("oven-1 #2", "P02", 1800, "A");
    assertThat(Figures.of(new PlanView(brief, plan(swappedFirst, swappedThen))).moved()).isZero();
    Brief apart = yard().lots(powderLot("A"), powderLot("B")).announced(grey, tuesday).build();
    assertThat(Figures.of(new PlanView(apart, plan(grey, later))).moved()).isEqualTo(1);
  }
}
