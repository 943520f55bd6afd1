package spangle.fit.hang;

import java.util.Arrays;
import java.util.List;

/** The limits of a carrier that have nothing to do with places: mass, hooks, filled volume. */
final class Limits {
  /**
   * Share of a basket's volume that the envelopes of thrown-in parts fill. From memory: boxes
   * shaken at random fill 0.6 to 0.65 of the space.
   */
  static final double BULK_FILL = 0.6;

  /** Rounding of sums of masses and volumes; equality keeps the limit. */
  private static final double SLACK = 1e-9;

  private Limits() {}

  /** How often a share goes into a limit; {@link Integer#MAX_VALUE} when it never runs out. */
  static int times(double limit, double share) {
    if (share <= 0 || Double.isInfinite(limit)) {
      return Integer.MAX_VALUE;
    }
    return (int) Math.min(Integer.MAX_VALUE, Math.floor(limit / share * (1 + SLACK) + SLACK));
  }

  /** Whether all these pieces together keep mass and hooks. */
  static boolean keepMassAndHooks(CarrierFace face, List<HangItem> items) {
    double massKg = 0;
    long hooks = 0;
    for (HangItem item : items) {
      massKg += item.pieces() * item.massKg();
      hooks += (long) item.pieces() * item.hooksPerPiece();
    }
    return massKg <= face.maxMassKg() * (1 + SLACK)
        && (hooks <= face.maxHooks() || face.style() == CarrierFace.Style.BULK);
  }

  /** Volume the envelopes of thrown-in parts may add up to, cubic millimetres. */
  static double usableVolumeMm3(CarrierFace basket) {
    return basket.widthMm() * basket.heightMm() * basket.depthMm() * BULK_FILL;
  }

  /** Envelope of one piece, cubic millimetres; flat work counts as one millimetre thick. */
  static double envelopeMm3(HangItem item) {
    return item.acrossMm() * item.dropMm() * Math.max(1, item.depthMm());
  }

  /** Whether one piece goes into a basket in some lay along its sides. */
  static boolean goesIn(CarrierFace basket, HangItem item) {
    double[] room = {basket.widthMm(), basket.heightMm(), basket.depthMm()};
    double[] piece = {item.acrossMm(), item.dropMm(), item.depthMm()};
    Arrays.sort(room);
    Arrays.sort(piece);
    return piece[0] <= room[0] && piece[1] <= room[1] && piece[2] <= room[2];
  }

  /** Whether all these pieces fill a basket no higher than its fill line. */
  static boolean keepVolume(CarrierFace basket, List<HangItem> items) {
    double volumeMm3 = 0;
    for (HangItem item : items) {
      volumeMm3 += item.pieces() * envelopeMm3(item);
    }
    return volumeMm3 <= usableVolumeMm3(basket) * (1 + SLACK);
  }
}
