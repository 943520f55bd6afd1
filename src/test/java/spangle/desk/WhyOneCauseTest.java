package spangle.desk;

import static org.assertj.core.api.Assertions.assertThat;
import static spangle.plan.PlanFixtures.bake;
import static spangle.plan.PlanFixtures.load;
import static spangle.plan.PlanFixtures.powderLot;
import static spangle.plan.PlanFixtures.yard;
import static spangle.plan.PlanFixtures.zincLot;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import spangle.equipment.Span;
import spangle.equipment.WorkCalendar;
import spangle.plan.BathSpec;
import spangle.plan.Brief;
import spangle.plan.BriefBuilder;
import spangle.plan.Dwell;
import spangle.plan.Kit;
import spangle.plan.MachineSpec;
import spangle.plan.PlacesOut;
import spangle.plan.PlannedBatch;
import spangle.plan.StationSpec;
import spangle.plan.Supply;
import spangle.plan.Visit;
import spangle.plan.json.PlanFile;
import spangle.solve.ProgressListener;
import spangle.solve.SolveOptions;
import spangle.solve.Solver;

/**
 * Weeks of the yard shop in which exactly one thing holds lot a, of job-a. Work that is frozen in
 * front, lots f, stands for what has begun: its dates cannot slip.
 */
class WhyOneCauseTest {
  /** Lot f hangs on the rack when the week begins and is in the first oven until 395. */
  private static final PlannedBatch UNDER_WAY =
      bake(
          "F",
          "oven-1",
          0,
          375,
          395,
          load("FL", "rack", "f")
              .visit("hang", 360, 370)
              .visit("booth", 370, 375)
              .visit("unload", 395, 400));

  private static final WorkCalendar ALWAYS = WorkCalendar.always(7 * 1440);
  private static final WorkCalendar TUESDAY = new WorkCalendar(List.of(new Span(1800, 2280)));

  private static Arguments week(String cause, String said, BriefBuilder brief) {
    return Arguments.of(cause, said, brief.build());
  }

  static Stream<Arguments> weeks() {
    return Stream.of(
        week("ready", "ready only Tuesday 07:40", yard().lots(powderLot("a").ready(1900))),
        week(
            "material",
            "come Tuesday 07:40",
            yard().lots(powderLot("a")).supply("powder-grey", new Supply.Arrival(1900, 8, "G-2"))),
        week(
            "powder-lot",
            "tied to, G-2",
            yard()
                .lots(powderLot("a").fromLot("G-2").kits("K"))
                .kit(new Kit("K", "gate set", 4, 2280, 1, List.of()))
                .supply("powder-grey", new Supply.Arrival(0, 8, "G-1"))
                .kept("powder-grey", "G-2", new Supply.Arrival(1900, 8, "G-2"))),
        week(
            "kept-for-kit",
            "keeps some for kits: 8.0 kg in the store",
            yard()
                .lots(powderLot("a"), powderLot("b").fromLot("G-1").kits("K"))
                .kit(new Kit("K", "gate set", 4, 2280, 1, List.of()))
                .supply("powder-grey", new Supply.Arrival(1900, 8, "G-2"))
                .kept("powder-grey", "G-1", new Supply.Arrival(0, 8, "G-1"))),
        week(
            "zinc-level",
            "no more than 40 mm under its mark, which stands 60 mm under it when the week begins,"
                + " filled up Tuesday 07:40",
            yard()
                .lots(zincLot("a"))
                .bath(
                    new BathSpec(
                        "kettle",
                        List.of(new BathSpec.Mark(0, 60, false), new BathSpec.Mark(1900, 0, true)),
                        1,
                        List.of(new BathSpec.Need("a", 40))))),
        week(
            "leg-before",
            "the step before it, galvanized, hung",
            yard()
                .lots(
                    zincLot("a.1").job("job-a").earlierLeg(),
                    powderLot("a").job("job-a").after("a.1", 60, 900))),
        week("window", "the longest waits", window()),
        week(
            "carrier",
            "rack, of which there is 1",
            yard()
                .lots(powderLot("a"), powderLot("f"))
                .carrier("rack", c -> c.owning(1))
                .frozen(UNDER_WAY)),
        week(
            "colour-run",
            "the colour changes at booth",
            yard().lots(powderLot("a"), powderLot("f").yellow()).frozen(UNDER_WAY)),
        week(
            "station",
            "unload, which is busy",
            yard()
                .lots(powderLot("a"), powderLot("f"))
                .frozen(
                    bake(
                        "F",
                        "oven-1",
                        0,
                        360,
                        375,
                        load("FL", "rack", "f").visit("unload", 375, 600)))),
        week(
            "machine",
            "the ovens, which are busy",
            yard()
                .lots(powderLot("a").carriers("frame"), powderLot("f"), powderLot("f2"))
                .frozen(
                    bake("F", "oven-1", 0, 360, 700, load("FL", "rack", "f")),
                    bake("F2", "oven-2", 0, 360, 700, load("FL2", "rack", "f2")))),
        week(
            "setting",
            "the oven's change to another setting",
            yard()
                .lots(powderLot("a").dwells(new Dwell(0, 20, 40)))
                .machine("oven-1", WhyOneCauseTest::hot)
                .machine("oven-2", WhyOneCauseTest::hot)),
        week("hours", "the hours the powder line is manned", hours()),
        week(
            "crew",
            "booth, shut or short of crew for 8 h of the 16 h its line works",
            yard().lots(powderLot("a")).station("booth", s -> s.during(TUESDAY))),
        week(
            "crew",
            "kettle, shut or short of crew for 8 h of the 16 h its line works",
            yard().lots(zincLot("a")).machine("kettle", m -> m.during(TUESDAY))),
        week(
            "places-out",
            "places of pickle that are out of use or not manned",
            yard().lots(zincLot("a")).station("pickle", WhyOneCauseTest::bothOut)),
        week(
            "truck-days",
            "the days of the truck",
            yard()
                .lots(zincLot("a").dwells(new Dwell(0, 480, 480)))
                .awayLine("zinc")
                .machine("kettle", m -> m.during(new WorkCalendar(List.of(new Span(2000, 2480)))))
                .station("cool", s -> s.during(ALWAYS))),
        week("other-work", "the dates of others (job-b lot b)", balanced(600, 2280)),
        week("kit", "the dates of kits (gate set)", balanced(2280, 600)),
        week(
            "several",
            "several hold it at once",
            yard().lots(powderLot("a").ready(20_000)).supply("powder-grey")));
  }

  /** At 200 C: half an hour until it has cooled down to 180 C. */
  private static MachineSpec hot(MachineSpec m) {
    return new MachineSpec(
        m.id(), m.name(), m.capacityUnits(), m.maxMassKg(), m.calendar(), 1, 0, m.kgPerHour());
  }

  private static StationSpec bothOut(StationSpec s) {
    return s.having(s.alike(), List.of(new PlacesOut(2, new Span(360, 1800))));
  }

  /** The booth and the hanging places are taken until 820, so that the oven is shut before it. */
  private static BriefBuilder hours() {
    return yard()
        .lots(powderLot("a").carriers("frame"), powderLot("f"), powderLot("f2"), powderLot("f3"))
        .carrier("rack", c -> c.owning(5))
        .frozen(
            bake("F", "oven-1", 0, 820, 840, load("FL", "rack", "f").visit("booth", 360, 820)),
            bake(
                "F2",
                "oven-2",
                0,
                830,
                850,
                load("FL2", "rack", "f2").visit("hang", 360, 820).visit("booth", 820, 825),
                load("FL3", "rack", "f3")
                    .visit("hang", 2, 360, 360, 820)
                    .visit("booth", 825, 830)));
  }

  /**
   * Both lots take the booth for 100 minutes and oven-1 for 100: one more of either wins nothing,
   * only going first does, with which b would be done at 675 and not at 575.
   */
  private static BriefBuilder balanced(int dueMin, int kitDueMin) {
    Visit[] visits = {
      new Visit("hang", 10, 0), new Visit("booth", 0, 100), new Visit("unload", 5, 0)
    };
    Dwell[] dwells = {new Dwell(0, 100, 140)};
    return yard()
        .lots(
            powderLot("a").alone().machines("oven-1").dwells(dwells).visits(visits),
            powderLot("b")
                .alone()
                .batchGroup("b")
                .machines("oven-1")
                .dwells(dwells)
                .visits(visits)
                .due(dueMin)
                .kits("K"))
        .kit(
            new Kit(
                "K",
                "gate set",
                4,
                kitDueMin,
                1,
                List.of(new Kit.KitLine("part-b", "job-b", 1, 0))));
  }

  /**
   * The zinc is done at 406 and keeps for 100 minutes; until 590 both hanging places are taken and
   * until 625 the only frame, so that one more of either would not help.
   */
  private static BriefBuilder window() {
    return yard()
        .lots(
            zincLot("a.1").job("job-a").earlierLeg(),
            powderLot("a").job("job-a").carriers("frame").after("a.1", 60, 100),
            powderLot("f").carriers("frame"),
            powderLot("f2"))
        .frozen(
            bake(
                "F",
                "oven-1",
                0,
                605,
                625,
                load("FL", "frame", "f").visit("hang", 360, 590).visit("booth", 590, 595)),
            bake(
                "F2",
                "oven-2",
                0,
                605,
                625,
                load("FL2", "rack", "f2")
                    .visit("hang", 2, 360, 360, 590)
                    .visit("booth", 595, 600)));
  }

  @ParameterizedTest(name = "{0}: {1}")
  @MethodSource("weeks")
  void theOneThingThatHoldsItIsNamedAndNoOther(String cause, String said, Brief brief) {
    PlanFile file =
        new PlanFile(
            PlanFile.FORMAT,
            "A",
            "..",
            List.of(),
            Optional.empty(),
            List.of(),
            brief,
            new Solver().solve(brief, new SolveOptions(0, 2000, 1, 1), ProgressListener.NOBODY),
            List.of(),
            Optional.empty());

    Why why = WhyDesk.why(file, "job-a").get(0);

    assertThat(why.room()).as("room in %s", why).isEmpty();
    assertThat(why.holds()).extracting(Why.Hold::what).as("%s", why).containsExactly(cause);
    assertThat(why.holds().get(0).words()).contains(said);
    if (why.endMin().isPresent()) {
      Why.Hold hold = why.holds().get(0);
      int gain = why.endMin().getAsInt() - hold.endMin().orElseThrow();
      assertThat(hold.soonerMin()).hasValue(gain);
      assertThat(hold.words())
          .contains(
              "done "
                  + DayWords.of(hold.endMin().orElseThrow())
                  + " instead of "
                  + DayWords.of(why.endMin().getAsInt())
                  + " ("
                  + DayWords.length(gain)
                  + " sooner)");
    }
  }
}
