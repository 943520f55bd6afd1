package spangle.plan;

/** What a line does. */
public enum LineKind {
  /** Powder: hang, wash, dry-off, booth, oven, cooling. */
  POWDER,
  /** Liquid paint with its own drying place or oven. */
  LIQUID,
  /** Hot-dip galvanizing: hang, degrease, pickle, flux, dry, kettle, cooling. */
  ZINC,
  /** Another firm's line: trucks and days stand in place of stations. */
  OUTSIDE
}
