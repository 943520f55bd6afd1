package spangle.intake.problem;

/** How bad a problem is, worst first. */
public enum Severity {
  /** Nothing can be read or planned until it is put right. */
  STOP("stop"),
  /** Somebody could be hurt; only a person may open the gate. */
  DANGER("danger"),
  /** The row is left out. */
  REFUSED("refused"),
  /** Somebody must answer; until then the cautious reading is used. */
  ASK("ask"),
  /** Worth a look; nothing is left out. */
  WARN("warn");

  private final String word;

  Severity(String word) {
    this.word = word;
  }

  /** The word on sheets and in data. */
  public String word() {
    return word;
  }
}
