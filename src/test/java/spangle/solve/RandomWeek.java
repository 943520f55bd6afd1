package spangle.solve;

import java.util.List;
import java.util.Random;
import spangle.equipment.WorkCalendar;
import spangle.plan.Brief;
import spangle.plan.LineKind;
import spangle.plan.MachineSpec;
import spangle.plan.SetupTable;
import spangle.plan.Supply;
import spangle.plan.WeekOf;
import spangle.plan.WeekOf.LotOf;

/** Weeks by chance with everything a line can have: zinc, degassing and powder on two lines. */
final class RandomWeek {
  private static final int DAY = 24 * 60;
  private final Random random;

  private RandomWeek(long seed) {
    random = new Random(seed);
  }

  static Brief of(long seed, int lots) {
    return new RandomWeek(seed).brief(lots);
  }

  private WorkCalendar shifts() {
    int[] minutes = new int[10];
    for (int day = 0; day < 5; day++) {
      minutes[2 * day] = day * DAY + 6 * 60;
      minutes[2 * day + 1] = day * DAY + 16 * 60 + random.nextInt(60);
    }
    return WeekOf.open(minutes);
  }

  private Brief brief(int count) {
    WorkCalendar day = shifts();
    int colours = 4;
    WeekOf week = new WeekOf().until(5 * DAY);
    week.line(
        "powder",
        LineKind.POWDER,
        List.of(
            WeekOf.station("hang", 2, day, Integer.MAX_VALUE),
            WeekOf.station("wash", 1, day, 240),
            WeekOf.booth("booth", colours, 15)),
        List.of(WeekOf.oven("oven-1", 3, day), WeekOf.oven("oven-2", 2, day)),
        List.of(WeekOf.station("cool", 4), WeekOf.station("unhang", 1, day, Integer.MAX_VALUE)),
        WeekOf.changes(3, 20));
    week.line(
        "zinc",
        LineKind.ZINC,
        List.of(
            WeekOf.station("rig", 1, day, Integer.MAX_VALUE),
            WeekOf.station("pickle", 2, WeekOf.always(), 120),
            WeekOf.station("flux", 1, day, 30)),
        List.of(new MachineSpec("kettle", "kettle", 1, 500, day, 0, 4, 2000)),
        List.of(WeekOf.station("quench", 2)),
        SetupTable.none(List.of("450 C")));
    week.rack("rack", "powder", 5).rack("cart", "powder", 2).rack("beam", "zinc", 3);
    week.supply(
        new Supply(
            "blue",
            "blue",
            List.of(new Supply.Arrival(0, 5, "a"), new Supply.Arrival(2 * DAY, 9, "b"))));
    week.kit("kit-1", 2, 3 * DAY, 1, "handle", 2, "plate", 1);
    week.kit("kit-2", 1, 2 * DAY, 3, "plate", 1);
    for (int k = 0; k < count; k++) {
      int ready = random.nextInt(2 * DAY);
      int due = ready + 300 + random.nextInt(3 * DAY);
      boolean duplex = random.nextInt(4) == 0;
      if (duplex) {
        week.lot(
            LotOf.lot("z" + k, "zinc")
                .dwell(0, 4 + random.nextInt(4), 10)
                .in("kettle")
                .on("beam")
                .group("zinc")
                .finish(0)
                .visit("rig", 10, 2.5)
                .visit("pickle", 40, 0)
                .visit("flux", 5, 0)
                .visit("quench", 3, 0)
                .ready(ready)
                .due(due)
                .firstLeg()
                .mass(20 + random.nextInt(80)));
      }
      week.lot(powder(k, colours, ready, due, duplex));
    }
    return week.brief();
  }

  private LotOf powder(int k, int colours, int ready, int due, boolean duplex) {
    int colour = random.nextInt(colours);
    LotOf lot =
        LotOf.lot("p" + k, "powder")
            .in("oven-1")
            .on("rack")
            .finish(colour)
            .visit("hang", 5, 3)
            .visit("wash", 12, 0)
            .visit("booth", 4, 2 + 3 * random.nextDouble())
            .visit("cool", 20, 0)
            .visit("unhang", 3, 1)
            .ready(ready)
            .due(due)
            .weight(1 + random.nextInt(3))
            .side(300 + random.nextInt(400))
            .mass(5 + random.nextInt(40));
    int need = 12 + random.nextInt(20);
    lot.dwell(1, need, need + 10 + random.nextInt(20));
    if (random.nextBoolean()) {
      lot.in("oven-2").on("cart");
      lot.dwell(2, need - 4, need + 6);
    }
    if (random.nextInt(6) == 0) {
      lot.alone();
    }
    if (colour == 1) {
      lot.draws("blue", 0.5 + random.nextDouble());
    }
    if (random.nextInt(5) == 0) {
      lot.part(random.nextBoolean() ? "handle" : "plate").kit("kit-1");
    }
    if (duplex) {
      lot.after("z" + k, 30, 2 * DAY);
    }
    return lot;
  }
}
