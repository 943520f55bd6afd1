package spangle.plan;

/** Kinds of treatment a leg can be. */
public enum FinishKind {
  /** Powder, sprayed and cured. */
  POWDER,
  /** Liquid paint. */
  LIQUID,
  /** Hot-dip zinc. */
  ZINC,
  /** Bake that drives gas out of galvanized work before powder. */
  DEGAS;

  /** Unit its material is drawn in: liquid paint in litres, everything else in kilograms. */
  public String materialUnit() {
    return this == LIQUID ? "l" : "kg";
  }
}
