package spangle.fit;

/** The four answers of fit. */
public enum Verdict {
  /** Goes in whole, level or on end. */
  STRAIGHT("straight"),
  /** Goes in whole, but only at an angle. */
  TILTED("tilted"),
  /** Does not go in whole; two overlapping dips cover it. */
  TWO_DIPS("two-dips"),
  /** Cannot be covered. */
  NO("no");

  private final String code;

  Verdict(String code) {
    this.code = code;
  }

  /** The word in data files; it never changes. */
  public String code() {
    return code;
  }

  /** Whether one immersion covers the part. */
  public boolean whole() {
    return this == STRAIGHT || this == TILTED;
  }
}
