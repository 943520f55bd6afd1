package spangle.audit;

import java.util.List;
import java.util.OptionalDouble;
import spangle.plan.BathSpec;
import spangle.plan.Lot;

/**
 * Nothing goes into zinc that does not cover it: the level is followed dip by dip from what was
 * read or filled last.
 */
final class ZincCovers extends Rule {
  /** A thousandth of a millimetre. */
  private static final double ROUNDING = 1e-3;

  ZincCovers() {
    super(
        "zinc-covers",
        "A part is dipped only while the zinc stands high enough to cover it.",
        "Every lot is dipped while the zinc covers it");
  }

  @Override
  void check(PlanView view, Findings findings) {
    for (BathSpec bath : view.brief().baths()) {
      List<BatchView> dips = view.byMachine().getOrDefault(bath.machineId(), List.of());
      for (BatchView dip : dips) {
        int at = dip.batch().startMin();
        if (at < lastRead(bath) || dip.waits(view.brief().horizonMin())) {
          continue;
        }
        double down = down(bath, dips, dip);
        for (LoadView load : dip.loads()) {
          for (Lot lot : load.lots()) {
            OptionalDouble spare = bath.spareMm(lot.id());
            if (spare.isPresent() && down > spare.getAsDouble() + ROUNDING) {
              findings.add(
                  dip.batch().id(),
                  "lot "
                      + lot.id()
                      + " needs the zinc no more than "
                      + Words.number(spare.getAsDouble())
                      + " mm below its mark; it stands "
                      + Words.number(down)
                      + " mm below");
            }
          }
        }
      }
    }
  }

  /** What went in before somebody last read the level is fact. */
  private static int lastRead(BathSpec bath) {
    return bath.marks().stream()
        .filter(mark -> !mark.filled())
        .mapToInt(BathSpec.Mark::atMin)
        .max()
        .orElse(0);
  }

  private static double down(BathSpec bath, List<BatchView> dips, BatchView dip) {
    int at = dip.batch().startMin();
    BathSpec.Mark last = new BathSpec.Mark(Integer.MIN_VALUE, 0, false);
    for (BathSpec.Mark mark : bath.marks()) {
      last = mark.atMin() <= at ? mark : last;
    }
    double down = last.downMm();
    for (BatchView other : dips) {
      int start = other.batch().startMin();
      if (start >= last.atMin() && start < at) {
        down +=
            bath.mmPerKg()
                * other.loads().stream()
                    .flatMap(load -> load.lots().stream())
                    .mapToDouble(Lot::materialKg)
                    .sum();
      }
    }
    return down;
  }
}
