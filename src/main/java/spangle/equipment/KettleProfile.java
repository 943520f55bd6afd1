package spangle.equipment;

import java.util.List;
import spangle.measure.Box;

/**
 * A kind of kettle.
 *
 * @param name name in the shop file
 * @param title words for the sheet
 * @param inside inside length, width and depth, mm
 * @param usable inside less clearances, freeboard and dross, mm
 * @param rimMm zinc surface to the top edge, mm
 * @param bathC zinc temperature, C
 * @param zincKg zinc in the bath, kg
 * @param kgPerHour steel the heating can take, kg/h
 * @param maxDipKg most steel and jig in one dip, kg
 * @param hookPlaces beams or baskets that can be over it at once
 * @param turnaroundMin minutes between dips: skim, lower, raise
 * @param immersionFixedMin immersion, minutes whatever the thickness
 * @param immersionPerMmMin immersion, minutes per mm of the thickest part
 * @param immersionLeastMin least immersion, minutes
 * @param drainMinDeg least tilt at which zinc drains, degrees
 * @param drainMaxDeg steepest tilt the crew hangs, degrees
 * @param manning who must be there
 * @param cautions what must be said on the sheet
 */
public record KettleProfile(
    String name,
    String title,
    Box inside,
    Box usable,
    double rimMm,
    double bathC,
    double zincKg,
    double kgPerHour,
    double maxDipKg,
    int hookPlaces,
    double turnaroundMin,
    double immersionFixedMin,
    double immersionPerMmMin,
    double immersionLeastMin,
    double drainMinDeg,
    double drainMaxDeg,
    Manning manning,
    List<String> cautions)
    implements Profile {

  /** Copies the list. */
  public KettleProfile {
    cautions = List.copyOf(cautions);
  }

  /** Zinc from the usual mark down to the bottom, mm. */
  public double zincDepthMm() {
    return inside.heightMm() - rimMm;
  }

  /** Immersion of steel so thick, minutes (common practice: 2 + 0.5 per mm, at least 3). */
  public double immersionMin(double thicknessMm) {
    return Math.max(immersionLeastMin, immersionFixedMin + immersionPerMmMin * thicknessMm);
  }
}
