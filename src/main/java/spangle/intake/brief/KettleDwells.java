package spangle.intake.brief;

import java.util.List;
import spangle.equipment.KettleProfile;
import spangle.plan.Dwell;

/**
 * How long a part stays in zinc: until its thickest wall is at bath temperature, and not so long
 * that it takes up more zinc than it should. Steel that grows thick coatings gets less grace; steel
 * and thickness classes that must not share a dip end up with windows that do not meet.
 */
final class KettleDwells {
  /** Grace of ordinary steel: its coating hardly grows any more (common practice). */
  private static final double ORDINARY_GRACE = 2.0;

  /** Grace of reactive steel: about 25 um more with every minute (a consultant's forum figure). */
  private static final double REACTIVE_GRACE = 1.25;

  private final List<KettleProfile> kettles;

  KettleDwells(List<KettleProfile> kettles) {
    this.kettles = List.copyOf(kettles);
  }

  /** The one window a kettle line has, at setting 0. */
  List<Dwell> immersion(double thinnestMm, double thickestMm, boolean reactive) {
    double least = 0;
    double most = Double.MAX_VALUE;
    for (KettleProfile kettle : kettles) {
      double needed = kettle.immersionMin(thickestMm);
      double grace = reactive ? REACTIVE_GRACE : ORDINARY_GRACE;
      least = Math.max(least, needed);
      most = Math.min(most, Math.max(needed, kettle.immersionMin(thinnestMm) * grace));
    }
    int leastMin = (int) Math.ceil(least);
    return List.of(new Dwell(0, leastMin, Math.max(leastMin, (int) Math.floor(most))));
  }
}
