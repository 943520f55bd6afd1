package spangle.solve;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import spangle.equipment.Span;
import spangle.equipment.WorkCalendar;
import spangle.fit.hang.CarrierFace;
import spangle.plan.Brief;
import spangle.plan.CarrierSpec;
import spangle.plan.Goals;
import spangle.plan.LineKind;
import spangle.plan.MachineSpec;
import spangle.plan.SetupTable;
import spangle.plan.WeekOf;

/**
 * Small weeks by chance with everything the oven stage has: ovens of different size, mass, hours,
 * turnaround and first setting; cure windows at one or more settings; kinds of work that never
 * meet; set-ups from-to; lots of different size that may not go everywhere, with ready and due
 * times and weights.
 */
final class OvenWeek {
  private final Random random;

  private OvenWeek(long seed) {
    random = new Random(seed);
  }

  static Brief of(long seed, int lots) {
    return new OvenWeek(seed).brief(lots);
  }

  private Brief brief(int count) {
    int ovens = 1 + random.nextInt(3);
    int settings = 1 + random.nextInt(3);
    int span = 40 + count * (20 + random.nextInt(25)) / ovens;
    WeekOf week = new WeekOf().until(2 * span).goals(goals());
    List<MachineSpec> machines = new ArrayList<>();
    for (int m = 0; m < ovens; m++) {
      machines.add(
          new MachineSpec(
              "oven-" + m,
              "oven " + m,
              3 + random.nextInt(5),
              random.nextInt(3) == 0 ? 150 : Double.POSITIVE_INFINITY,
              hours(span),
              random.nextInt(settings),
              random.nextInt(2) * 3,
              random.nextInt(4) == 0 ? 300 : 0));
    }
    week.line("oven", LineKind.POWDER, List.of(), machines, List.of(), changes(settings));
    for (int size = 1; size <= 3; size++) {
      week.carrier(
          new CarrierSpec(
              "size-" + size,
              "size " + size,
              "oven",
              CarrierFace.plain(1000, 1000, CarrierFace.Style.FREE),
              Math.max(99, count),
              size,
              5,
              0,
              0));
    }
    for (int k = 0; k < count; k++) {
      week.lot(lot(k, ovens, settings, span));
    }
    return week.brief();
  }

  private Goals goals() {
    return switch (random.nextInt(3)) {
      case 0 -> new Goals(4, 200, 0, 10, 4, 0, 5, 0, 0, 0, 0, 100_000, 0);
      case 1 -> new Goals(20, 30, 1, 5, 0, 0, 0, 0, 0, 0, 0, 100_000, 0);
      default -> new Goals(2, 500, 2, 3, 1, 0, 1, 0, 0, 0, 0, 1_000_000, 0);
    };
  }

  private WorkCalendar hours(int span) {
    List<Span> spans = new ArrayList<>();
    int at = random.nextInt(20);
    while (at < 2 * span) {
      int end = Math.min(2 * span, at + 90 + random.nextInt(span));
      spans.add(new Span(at, end));
      at = end + (random.nextBoolean() ? 0 : 10 + random.nextInt(40));
    }
    return new WorkCalendar(spans);
  }

  private SetupTable changes(int settings) {
    List<String> names = new ArrayList<>();
    List<List<Integer>> minutes = new ArrayList<>();
    List<List<Integer>> costs = new ArrayList<>();
    for (int from = 0; from < settings; from++) {
      names.add("setting " + from);
      List<Integer> minuteRow = new ArrayList<>();
      List<Integer> costRow = new ArrayList<>();
      for (int to = 0; to < settings; to++) {
        minuteRow.add(from == to ? 0 : 2 + random.nextInt(12));
        costRow.add(from == to ? 0 : random.nextInt(15));
      }
      minutes.add(minuteRow);
      costs.add(costRow);
    }
    return new SetupTable(names, minutes, costs);
  }

  private WeekOf.LotOf lot(int k, int ovens, int settings, int span) {
    int ready = random.nextInt(span);
    WeekOf.LotOf lot =
        WeekOf.LotOf.lot("lot-" + k, "oven")
            .alone()
            .on("size-" + (1 + random.nextInt(3)))
            .group(random.nextInt(6) == 0 ? "degas" : "powder")
            .mass(5 + random.nextInt(40))
            .ready(ready)
            .due(ready + 20 + random.nextInt(span))
            .weight(1 + random.nextInt(3));
    int must = random.nextInt(ovens);
    for (int m = 0; m < ovens; m++) {
      if (m == must || random.nextInt(3) > 0) {
        lot.in("oven-" + m);
      }
    }
    int first = random.nextInt(settings);
    int need = 8 + random.nextInt(25);
    int bears = need + random.nextInt(25);
    lot.dwell(first, need, bears);
    if (settings > 1 && random.nextInt(3) == 0) {
      lot.dwell((first + 1) % settings, Math.max(4, need - 4), bears - 2);
    }
    return lot;
  }
}
