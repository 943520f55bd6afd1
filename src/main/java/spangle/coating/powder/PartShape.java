package spangle.coating.powder;

import java.util.Locale;
import spangle.measure.LowLikelyHigh;

/**
 * Share of the powder that lands and stays on the first pass, by the form of the work (from memory;
 * only the order from panel to wire was seen in print). A shop's own weighing replaces it.
 */
public enum PartShape {
  /** Flat panels and doors. */
  PANEL(0.60, 0.68, 0.75),
  /** Boxes and enclosures. */
  BOX(0.50, 0.58, 0.65),
  /** Folded brackets and small parts. */
  BRACKET(0.40, 0.48, 0.55),
  /** Wire, mesh and bars. */
  WIRE(0.20, 0.30, 0.40);

  @SuppressWarnings("ImmutableEnumChecker") // a record of three numbers
  private final LowLikelyHigh firstPass;

  PartShape(double low, double likely, double high) {
    this.firstPass = new LowLikelyHigh(low, likely, high);
  }

  /** Share that stays on the first pass. */
  public LowLikelyHigh firstPass() {
    return firstPass;
  }

  /** The form in lower case, as people write it. */
  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }
}
