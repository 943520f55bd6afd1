package spangle.coating.zinc;

import java.util.OptionalDouble;
import spangle.measure.Limits;

/**
 * ASTM A153, 2016 edition: spun hardware by class, least mean of the specimens and least of any
 * one. Thickness is the standard's own, mass over 7.067 g/m2 per um, rounded by it.
 */
public enum AstmA153 {
  /** Castings. */
  A(610, 550, 86, 79),
  /** Rolled, pressed, forged: 15.88 mm and over, longer than 381 mm. */
  B1(610, 550, 86, 79),
  /** The same under 15.88 mm, longer than 381 mm. */
  B2(458, 381, 66, 53),
  /** The same, any thickness, up to 381 mm long. */
  B3(397, 336, 56, 48),
  /** Fasteners over 9.52 mm; washers 4.76 mm and over. */
  C(381, 305, 53, 43),
  /** Fasteners up to 9.52 mm; thinner washers. */
  D(305, 259, 43, 36);

  private static final double LONG_MM = 381;
  private static final double THICK_MM = 15.88;
  private static final double FASTENER_MM = 9.52;
  private static final double WASHER_MM = 4.76;

  private final double meanGM2;
  private final double singleGM2;
  private final double meanUm;
  private final double singleUm;

  AstmA153(double meanGM2, double singleGM2, double meanUm, double singleUm) {
    this.meanGM2 = meanGM2;
    this.singleGM2 = singleGM2;
    this.meanUm = meanUm;
    this.singleUm = singleUm;
  }

  /** Class of rolled, pressed or forged hardware. */
  public static AstmA153 hardware(double thicknessMm, double lengthMm) {
    Limits.above(thicknessMm, 0, "a thickness", "mm");
    Limits.above(lengthMm, 0, "a length", "mm");
    if (lengthMm <= LONG_MM) {
      return B3;
    }
    return thicknessMm >= THICK_MM ? B1 : B2;
  }

  /** Class of a bolt, nut or screw by its diameter. */
  public static AstmA153 fastener(double diameterMm) {
    return Limits.above(diameterMm, 0, "a diameter", "mm") > FASTENER_MM ? C : D;
  }

  /** Class of a washer by its thickness. */
  public static AstmA153 washer(double thicknessMm) {
    return Limits.above(thicknessMm, 0, "a thickness", "mm") >= WASHER_MM ? C : D;
  }

  /**
   * The class as a row: the mean of the specimens, and the least of any one in place of the local
   * value. The standard judges by mass, so a um is taken at the mass the class prints.
   */
  public ZincRow row() {
    return new ZincRow(
        singleUm,
        meanUm,
        meanGM2 / meanUm,
        OptionalDouble.of(meanGM2),
        "ASTM A153 (2016) Table 1, class " + word(),
        false);
  }

  private String word() {
    return name().length() == 1 ? name() : name().charAt(0) + "-" + name().charAt(1);
  }

  /** Least mean coating mass, g/m2. */
  public double meanGM2() {
    return meanGM2;
  }

  /** Least coating mass of any one specimen, g/m2. */
  public double singleGM2() {
    return singleGM2;
  }

  /** Least mean thickness, um. */
  public double meanUm() {
    return meanUm;
  }

  /** Least thickness of any one specimen, um. */
  public double singleUm() {
    return singleUm;
  }
}
