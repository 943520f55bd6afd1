package spangle.audit;

import static spangle.audit.Audited.breaks;
import static spangle.audit.Audited.keeps;
import static spangle.plan.PlanFixtures.batch;
import static spangle.plan.PlanFixtures.load;
import static spangle.plan.PlanFixtures.powderLot;
import static spangle.plan.PlanFixtures.simpleBake;
import static spangle.plan.PlanFixtures.simpleDip;
import static spangle.plan.PlanFixtures.yard;
import static spangle.plan.PlanFixtures.zincLot;

import java.util.List;
import org.junit.jupiter.api.Test;
import spangle.equipment.Span;
import spangle.equipment.WorkCalendar;
import spangle.plan.BriefBuilder;
import spangle.plan.LoadBuilder;
import spangle.plan.MachineSpec;
import spangle.plan.PlannedBatch;

class MachineRulesTest {
  private final PlannedBatch first = simpleBake("oven-1 #1", "P01", 360, "A");

  private static MachineSpec capacity(MachineSpec m, int places, double maxMassKg) {
    return new MachineSpec(
        m.id(),
        m.name(),
        places,
        maxMassKg,
        m.calendar(),
        m.initialSetting(),
        m.turnaroundMin(),
        m.kgPerHour());
  }

  private static MachineSpec rest(MachineSpec m, int turnaroundMin, double kgPerHour) {
    return new MachineSpec(
        m.id(),
        m.name(),
        m.capacityUnits(),
        m.maxMassKg(),
        m.calendar(),
        m.initialSetting(),
        turnaroundMin,
        kgPerHour);
  }

  private static MachineSpec open(MachineSpec m, Span... spans) {
    return m.during(new WorkCalendar(List.of(spans)));
  }

  private static BriefBuilder oneLot() {
    return yard().lots(powderLot("A"));
  }

  @Test
  void carriersFindPlaces() {
    keeps(oneLot().machine("oven-1", m -> capacity(m, 1, 500)), first);
    breaks(
        "machine-places",
        "takes 1 places; oven-1 has 0",
        oneLot().machine("oven-1", m -> capacity(m, 0, 500)),
        first);
  }

  @Test
  void theOvenBearsWorkAndRack() {
    // 8 kg of work on a rack of 20 kg.
    keeps(oneLot().machine("oven-1", m -> capacity(m, 2, 28)), first);
    breaks(
        "machine-mass",
        "weighs 28 kg with its carriers; oven-1 bears 27.9",
        oneLot().machine("oven-1", m -> capacity(m, 2, 27.9)),
        first);
  }

  /**
   * A second bake after a first that ends at 395; set-up from {@code setup}, in at {@code start}.
   */
  private static PlannedBatch second(int setting, int setup, int start, int end) {
    LoadBuilder load =
        load("P02", "rack", "B")
            .number(2)
            .visit("hang", 2, 360, 360, 370)
            .visit("booth", 375, 380)
            .visit("unload", end + 5, end + 10)
            .row("B", 4, 60);
    return batch("oven-1 #2", "paint", "oven-1", setting, setup, start, end, load);
  }

  private static BriefBuilder twoLots() {
    return yard().lots(powderLot("A"), powderLot("B"));
  }

  @Test
  void oneBatchAfterTheOther() {
    keeps(twoLots(), first, second(0, 395, 395, 415));
    breaks(
        "one-batch-at-a-time",
        "is free after oven-1 #1",
        twoLots(),
        first,
        second(0, 394, 394, 414));
  }

  @Test
  void theTurnaroundIsKept() {
    BriefBuilder brief = twoLots().machine("oven-1", m -> rest(m, 7, 0));
    keeps(brief, first, second(0, 402, 402, 422));
    breaks("one-batch-at-a-time", "from Mon 06:42", brief, first, second(0, 401, 401, 421));
  }

  @Test
  void theOvenHasItsMinutesToHeatUp() {
    // 180 to 200 C takes 15 minutes.
    keeps(twoLots(), first, second(1, 395, 410, 420));
    breaks(
        "setting-change-made",
        "has 14 min of set-up; the change of setting takes 15",
        twoLots(),
        first,
        second(1, 396, 410, 420));
  }

  @Test
  void theFirstBatchChangesFromWhereTheOvenStands() {
    PlannedBatch hot =
        batch(
            "oven-1 #1",
            "paint",
            "oven-1",
            1,
            375,
            375,
            385,
            load("P01", "rack", "A")
                .visit("hang", 360, 370)
                .visit("booth", 370, 375)
                .visit("unload", 385, 390)
                .row("A", 4, 60));
    breaks("setting-change-made", "has 0 min of set-up", oneLot(), hot);
    keeps(
        oneLot()
            .machine(
                "oven-1",
                m ->
                    new MachineSpec(
                        m.id(), m.name(), m.capacityUnits(), m.maxMassKg(), m.calendar(), 1, 0, 0)),
        hot);
  }

  @Test
  void aBatchLiesInsideTheHours() {
    keeps(oneLot().machine("oven-1", m -> open(m, new Span(375, 395))), first);
    breaks(
        "machine-hours",
        "oven-1 is not open throughout",
        oneLot().machine("oven-1", m -> open(m, new Span(375, 394))),
        first);
  }

  @Test
  void aBatchIsNotInterrupted() {
    breaks(
        "machine-hours",
        "not open throughout",
        oneLot().machine("oven-1", m -> open(m, new Span(360, 385), new Span(385, 840))),
        first);
  }

  @Test
  void theSetUpLiesInTheSameHoursAsItsBatch() {
    BriefBuilder brief = twoLots();
    keeps(
        brief.machine("oven-1", m -> open(m, new Span(375, 420))), first, second(1, 395, 410, 420));
    breaks(
        "machine-hours",
        "runs Mon 06:35 to Mon 07:00",
        twoLots().machine("oven-1", m -> open(m, new Span(375, 400), new Span(400, 420))),
        first,
        second(1, 395, 410, 420));
  }

  @Test
  void theKettleIsNotGivenMoreSteelThanItsHeatTakes() {
    // 40 kg of steel at 48 kg/h: the next dip 50 minutes after this one.
    BriefBuilder brief =
        yard().lots(zincLot("Y"), zincLot("Z")).machine("kettle", m -> rest(m, 0, 48));
    PlannedBatch one = simpleDip("kettle #1", "Z01", 360, "Y");
    keeps(brief, one, simpleDip("kettle #2", "Z02", 410, "Z"));
    breaks(
        "heat-per-hour",
        "40 kg at 48 kg/h take 50 min",
        brief,
        one,
        simpleDip("kettle #2", "Z02", 409, "Z"));
  }
}
