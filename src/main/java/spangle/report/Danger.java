package spangle.report;

/** What goes wrong when a waiting point is passed over; the worst comes first on every list. */
public enum Danger {
  /** Somebody can be hurt: sealed hollows in zinc, loads past the crane, solvent in a hot oven. */
  PEOPLE(0, "can hurt people"),
  /** Work or plant is spoilt: the wrong metal, heat-sensitive parts, no cure data, does not fit. */
  WORK(1, "spoils work or plant"),
  /** Something needed to plan is not known. */
  FACT(2, "a fact is missing"),
  /** Only a date is at stake. */
  DATE(3, "a date is at stake");

  private final int rank;
  private final String words;

  Danger(int rank, String words) {
    this.rank = rank;
    this.words = words;
  }

  /** 0 is worst; lists are sorted by it. */
  public int rank() {
    return rank;
  }

  /** For the sheet. */
  public String words() {
    return words;
  }
}
