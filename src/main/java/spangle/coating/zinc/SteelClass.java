package spangle.coating.zinc;

import spangle.measure.LowLikelyHigh;

/**
 * How steel takes zinc: the categories of ISO 14713-2 Table 1, the ultra-low-reactivity steel of
 * ISO 1461:2022, and "unknown". The growth factor multiplies the standard's least mean; it is
 * common practice, supported by one published plant average of 116 um on 5.6 mm steel (1.66 times
 * the ISO mean of 70).
 */
public enum SteelClass {
  /** Si up to 0.01 % with Al over 0.035 %. */
  ULTRA_LOW("ultra-low", 0.8, 0.9, 1.0, "bright, but thinner than the standard asks for"),
  /** Si up to 0.04 % and P below 0.02 %. */
  A("A", 1.1, 1.2, 1.3, "bright, usual thickness, outer layer of pure zinc"),
  /** Si over 0.14 to 0.25 % and P below 0.035 %. */
  B("B", 1.4, 1.6, 1.8, "regular, somewhat thicker, bright to matt"),
  /** Si over 0.04 to 0.14 %, the Sandelin range, and all that falls outside every row. */
  C("C", 1.8, 2.3, 3.0, "very thick, darker, rough; chips when knocked"),
  /** Si over 0.25 %. */
  D("D", 1.6, 2.0, 2.5, "thick, light to dark grey, thicker with more Si; chips when knocked"),
  /** No certificate, or one that does not settle it. */
  UNKNOWN("unknown", 1.0, 1.5, 3.0, "anything from bright to dark grey");

  /** Above about this the alloy layers flake under knocks (200-250 um, from memory). */
  public static final double FLAKING_UM = 200;

  private final String word;
  private final double low;
  private final double likely;
  private final double high;
  private final String look;

  SteelClass(String word, double low, double likely, double high, String look) {
    this.word = word;
    this.low = low;
    this.likely = likely;
    this.high = high;
    this.look = look;
  }

  /** The class as people write it. */
  public String word() {
    return word;
  }

  /** Coating expected over the standard's least mean. */
  public LowLikelyHigh growth() {
    return new LowLikelyHigh(low, likely, high);
  }

  /** What the customer will see, and whether it bears knocks. */
  public String look() {
    return look;
  }

  /** Whether its coating is brittle enough to warn of. */
  public boolean brittle() {
    return this == C || this == D;
  }
}
