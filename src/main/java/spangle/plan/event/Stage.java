package spangle.plan.event;

import java.util.Locale;

/** How far a load has come. From {@link #HUNG} on it does not move any more. */
public enum Stage {
  /** In the plan, nothing handed out. */
  PLANNED,
  /** Its sheet is on the floor. */
  RELEASED,
  /** It hangs on its carrier. */
  HUNG,
  /** It went into its oven or kettle. */
  IN_PROCESS,
  /** Finished, off its carrier. */
  DONE;

  /** Words for the sheet. */
  public String words() {
    return name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }

  /** Whether it cannot be moved any more. */
  public boolean fixed() {
    return compareTo(HUNG) >= 0;
  }
}
