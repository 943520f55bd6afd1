package spangle.intake.problem;

/** What happens to the row until the problem is put right. */
public enum Meanwhile {
  /** The program stops. */
  STOPPED("nothing is planned"),
  /** The row is left out, the rest goes on. */
  ROW_REFUSED("the row is left out, the rest goes on"),
  /** The part is read but not scheduled. */
  GATE_SHUT("the part is not scheduled until somebody signs"),
  /** Low and high are carried along. */
  BRACKETED("planned with a low and a high value"),
  /** A stated default stands in. */
  DEFAULT_USED("planned with the stated default"),
  /** Used as it stands. */
  AS_WRITTEN("planned as it is written"),
  /** The entry has no effect. */
  IGNORED("the entry has no effect");

  private final String words;

  Meanwhile(String words) {
    this.words = words;
  }

  /** In words. */
  public String words() {
    return words;
  }
}
