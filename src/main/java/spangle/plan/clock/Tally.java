package spangle.plan.clock;

import spangle.plan.Goals;

/**
 * What a row, a line or a week comes to: one array of whole numbers, so that a change is a handful
 * of additions. The names below are places in the array.
 */
public final class Tally {
  /** Minutes ovens and kettles of the shop hold batches. */
  public static final int RUN = 0;

  /** Weighted late lots of last legs. */
  public static final int LATE_LOTS = 1;

  /** Weighted minutes late. */
  public static final int LATE_MIN = 2;

  /** Cost of setting changes. */
  public static final int SETTING_COST = 3;

  /** Minutes of setting changes. */
  public static final int SETTING_MIN = 4;

  /** Cost of colour changes. */
  public static final int COLOUR_COST = 5;

  /** Colour changes with minutes or cost. */
  public static final int COLOUR_CHANGES = 6;

  /** Carriers filled. */
  public static final int LOADS = 7;

  /** Batches run. */
  public static final int BATCHES = 8;

  /** Weighted late kits. */
  public static final int LATE_KITS = 9;

  /** Minutes the average set of each kit waits from its first finished line to its last. */
  public static final int KIT_MIN = 10;

  /** Weighted minutes until the average set of each kit is whole. */
  public static final int SET_MIN = 11;

  /** Trips to another firm. */
  public static final int TRIPS = 12;

  /** Loads, and kits, moved against the announced plan. */
  public static final int MOVED = 13;

  /** Batches in a machine that may not take all their lots. */
  public static final int WRONG_MACHINE = 14;

  /** Places a batch takes beyond those the machine has. */
  public static final int OVER_PLACES = 15;

  /** Whole kilograms, rounded up, beyond what the machine bears. */
  public static final int OVER_MASS = 16;

  /** Batches whose dwell windows do not meet or whose work must not meet. */
  public static final int WRONG_COMPANY = 17;

  /** Weight of lots lost, by {@link Loss#place()} from here on. */
  public static final int LOST = 18;

  /** Length of the array. */
  public static final int SIZE = LOST + 7;

  private Tally() {}

  static void add(long[] to, long[] what) {
    for (int i = 0; i < SIZE; i++) {
      to[i] += what[i];
    }
  }

  static void exchange(long[] in, long[] out, long[] what) {
    for (int i = 0; i < SIZE; i++) {
      in[i] += what[i] - out[i];
    }
  }

  /** Weight of all lots lost. */
  public static long lost(long[] tally) {
    long sum = 0;
    for (int i = LOST; i < SIZE; i++) {
      sum += tally[i];
    }
    return sum;
  }

  /** How far rules about who may be where are broken; 0 in every plan the search may keep. */
  public static long broken(long[] tally) {
    return tally[WRONG_MACHINE] + tally[OVER_PLACES] + tally[OVER_MASS] + tally[WRONG_COMPANY];
  }

  /** The weighed sum without lots left out. */
  public static long weighed(long[] tally, Goals goals) {
    return goals.runMinute() * tally[RUN]
        + goals.lateLot() * tally[LATE_LOTS]
        + goals.lateMinute() * tally[LATE_MIN]
        + goals.settingCost() * tally[SETTING_COST]
        + goals.settingMinute() * tally[SETTING_MIN]
        + goals.colourCost() * tally[COLOUR_COST]
        + goals.load() * tally[LOADS]
        + goals.lateKit() * tally[LATE_KITS]
        + goals.kitMinute() * tally[KIT_MIN]
        + goals.setMinute() * tally[SET_MIN]
        + goals.trip() * tally[TRIPS]
        + goals.moved() * tally[MOVED];
  }
}
