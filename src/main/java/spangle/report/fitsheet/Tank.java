package spangle.report.fitsheet;

import java.util.Optional;
import spangle.equipment.KettleProfile;
import spangle.fit.UsableSpace;

/**
 * A kettle or room as it is drawn, in mm; the usable space starts at 0 in each direction and its
 * top is the surface.
 *
 * @param usable what may be used
 * @param endMm wall to usable length at each end
 * @param sideMm wall to usable width at each side
 * @param floorMm floor to usable depth: dross and clearance
 * @param liquid whether it holds zinc
 * @param known whether its inside is known; else only the usable space is
 */
record Tank(
    UsableSpace usable,
    double endMm,
    double sideMm,
    double floorMm,
    boolean liquid,
    boolean known) {
  private static final double UNKNOWN_SHARE = 0.03;

  static Tank of(UsableSpace usable, Optional<KettleProfile> kettle, boolean liquid) {
    if (kettle.isPresent()) {
      var inside = kettle.get().inside();
      return new Tank(
          usable,
          Math.max(0, (inside.lengthMm() - usable.lengthMm()) / 2),
          Math.max(0, (inside.widthMm() - usable.widthMm()) / 2),
          Math.max(0, inside.heightMm() - usable.depthMm() - usable.rimMm()),
          liquid,
          true);
    }
    double gap = UNKNOWN_SHARE * Math.max(usable.lengthMm(), usable.depthMm());
    return new Tank(usable, gap, gap, gap, liquid, false);
  }

  /** Top edge above the usable floor. */
  double edgeMm() {
    return usable.depthMm() + usable.rimMm();
  }
}
