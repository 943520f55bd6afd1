package spangle.solve;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import spangle.plan.BathSpec;
import spangle.plan.LeftOut;
import spangle.plan.Lot;
import spangle.plan.Supply;
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
  private final WeekPlan week;
  private final Floor floor;
  private final Map<String, LeftOut> outside;

  /**
   * What a week does not hold.
   *
   * @param outside lots that may stand in no row, and why
   */
  LeftOuts(WeekPlan week, Map<String, LeftOut> outside) {
    this.week = week;
    this.floor = week.floor;
    this.outside = Map.copyOf(outside);
  }

  /** Weight of the lots that stand in no row. */
  long outsideWeight() {
    boolean[] in = inRows();
    long sum = 0;
    for (LotFacts lot : floor.lots) {
      if (lot.hasPlace() && !in[lot.index]) {
        sum += lot.lot.weight();
      }
    }
    return sum;
  }

  /** Whether a lot stands in a row, with or without a time; frozen ones do. */
  boolean[] inRows() {
    boolean[] in = floor.frozenLots();
    for (int l = 0; l < floor.lines.length; l++) {
      LinePlan line = week.line(l);
      for (int m = 0; m < line.size(); m++) {
        for (int k = 0; k < line.row(m).size(); k++) {
          for (Load load : line.row(m).batch(k).loads) {
            for (int lot : load.lots) {
              in[lot] = true;
            }
          }
        }
      }
    }
    return in;
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
    double[] wanted = new double[floor.lots.length];
    for (int l = 0; l < floor.lines.length; l++) {
      LinePlan line = week.line(l);
      for (int m = 0; m < line.size(); m++) {
        Row row = line.row(m);
        for (int k = 0; k < row.size(); k++) {
          if (!row.runs(k)) {
            mark(row.batch(k), row.start(k), why);
            wants(row.batch(k), wanted);
          }
        }
      }
    }
    boolean[] frozen = floor.frozenLots();
    boolean[] in = inRows();
    for (LotFacts lot : floor.lots) {
      if (frozen[lot.index]) {
        continue;
      }
      if (lot.hasPlace() && !in[lot.index]) {
        left.add(outside(lot));
      } else if (!lot.hasPlace()) {
        left.add(
            new LeftOut(
                lot.lot.id(),
                LeftOut.NO_PLACE,
                "no machine of its line, setting or carrier takes it",
                OptionalInt.empty()));
      } else if (why[lot.index] < 0) {
        left.add(reason(lot, own(lot, Loss.ofStart(why[lot.index]), wanted[lot.index])));
      }
    }
    return left;
  }

  private LeftOut outside(LotFacts lot) {
    LeftOut told = outside.get(lot.lot.id());
    return told != null
        ? told
        : new LeftOut(lot.lot.id(), Loss.NO_TIME.code(), Loss.NO_TIME.words(), OptionalInt.empty());
  }

  private static void mark(Batch batch, int start, int[] why) {
    for (Load load : batch.loads) {
      for (int lot : load.lots) {
        why[lot] = start;
      }
    }
  }

  /** Notes for each lot what all of its batch together draw on its supply. */
  private void wants(Batch batch, double[] wanted) {
    int[] lots = Stream.of(batch.loads).flatMapToInt(l -> IntStream.of(l.lots)).toArray();
    for (int lot : lots) {
      wanted[lot] =
          IntStream.of(lots)
              .filter(other -> floor.lots[other].supply == floor.lots[lot].supply)
              .mapToDouble(other -> floor.lots[other].lot.materialKg())
              .sum();
    }
  }

  /**
   * A batch may have lost its time by what only one of its lots lacks; the others lack no more than
   * a batch that runs.
   */
  private Loss own(LotFacts lot, Loss loss, double wanted) {
    boolean its =
        switch (loss) {
          case EARLIER_LEG, GAP_TOO_LONG -> lot.after >= 0;
          case NO_SUPPLY -> lacksMaterial(lot, wanted);
          case NO_ZINC_OVER_IT ->
              floor.brief.baths().stream().anyMatch(b -> b.spareMm(lot.lot.id()).isPresent());
          case NO_TIME, WAITS_TOO_LONG, NO_CARRIER -> true;
        };
    return its ? loss : Loss.NO_TIME;
  }

  /**
   * Whether what the plan draws leaves too little of its material for all its batch wants of it.
   */
  private boolean lacksMaterial(LotFacts lot, double wanted) {
    double there =
        floor.brief.supplyOf(lot.lot.finish()).stream()
            .flatMap(supply -> supply.arrivals().stream())
            .mapToDouble(Supply.Arrival::amount)
            .sum();
    double drawn = 0;
    for (LotFacts other : floor.lots) {
      if (other.supply == lot.supply && week.lotEnd(other.index) >= 0) {
        drawn += other.lot.materialKg();
      }
    }
    return lot.supply >= 0 && drawn + wanted > there + 1e-9;
  }

  private LeftOut reason(LotFacts lot, Loss loss) {
    return new LeftOut(lot.lot.id(), loss.code(), words(lot.lot, loss), OptionalInt.empty());
  }

  private String words(Lot lot, Loss loss) {
    if (loss == Loss.NO_SUPPLY) {
      return lot.drawWords() + " is not in the shop in time";
    }
    if (loss == Loss.NO_ZINC_OVER_IT) {
      return floor.brief.baths().stream()
          .filter(bath -> lot.machines().contains(bath.machineId()))
          .filter(bath -> bath.spareMm(lot.id()).isPresent())
          .findFirst()
          .map(bath -> zincWords(bath, bath.spareMm(lot.id()).orElseThrow()))
          .orElse(loss.words());
    }
    return loss.words();
  }

  private static String zincWords(BathSpec bath, double spareMm) {
    return String.format(
        Locale.ROOT,
        "the zinc of %s covers it only while it stands no more than %.0f mm below its mark, and no"
            + " top-up in the plan's hours brings it there in time: put one into the kettle's"
            + " maintenance",
        bath.machineId(),
        Math.floor(spareMm));
  }
}
