package spangle.intake.read;

import spangle.intake.problem.Place;
import spangle.intake.problem.ProblemCode;
import spangle.intake.week.Metal;
import spangle.measure.Figures;

/** Asks about steel that goes to zinc: no certificate, too strong, bent too tightly. */
final class SteelDoubts {
  /** About 34 HRC; above it hydrogen from pickling is a concern (ISO 14713-2, from memory). */
  private static final double STRONG_MPA = 1_000;

  /** Under this thickness strain-age embrittlement of cold bends is unlikely (trade guides). */
  private static final double THIN_MM = 3;

  private SteelDoubts() {}

  static void note(Fields fields, Metal metal) {
    if (metal.siPct().isEmpty() || metal.pPct().isEmpty()) {
      noCertificate(fields, metal);
    }
    if (metal.strengthMpa().orElse(0) > STRONG_MPA) {
      ask(
          fields,
          "strength_mpa",
          "up to " + Figures.upTo(STRONG_MPA, 0) + " MPa",
          "steel so strong can take up hydrogen in the acid and crack",
          "blast instead of pickling, and ask the galvanizer");
    }
    double radius = metal.bendRadiusMm().orElse(Double.POSITIVE_INFINITY);
    if (metal.thickestMm() >= THIN_MM && radius < 3 * metal.thickestMm()) {
      ask(
          fields,
          fields.has("bend_radius") ? "bend_radius" : "bend_radius_mm",
          "at least 3 times the thickness, " + Figures.upTo(3 * metal.thickestMm(), 1) + " mm",
          "tightly bent steel can become brittle with age in hot zinc",
          "bend wider, stress-relieve before zinc, or ask the galvanizer");
    }
  }

  private static void noCertificate(Fields fields, Metal metal) {
    String key = metal.certificate().isEmpty() ? "certificate" : "si_pct";
    Place place = fields.valuePlace(key);
    fields
        .notes()
        .add(
            ProblemCode.STEEL_UNKNOWN,
            place,
            key,
            fields.text(key),
            "Si and P of the mill certificate",
            "silicon and phosphorus are not known: zinc may come out thin or very thick",
            "get the mill certificate, or dip a sample; answer keep to go on with the range");
  }

  private static void ask(Fields fields, String key, String limit, String why, String remedy) {
    fields
        .notes()
        .add(
            ProblemCode.STEEL_STRONG,
            fields.valuePlace(key),
            key,
            fields.text(key),
            limit,
            why,
            remedy);
  }
}
