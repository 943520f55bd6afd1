package spangle.plan.clock;

import org.jspecify.annotations.Nullable;
import spangle.plan.MachineSpec;

/** An oven or kettle as the clock needs it. */
public final class MachineFacts {
  /** Place among its line's machines. */
  public final int index;

  /** The machine itself. */
  public final MachineSpec spec;

  final Hours hours;

  /** Whether it is a truck to another firm. */
  final boolean away;

  /** Its zinc, where that does not always cover every lot. */
  @Nullable BathFacts bath;

  MachineFacts(int index, MachineSpec spec, boolean away, int horizonMin) {
    this.index = index;
    this.spec = spec;
    this.away = away;
    this.hours = new Hours(spec.calendar(), horizonMin);
  }

  /** Minutes it is open before the horizon. */
  public int openMinutes() {
    return hours.minutes();
  }

  /** Start from which the heating can take the batch after one of that mass. */
  int heatFree(int startMin, double massKg) {
    return spec.kgPerHour() <= 0
        ? 0
        : startMin + (int) Math.ceil(60 * massKg / spec.kgPerHour() - 1e-9);
  }
}
