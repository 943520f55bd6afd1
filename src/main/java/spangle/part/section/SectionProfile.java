package spangle.part.section;

/**
 * The cross-section of a standard section.
 *
 * @param name canonical name, for example {@code L50x50x5}, {@code UPE100}, {@code SHS40x40x3}
 * @param family kind of section
 * @param heightMm outside height, longer leg or diameter
 * @param widthMm outside width or shorter leg
 * @param thicknessMm wall, or the thinner of web and flange
 * @param metalMm2 metal in the cross-section
 * @param outerMm outline seen from outside; times the length it is the outside surface
 * @param boreMm outline of the bore, 0 for an open section
 * @param boreMm2 clear area of the bore, 0 for an open section
 */
public record SectionProfile(
    String name,
    Family family,
    double heightMm,
    double widthMm,
    double thicknessMm,
    double metalMm2,
    double outerMm,
    double boreMm,
    double boreMm2) {
  private static final double LARGE_ANGLE_MM = 120;
  private static final double LARGE_HOLLOW_MM = 100;

  /** Mass of one metre. */
  public double massPerMetreKg(double densityKgM3) {
    return metalMm2 * 1e-6 * densityKgM3;
  }

  /** Outside surface of one metre, as section tables print it. */
  public double outerM2PerMetre() {
    return outerMm / 1000;
  }

  /** Surface of one metre that a bath wets: outside and bore. */
  public double wettedM2PerMetre() {
    return (outerMm + boreMm) / 1000;
  }

  /**
   * Where its sizes come from, in words. Sizes of most tables gave the figures printed in public
   * section books; those of larger angles, rectangular and hot-finished hollow sections were
   * entered from memory.
   */
  public String source() {
    return "nominal sizes of "
        + family.standard()
        + (fromMemory()
            ? " from memory; compare with the maker's table"
            : "; mass and surface of its table checked against printed ones");
  }

  /** Whether its row was entered from memory and not held against print. */
  public boolean fromMemory() {
    return switch (family) {
      case ANGLE -> heightMm >= LARGE_ANGLE_MM;
      case COLD_HOLLOW -> heightMm != widthMm && heightMm > LARGE_HOLLOW_MM;
      case HOT_HOLLOW -> heightMm > LARGE_HOLLOW_MM;
      case TAPER_CHANNEL, PARALLEL_CHANNEL, ROUND_HOLLOW -> false;
    };
  }

  /** Whether it has a bore. */
  public boolean hollow() {
    return boreMm > 0;
  }
}
