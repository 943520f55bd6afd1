package spangle.intake.brief;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import spangle.coating.zinc.ZincBath;
import spangle.coating.zinc.ZincBudget;
import spangle.equipment.KettleProfile;
import spangle.fit.FitAnswer;
import spangle.intake.week.Maintenance;
import spangle.intake.week.Shop;
import spangle.intake.week.StationUse;
import spangle.intake.week.WeekInput;
import spangle.intake.week.Zinc;
import spangle.plan.BathSpec;
import spangle.plan.BathSpec.Mark;
import spangle.plan.BathSpec.Need;
import spangle.plan.FinishKind;
import spangle.plan.Lot;

/**
 * What a plan must know of the zinc of each kettle: the level as somebody read it, the stops in
 * which it is filled up, and how far it may fall for each lot that hangs deep.
 */
public final class BathMaker {
  private BathMaker() {}

  /** When the level of a kettle is known, in the order of time. */
  public static List<Mark> marks(Shop shop, StationUse kettle) {
    List<Mark> marks = new ArrayList<>();
    for (Maintenance stop : shop.maintenance()) {
      if (stop.topUp() && stop.stationId().equals(kettle.id())) {
        marks.add(new Mark(stop.span().endMin(), 0, true));
      }
    }
    marks.add(new Mark(kettle.levelAtMin(), kettle.levelDownMm(), false));
    if (kettle.levelAtMin() > 0) {
      marks.add(new Mark(0, 0, false));
    }
    marks.sort(Comparator.comparingInt(Mark::atMin).thenComparing(Mark::filled));
    return marks;
  }

  /** Fall of the level for each kilogram of zinc that stays on the work, mm. */
  public static double mmPerKg(ZincBath bath, WeekInput input) {
    double yield = input.catalogue().zinc().map(Zinc::yield).orElse(ZincBudget.USUAL_YIELD);
    return bath.levelDropMm(1 / yield);
  }

  /**
   * Baths that may stand too low for one of these lots.
   *
   * @param kettles what each kettle answers for a part, by order and part
   */
  static List<BathSpec> baths(
      WeekInput input, List<Lot> lots, Map<String, Map<String, FitAnswer>> kettles) {
    List<BathSpec> baths = new ArrayList<>();
    for (ZincWay way : KettleWays.of(input.shop())) {
      StationUse use = way.use();
      List<Need> needs = new ArrayList<>();
      for (Lot lot : lots) {
        FitAnswer fit =
            kettles.getOrDefault(lot.jobId() + "\n" + lot.partId(), Map.of()).get(use.id());
        if (fit != null
            && lot.finish().kind() == FinishKind.ZINC
            && lot.machines().contains(use.id())) {
          needs.add(new Need(lot.id(), Math.max(0, fit.margin().depthMm())));
        }
      }
      if (!needs.isEmpty()) {
        KettleProfile kettle = way.kettle();
        ZincBath bath =
            new ZincBath(
                kettle.inside().lengthMm(),
                kettle.inside().widthMm(),
                kettle.inside().heightMm(),
                kettle.bathC());
        baths.add(new BathSpec(use.id(), marks(input.shop(), use), mmPerKg(bath, input), needs));
      }
    }
    return baths;
  }
}
