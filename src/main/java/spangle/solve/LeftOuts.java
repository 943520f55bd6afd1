package spangle.solve;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalInt;
import spangle.plan.LeftOut;
import spangle.plan.clock.Batch;
import spangle.plan.clock.Floor;
import spangle.plan.clock.LinePlan;
import spangle.plan.clock.Load;
import spangle.plan.clock.Loss;
import spangle.plan.clock.LotFacts;
import spangle.plan.clock.Row;
import spangle.plan.clock.WeekPlan;

/** What the plan does not hold, with the reason. */
final class LeftOuts {
  /** No machine, setting or carrier takes the lot at all. */
  static final String NO_PLACE = "no-place";

  private final WeekPlan week;
  private final Floor floor;

  LeftOuts(WeekPlan week) {
    this.week = week;
    this.floor = week.floor;
  }

  static long weightWithoutPlace(Floor floor) {
    boolean[] frozen = floor.frozenLots();
    long sum = 0;
    for (LotFacts lot : floor.lots) {
      sum += lot.hasPlace() || frozen[lot.index] ? 0 : lot.lot.weight();
    }
    return sum;
  }

  List<LeftOut> list() {
    List<LeftOut> left = new ArrayList<>();
    int[] why = new int[floor.lots.length];
    for (int l = 0; l < floor.lines.length; l++) {
      LinePlan line = week.line(l);
      for (int m = 0; m < line.size(); m++) {
        Row row = line.row(m);
        for (int k = 0; k < row.size(); k++) {
          if (!row.runs(k)) {
            mark(row.batch(k), row.start(k), why);
          }
        }
      }
    }
    boolean[] frozen = floor.frozenLots();
    for (LotFacts lot : floor.lots) {
      if (frozen[lot.index]) {
        continue;
      }
      if (!lot.hasPlace()) {
        left.add(
            new LeftOut(
                lot.lot.id(),
                NO_PLACE,
                "no machine of its line, setting or carrier takes it",
                OptionalInt.empty()));
      } else if (why[lot.index] < 0) {
        left.add(reason(lot, Loss.ofStart(why[lot.index])));
      }
    }
    return left;
  }

  private static void mark(Batch batch, int start, int[] why) {
    for (Load load : batch.loads) {
      for (int lot : load.lots) {
        why[lot] = start;
      }
    }
  }

  private LeftOut reason(LotFacts lot, Loss loss) {
    String words =
        loss == Loss.NO_SUPPLY
            ? String.format(
                Locale.ROOT,
                "%.2f of %s are not there in time",
                lot.lot.materialKg(),
                lot.lot.finish().name())
            : loss.words();
    return new LeftOut(lot.lot.id(), loss.code(), words, OptionalInt.empty());
  }
}
