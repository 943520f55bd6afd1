package spangle.part;

/** Skin of a straight piece of constant cross-section, cut square at both ends. */
final class TubeSkin {
  private TubeSkin() {}

  /**
   * Skin of the piece.
   *
   * @param outerMm outline of the cross-section seen from outside
   * @param innerMm outline of its bore, 0 without one
   * @param metalMm2 metal in the cross-section; both cut ends show it
   */
  static Skin of(double lengthMm, double outerMm, double innerMm, double metalMm2) {
    double endsMm2 = 2 * metalMm2;
    return new Skin(
        outerMm * lengthMm,
        innerMm * lengthMm,
        endsMm2,
        endsMm2,
        2 * (outerMm + innerMm),
        metalMm2 * lengthMm);
  }

  static String words(double lengthMm, double outerMm, double innerMm) {
    String outside = "outside " + Skin.mm2(outerMm * lengthMm);
    return innerMm > 0 ? outside + " + bore " + Skin.mm2(innerMm * lengthMm) : outside;
  }
}
