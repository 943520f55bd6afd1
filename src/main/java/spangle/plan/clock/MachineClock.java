package spangle.plan.clock;

/**
 * Puts one batch after another on a machine: the rule is the same whether a row is decoded alone or
 * a line is walked whole.
 */
final class MachineClock {
  private MachineClock() {}

  /**
   * Start of a batch that is at the machine from {@code there} on.
   *
   * @param free end of the batch before and the turnaround
   * @param heat minute from which the heating can take it
   */
  static int start(
      LineFacts line,
      MachineFacts machine,
      Batch batch,
      int there,
      int free,
      int heat,
      int setting) {
    return machine.hours.place(
        Math.max(there, heat), free, line.settingMin[setting][batch.setting], batch.dwell);
  }

  /** The same by the state of a line that is walked whole; in zinc that covers the work. */
  static int start(
      LineFacts line, MachineFacts machine, Batch batch, int there, StateMap map, int[] state) {
    int m = machine.index;
    int free = state[map.machineFree + m];
    int heat = state[map.machineHeat + m];
    int setting = state[map.machineSetting + m];
    int start = start(line, machine, batch, there, free, heat, setting);
    BathFacts bath = machine.bath;
    while (bath != null && start != Hours.NEVER) {
      int covered = bath.covered(batch, state[map.bathDown + m], state[map.bathAt + m], start);
      if (covered == start || covered == Hours.NEVER) {
        return covered;
      }
      start = start(line, machine, batch, covered, free, heat, setting);
    }
    return start;
  }

  /** Minute from which the machine may be set up after a batch that ends then. */
  static int free(MachineFacts machine, int endMin) {
    return endMin + machine.spec.turnaroundMin();
  }

  static void countSetting(LineFacts line, int from, int to, int sign, long[] tally) {
    tally[Tally.SETTING_COST] += (long) sign * line.settingCost[from][to];
    tally[Tally.SETTING_MIN] += (long) sign * line.settingMin[from][to];
  }
}
