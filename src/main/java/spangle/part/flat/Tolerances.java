package spangle.part.flat;

/**
 * How near is together.
 *
 * @param joinMm ends this near are one joint, without a word
 * @param gapMm ends this near are joined and said
 * @param chordMm how far straight lines may leave a curve where only the topology matters
 */
record Tolerances(double joinMm, double gapMm, double chordMm) {
  /** For a drawing of this size: hundredths of a millimetre, less for very small drawings. */
  static Tolerances of(double diagonalMm) {
    double size = Math.max(diagonalMm, 1e-9);
    return new Tolerances(
        Math.min(0.01, 1e-4 * size), Math.min(0.1, 1e-3 * size), Math.min(0.02, 1e-4 * size));
  }
}
