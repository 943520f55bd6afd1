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

  /** Minute from which the machine may be set up after a batch that ends then. */
  static int free(MachineFacts machine, int endMin) {
    return endMin + machine.spec.turnaroundMin();
  }

  static void countSetting(LineFacts line, int from, int to, int sign, long[] tally) {
    tally[Tally.SETTING_COST] += (long) sign * line.settingCost[from][to];
    tally[Tally.SETTING_MIN] += (long) sign * line.settingMin[from][to];
  }
}
