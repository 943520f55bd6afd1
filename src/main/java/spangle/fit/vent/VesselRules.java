package spangle.fit.vent;

import java.util.ArrayList;
import java.util.List;
import spangle.fit.vent.Hollow.Vessel;

/** Rules for closed vessels and boxes; they disagree. */
final class VesselRules {
  private static final double SAME = 1e-9;

  static final List<VentRule> ALL =
      List.of(
          on(VesselRules::fiftyPerHalfCubicMetre),
          on(VesselRules::hundredPerCubicMetre),
          on(VesselRules::byTankDiameter),
          on(VesselRules::olderVentArea));

  private VesselRules() {}

  private interface OfVessel {
    List<Need> needs(Vessel vessel);
  }

  private static VentRule on(OfVessel rule) {
    return hollow -> hollow instanceof Vessel vessel ? rule.needs(vessel) : List.of();
  }

  private static List<Need> fiftyPerHalfCubicMetre(Vessel vessel) {
    int holes = (int) Math.max(1, Math.ceil(vessel.volumeM3() / 0.5 - SAME));
    return VentRule.both(
        "one of 50 mm for every 0.5 m3",
        "trade design guides for galvanizing",
        holes,
        50,
        Text.number(vessel.volumeM3()) + " m3 / 0.5 m3, rounded up");
  }

  private static List<Need> hundredPerCubicMetre(Vessel vessel) {
    double bySize = 100 * vessel.volumeM3();
    double byArea = 100 * Math.sqrt(vessel.volumeM3());
    List<Need> needs =
        new ArrayList<>(
            VentRule.both(
                "100 mm of diameter for every m3, at least 50 mm",
                "ASTM A385",
                1,
                Math.max(50, bySize),
                "100 mm x " + Text.number(vessel.volumeM3()) + " m3"));
    for (Task task : Task.values()) {
      needs.add(
          new Need(
              "the same read as area",
              "ASTM A385, the smaller reading",
              task,
              1,
              Math.max(50, byArea),
              "100 mm x sqrt(" + Text.number(vessel.volumeM3()) + "), shown only",
              false));
    }
    return needs;
  }

  private static List<Need> byTankDiameter(Vessel vessel) {
    return vessel.diameterMm().isPresent()
        ? VentRule.both(
            "83.3 mm for every m of tank diameter",
            "ASTM A385",
            1,
            83.3 * vessel.diameterMm().getAsDouble() / 1000,
            "83.3 mm x " + Text.number(vessel.diameterMm().getAsDouble() / 1000) + " m")
        : List.of();
  }

  private static List<Need> olderVentArea(Vessel vessel) {
    double area = 1250 * vessel.volumeM3();
    return List.of(
        new Need(
            "1250 mm2 of vent for every m3",
            "older trade guide",
            Task.VENT,
            1,
            Drills.diameterMm(area),
            "1250 mm2 x " + Text.number(vessel.volumeM3()) + " m3 = " + Text.mm2(area),
            true));
  }
}
