package spangle.intake.week;

/**
 * How pieces that did not pass are coated over, and up to where: beyond it they are stripped.
 *
 * @param gun how the gun is set over a cured coat, words for the sheet
 * @param mostCoats coats of the product over one another
 * @param mostUm film of all these coats, um
 */
public record Recoating(String gun, int mostCoats, double mostUm) {
  /** The first coat and one over it (common practice). */
  public static final int USUAL_COATS = 2;

  /**
   * A cured coat insulates, so that charge builds up on it and throws the powder off: less current
   * and a little more powder (common practice).
   */
  public static final String POWDER_GUN =
      "current held at 20 to 40 uA, powder flow 10 % up (common practice; try it on one piece)";

  /** What liquid paint wants before another coat (common practice). */
  public static final String PAINT_GUN =
      "sand or abrade and clean first, as the data sheet says for another coat (common practice)";

  /**
   * What holds where the coatings file is silent: two coats, each no thicker than the product
   * bears.
   */
  public static Recoating usual(String gun, Film film) {
    return new Recoating(gun, USUAL_COATS, USUAL_COATS * film.maxUm());
  }

  /**
   * Coats a piece may bear at a film for each.
   *
   * @param coatUm film of one coat, um
   */
  public int coatsAt(double coatUm) {
    return Math.min(mostCoats, (int) Math.floor(mostUm / coatUm + 1e-9));
  }
}
