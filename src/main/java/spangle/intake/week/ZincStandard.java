package spangle.intake.week;

/** The standard zinc is judged by. */
public enum ZincStandard {
  /** ISO 1461. */
  ISO1461("iso1461"),
  /** ASTM A123. */
  ASTM_A123("astm-a123");

  private final String word;

  ZincStandard(String word) {
    this.word = word;
  }

  /** The word in files and on the command line. */
  public String word() {
    return word;
  }
}
