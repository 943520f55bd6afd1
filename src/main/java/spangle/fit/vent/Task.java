package spangle.fit.vent;

/** What an opening is for. */
public enum Task {
  /** Lets air and steam out at the highest point. */
  VENT("vent"),
  /** Lets zinc in and out at the lowest point. */
  DRAIN("drain");

  private final String word;

  Task(String word) {
    this.word = word;
  }

  /** For people and data. */
  public String word() {
    return word;
  }
}
