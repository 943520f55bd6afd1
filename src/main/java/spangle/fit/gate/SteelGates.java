package spangle.fit.gate;

import spangle.measure.Figures;
import spangle.part.Material;

/** What the metal itself forbids. */
final class SteelGates {
  /** About 34 HRC; above it hydrogen from pickling is a concern (ISO 14713-2, from memory). */
  private static final double STRONG_MPA = 1_000;

  /** Under this thickness strain-age embrittlement of bends is unlikely (trade guides, A143). */
  private static final double THIN_MM = 3;

  /** Tightest bend in thicknesses that needs no stress relief (trade guides). */
  private static final double BEND_RATIO = 3;

  /** Largest ratio of thicknesses welded together (trade guides); 2.5 is preferred (memory). */
  private static final double MOST_RATIO = 4;

  private static final double GOOD_RATIO = 2.5;

  /** Shorter side of a flat face from which sheet under 3 mm is held (common practice). */
  private static final double FLAT_MM = 500;

  private SteelGates() {}

  static GateState material(GateCase part) {
    Material material = part.steel().material();
    return material == Material.STEEL || material == Material.CAST_IRON
        ? GateState.clear(Gate.MATERIAL, material.word())
        : GateState.shut(
            Gate.MATERIAL,
            "material-not-for-zinc",
            material.word() + " must not go into acid or molten zinc",
            "nothing; plain steel and iron castings only, or another route");
  }

  static GateState strong(GateCase part) {
    double strength = part.steel().strengthMpa().orElse(0);
    if (strength <= STRONG_MPA) {
      return GateState.clear(
          Gate.STRONG_STEEL,
          part.steel().strengthMpa().isPresent()
              ? mm(strength) + " MPa"
              : "no strength given, taken as plain steel");
    }
    return GateState.shutUnless(
        part.record("steel"),
        Gate.STRONG_STEEL,
        "steel-strong",
        mm(strength)
            + " MPa (limit "
            + mm(STRONG_MPA)
            + "): steel so strong takes up hydrogen in acid and can crack later, under load",
        "blasting in place of pickling, and the galvanizer's written release, signed");
  }

  static GateState tightBend(GateCase part) {
    double thick = part.steel().thickMm();
    if (part.steel().bendRadiusMm().isEmpty()) {
      return GateState.clear(
          Gate.TIGHT_BEND,
          thick < THIN_MM ? "under 3 mm" : "no radius given: bends under 3 t would need advice");
    }
    double radius = part.steel().bendRadiusMm().getAsDouble();
    if (thick < THIN_MM || radius >= BEND_RATIO * thick - 1e-9) {
      return GateState.clear(
          Gate.TIGHT_BEND, "radius " + mm(radius) + " mm in " + mm(thick) + " mm steel");
    }
    return GateState.shutUnless(
        part.record("steel"),
        Gate.TIGHT_BEND,
        "steel-strong",
        "inside radius "
            + mm(radius)
            + " mm in "
            + mm(thick)
            + " mm steel (least "
            + mm(BEND_RATIO * thick)
            + " mm): it can become brittle with age in hot zinc",
        "a wider bend, or stress relief at 595 C for an hour per 25 mm before zinc, signed");
  }

  static GateState ratio(GateCase part) {
    double ratio = part.steel().thickMm() / part.steel().thinMm();
    String words = mm(part.steel().thinMm()) + " to " + mm(part.steel().thickMm()) + " mm";
    if (part.build().welded() != Known.YES || ratio <= MOST_RATIO + 1e-9) {
      return GateState.clear(
          Gate.THICKNESS_RATIO,
          ratio > GOOD_RATIO && part.build().welded() == Known.YES
              ? words + ", over 2.5 : 1 it may warp"
              : words);
    }
    return GateState.shutUnless(
        part.record("thickness-ratio"),
        Gate.THICKNESS_RATIO,
        "thickness-ratio",
        words
            + " welded together, "
            + Figures.upTo(ratio, 1)
            + " : 1 (most 4 : 1): the thin part heats first and warps or tears",
        "even thicknesses, or parts dipped apart and joined after, or the customer's word that"
            + " warping is accepted, signed");
  }

  static GateState distortion(GateCase part) {
    double thin = part.steel().thinMm();
    FlatFace face = FlatFace.of(part, FLAT_MM);
    if (thin >= THIN_MM || face.shorterMm() < FLAT_MM) {
      return GateState.clear(Gate.DISTORTION, mm(thin) + " mm, " + face.words());
    }
    return GateState.shutUnless(
        part.record("distortion"),
        Gate.DISTORTION,
        "thin-flat-sheet",
        mm(thin)
            + " mm sheet, "
            + face.words()
            + " (held from "
            + mm(FLAT_MM)
            + " mm under "
            + mm(THIN_MM)
            + " mm): it will buckle at bath heat",
        "ribs or folds in the face, thicker sheet, or the customer's word that waviness is"
            + " accepted, signed");
  }

  private static String mm(double value) {
    return Figures.upTo(value, 1);
  }
}
