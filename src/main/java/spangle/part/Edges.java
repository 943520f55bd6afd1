package spangle.part;

/** Whether cut edges (thickness times length of cut) belong to the area. */
public enum Edges {
  /** They are counted; the usual case. */
  COUNTED,
  /** They are left out. */
  IGNORED
}
