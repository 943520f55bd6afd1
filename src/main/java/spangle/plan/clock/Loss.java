package spangle.plan.clock;

/** Why the clock found no time for a batch; its lots are then left out of the plan. */
public enum Loss {
  /** No span of the machine or a station is long enough before the horizon. */
  NO_TIME(0, "no-time", "no room is left in the calendar before the week ends"),
  /** Work would spoil between two stations. */
  WAITS_TOO_LONG(
      1, "waits-too-long", "it would wait longer between two stations than its state keeps"),
  /** The longest gap after the leg before would be passed. */
  GAP_TOO_LONG(
      2, "gap-too-long", "it would wait longer after the step before it than its surface keeps"),
  /** The loads of one batch need more carriers of a kind than the shop owns. */
  NO_CARRIER(3, "no-carrier", "the shop owns too few carriers of its kind"),
  /** What it draws on never comes in sufficient quantity. */
  NO_SUPPLY(4, "no-supply", "the material it draws on is not there in time"),
  /** The leg before is not planned, or not planned before it. */
  EARLIER_LEG(5, "earlier-leg", "the step before it is not planned in time"),
  /** The zinc stands too low for it, and no filling in the week covers it in time. */
  NO_ZINC_OVER_IT(6, "zinc-level", "the zinc stands too low to cover it until the week ends");

  private static final Loss[] ALL = values();
  private final int place;
  private final String code;
  private final String words;

  Loss(int place, String code, String words) {
    this.place = place;
    this.code = code;
    this.words = words;
  }

  /** Place among the reasons, from 0; {@link Tally#LOST} counts by it. */
  public int place() {
    return place;
  }

  /** Stable name of the reason. */
  public String code() {
    return code;
  }

  /** The reason in words. */
  public String words() {
    return words;
  }

  /** What stands in a row in place of a start; below zero. */
  int asStart() {
    return -1 - place;
  }

  /** The reason that stands in a row in place of a start. */
  public static Loss ofStart(int start) {
    return ALL[-1 - start];
  }
}
