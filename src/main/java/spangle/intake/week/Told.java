package spangle.intake.week;

/** What a file says about a yes-or-no question. */
public enum Told {
  /** It says yes. */
  YES,
  /** It says no. */
  NO,
  /** It says nothing: never read as no where work can hurt. */
  NOTHING;

  /** Whether it says yes. */
  public boolean yes() {
    return this == YES;
  }

  /** Whether it says no. */
  public boolean no() {
    return this == NO;
  }
}
