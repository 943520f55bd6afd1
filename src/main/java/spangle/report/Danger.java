package spangle.report;

/** What goes wrong when a waiting point is passed over; the worst comes first on every list. */
public enum Danger {
  /** Somebody can be hurt: sealed hollows in zinc, loads past the crane, solvent in a hot oven. */
  PEOPLE("can hurt people"),
  /** Work or plant is spoilt: the wrong metal, heat-sensitive parts, no cure data, does not fit. */
  WORK("spoils work or plant"),
  /** Something needed to plan is not known. */
  FACT("a fact is missing"),
  /** Only a date is at stake. */
  DATE("a date is at stake");

  private final String words;

  Danger(String words) {
    this.words = words;
  }

  /** For the sheet. */
  public String words() {
    return words;
  }
}
