package spangle.fit.gate;

/** What the papers say to a question. */
public enum Known {
  /** They say yes. */
  YES,
  /** They say no. */
  NO,
  /** They say nothing: never read as no where work can hurt. */
  SILENT
}
