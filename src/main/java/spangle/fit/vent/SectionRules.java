package spangle.fit.vent;

import java.util.List;
import spangle.fit.vent.Hollow.HollowSection;
import spangle.fit.vent.Hollow.HollowSection.Use;

/** Rules for hollow sections, at each end. */
final class SectionRules {
  private static final double LONG_MM = 2800;
  private static final double POLE_STEP_MM = 76;

  /**
   * Least diameter of one hole per end by inside size (plant table after the type table of ISO
   * 14713-2): for a size below the first figure the second holds.
   */
  private static final double[][] TABLE = {
    {15, 8},
    {20, 10},
    {30, 12},
    {40, 14},
    {50, 16},
    {60, 20},
    {80, 25},
    {100, 30},
    {120, 40},
    {160, 60},
    {200, 80},
    {250, 120},
    {300, 150},
    {400, 200},
    {500, 300}
  };

  static final List<VentRule> ALL =
      List.of(
          on(SectionRules::diagonal),
          on(SectionRules::table),
          on(SectionRules::longSection),
          on(SectionRules::truss),
          on(SectionRules::pole),
          on(SectionRules::rail),
          on(SectionRules::hidden));

  private SectionRules() {}

  private interface OfSection {
    List<Need> needs(HollowSection section);
  }

  private static VentRule on(OfSection rule) {
    return hollow -> hollow instanceof HollowSection section ? rule.needs(section) : List.of();
  }

  private static List<Need> diagonal(HollowSection section) {
    return VentRule.both(
        "quarter of the bore diagonal",
        "trade design guides for galvanizing",
        1,
        0.25 * section.diagonalMm(),
        "0.25 x " + Text.mm(section.diagonalMm()));
  }

  private static List<Need> table(HollowSection section) {
    double size =
        section.round() ? section.widthMm() : (section.widthMm() + section.heightMm()) / 2;
    for (double[] row : TABLE) {
      if (size < row[0]) {
        return VentRule.both(
            "table by inside size",
            "plant table after ISO 14713-2",
            1,
            row[1],
            "inside size " + Text.mm(size) + " is below " + Text.mm(row[0]));
      }
    }
    return List.of();
  }

  private static List<Need> longSection(HollowSection section) {
    return section.lengthMm().orElse(0) > LONG_MM
        ? share(
            section,
            0.30,
            1,
            "30 % of the section when longer than 2.8 m",
            "plant table after ISO 14713-2")
        : List.of();
  }

  private static List<Need> truss(HollowSection section) {
    return section.use() == Use.TRUSS
        ? share(section, 0.30, 2, "truss: two holes per end, 30 % together", "ASTM A385")
        : List.of();
  }

  private static List<Need> pole(HollowSection section) {
    if (section.use() != Use.POLE) {
      return List.of();
    }
    boolean large = section.widthMm() >= POLE_STEP_MM;
    return share(
        section, large ? 0.30 : 0.45, 1, "tapered pole by bore, 76 mm the step", "ASTM A385");
  }

  private static List<Need> rail(HollowSection section) {
    return section.use() == Use.RAIL
        ? VentRule.both(
            "rails: two holes per joint, opposite, edge within 12 mm of the weld",
            "ASTM A385",
            2,
            9.5,
            "2 x 9.5 mm")
        : List.of();
  }

  private static List<Need> hidden(HollowSection section) {
    return section.use() == Use.HIDDEN
        ? share(
            section,
            0.50,
            1,
            "hidden opening: half of the connecting section, and a 10 mm check hole outside",
            "ASTM A385")
        : List.of();
  }

  private static List<Need> share(
      HollowSection section, double share, int holes, String rule, String source) {
    return VentRule.both(
        rule,
        source,
        holes,
        Drills.diameterMm(share * section.sectionMm2() / holes),
        Text.number(share) + " x " + Text.mm2(section.sectionMm2()));
  }
}
