package spangle.fit.hang;

import java.util.Locale;

/**
 * Where parts hang on one carrier: a rack, cart or adjustable frame, a beam over the kettle, or a
 * spin basket.
 *
 * @param widthMm usable width of one face, millimetres
 * @param heightMm usable height of one face, from the topmost bar down, millimetres; for a basket
 *     the height of the fill line
 * @param depthMm room off each face, millimetres; for a basket its depth from front to back
 * @param faces faces that are hung (a rack hung on both sides has two)
 * @param gapAcrossMm least clear distance between neighbours side by side, millimetres
 * @param gapDownMm least clear distance from the underside of a piece to whatever hangs below it,
 *     hook included, millimetres
 * @param hookDropMm length of hook between the bar and the top edge of a piece, millimetres
 * @param hookPitchMm distance between hook places along a bar; 0 where hooks slide freely. With a
 *     pitch the left edge of every piece lies on a multiple of it
 * @param maxMassKg most the carrier may carry, kilograms; infinite where nothing is said
 * @param maxHooks hooks there are on the whole carrier; {@link Integer#MAX_VALUE} where they are
 *     not counted
 * @param style how pieces may lie
 */
public record CarrierFace(
    double widthMm,
    double heightMm,
    double depthMm,
    int faces,
    double gapAcrossMm,
    double gapDownMm,
    double hookDropMm,
    double hookPitchMm,
    double maxMassKg,
    int maxHooks,
    Style style) {

  /** No carrier and no part is longer than this; keeps micrometre arithmetic exact. */
  public static final double LONGEST_MM = 100_000;

  /** How pieces may lie on a carrier. */
  public enum Style {
    /** In rows under bars; each row is as deep as its longest piece with its hook. */
    ROWS,
    /** Anywhere on a mesh or an adjustable frame. */
    FREE,
    /** Thrown into a basket: mass and filled volume count, not places. */
    BULK
  }

  /** Refuses a carrier on which nothing could ever hang. */
  public CarrierFace {
    requireBetween("width", widthMm, true);
    requireBetween("height", heightMm, true);
    requireBetween("depth", depthMm, true);
    requireBetween("gap across", gapAcrossMm, false);
    requireBetween("gap down", gapDownMm, false);
    requireBetween("hook drop", hookDropMm, false);
    requireBetween("hook pitch", hookPitchMm, false);
    if (faces < 1 || faces > 64) {
      throw new IllegalArgumentException("carrier: " + faces + " faces; 1 to 64 expected");
    }
    if (!(maxMassKg > 0)) {
      throw new IllegalArgumentException(
          "carrier: it may carry " + maxMassKg + " kg; more than 0 expected");
    }
    if (maxHooks < 0) {
      throw new IllegalArgumentException("carrier: " + maxHooks + " hooks is not a count");
    }
    if (style == Style.BULK && faces != 1) {
      throw new IllegalArgumentException("basket: " + faces + " faces; a basket has 1");
    }
  }

  private static void requireBetween(String what, double valueMm, boolean positive) {
    if (!(valueMm <= LONGEST_MM) || !(positive ? valueMm > 0 : valueMm >= 0)) {
      throw new IllegalArgumentException(
          String.format(
              Locale.ROOT,
              "carrier: %s %s mm; between 0 and %.0f mm expected",
              what,
              valueMm,
              LONGEST_MM));
    }
  }

  /** A plain frame of one face without gaps, hooks or limits: sizes alone decide. */
  public static CarrierFace plain(double widthMm, double heightMm, Style style) {
    return new CarrierFace(
        widthMm,
        heightMm,
        LONGEST_MM,
        1,
        0,
        0,
        0,
        0,
        Double.POSITIVE_INFINITY,
        Integer.MAX_VALUE,
        style);
  }
}
