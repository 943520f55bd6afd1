package spangle.part.section;

/** Kinds of standard section; outlines follow the nominal forms of the standards named. */
public enum Family {
  /**
   * Hot-rolled equal and unequal angles, EN 10056-1; size: legs, thickness, root and toe radius.
   */
  ANGLE("EN 10056-1"),
  /** Channels with sloping flanges, EN 10365 (UPN): 8 % slope up to 300 mm high. */
  TAPER_CHANNEL("EN 10365"),
  /** Channels with parallel flanges, EN 10365 (UPE). */
  PARALLEL_CHANNEL("EN 10365"),
  /**
   * Cold-formed square and rectangular hollow sections, EN 10219-2. Outer and inner corner radius
   * are 2 t and 1 t up to 6 mm wall, 2.5 t and 1.5 t up to 10 mm, 3 t and 2 t above.
   */
  COLD_HOLLOW("EN 10219-2"),
  /**
   * Hot-finished square and rectangular hollow sections, EN 10210-2. Outer and inner corner radius
   * are 1.5 t and 1 t.
   */
  HOT_HOLLOW("EN 10210-2"),
  /** Round hollow sections, EN 10219-2 and EN 10210-2. */
  ROUND_HOLLOW("EN 10220");

  private final String standard;

  Family(String standard) {
    this.standard = standard;
  }

  /** The standard whose nominal sizes the table has. */
  public String standard() {
    return standard;
  }
}
