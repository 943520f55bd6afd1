package spangle.plan;

/**
 * What a minute, a change and a late job weigh against one another; whole numbers so that equal
 * plans compare equal. Rules are never weighed: they hold or the plan is refused.
 *
 * @param runMinute each minute an oven or kettle of the shop holds a batch
 * @param lateLot each lot of a last leg whose end is past its due time, times its weight
 * @param lateMinute each minute late of such a lot, times its weight
 * @param settingCost each unit of cost in the machines' set-up table
 * @param settingMinute each minute of set-up at a machine
 * @param colourCost each unit of cost in the stations' set-up tables
 * @param load each carrier filled
 * @param lateKit each kit completed past its due time, times its weight
 * @param kitMinute each minute the average set of a kit waits between its first line and its last
 * @param setMinute each minute until the average set of a kit is whole, times the kit's weight
 * @param trip each trip to another firm
 * @param leftOut each lot left out, times its weight
 * @param moved each load a plan already announced has otherwise: elsewhere, by more than {@link
 *     #SWING_MIN} at another time, on another kind of carrier, at another setting, or to be hung by
 *     more than {@link #HANG_SWING_MIN} at another time; {@link #STICKY} times that on the first
 *     day announced, {@link #KIT_DAY} times that for a kit that is complete on a later day
 */
public record Goals(
    int runMinute,
    int lateLot,
    int lateMinute,
    int settingCost,
    int settingMinute,
    int colourCost,
    int load,
    int lateKit,
    int kitMinute,
    int setMinute,
    int trip,
    int leftOut,
    int moved) {
  /** A load announced for the first day counts so many times one of a later day. */
  public static final int STICKY = 5;

  /** A load within so many minutes of its announced start has not moved (common practice). */
  public static final int SWING_MIN = 15;

  /** Hangers are not told of a load they hang within so many minutes of then (common practice). */
  public static final int HANG_SWING_MIN = 30;

  /** A kit complete a day later than announced counts as many loads moved (common practice). */
  public static final int KIT_DAY = 50;

  /** The weights of an ordinary shop week (common practice: late work first, then oven time). */
  public static Goals usual() {
    return new Goals(4, 20_000, 10, 10, 4, 10, 5, 30_000, 1, 1, 2_000, 1_000_000, 100);
  }
}
