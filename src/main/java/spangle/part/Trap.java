package spangle.part;

/** Ways in which a right number gets into the wrong column. */
public enum Trap {
  /** The area is that of one face; both get coated. */
  ONE_FACE("the area is that of one face"),
  /** The area is that of all pieces of the job. */
  AREA_PER_JOB("the area is that of all pieces together"),
  /** The area is in square feet. */
  SQUARE_FEET("the area is in square feet"),
  /** The mass is in pounds. */
  POUNDS("the mass is in pounds"),
  /** The mass is in grams. */
  GRAMS("the mass is in grams"),
  /** The mass is that of all pieces of the job. */
  MASS_PER_JOB("the mass is that of all pieces together"),
  /** Lengths of the part or its drawing are in inches. */
  INCHES("the lengths are in inches"),
  /** The thickness is in inches. */
  THICKNESS_IN_INCHES("the thickness is in inches"),
  /** The part is steel, though another metal is written. */
  STEEL_AFTER_ALL("the part is steel"),
  /** The part is aluminium, though another metal is written. */
  ALUMINIUM_AFTER_ALL("the part is aluminium");

  private final String supposing;

  Trap(String supposing) {
    this.supposing = supposing;
  }

  /** The supposition in words, to stand after "if". */
  public String supposing() {
    return supposing;
  }
}
