package spangle.solve;

/** How much of a plan that is kept may change for new work. */
public enum Freedom {
  /** Every load stays where and when it is. */
  NOTHING_MOVES,
  /** Loads may move, but no part and no kit is finished later than it was announced or is due. */
  DATES_KEPT,
  /** Whatever is not hung may move and become late; nothing falls out of the week. */
  DATES_MAY_SLIP
}
