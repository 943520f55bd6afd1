package spangle.intake.read;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import spangle.intake.problem.ProblemCode;
import spangle.intake.source.Datum;
import spangle.intake.source.Near;
import spangle.intake.week.Metal;
import spangle.measure.Figures;
import spangle.measure.QuantityKind;
import spangle.part.Material;
import spangle.part.WallArea;

/** Reads what a piece is made of. */
final class MetalReader {
  static final Range THICKNESS_MM = Range.of(0.2, 400);
  private static final double THIN_MM = 0.5;
  private static final double THICK_MM = 25;
  private static final Pattern GAUGE =
      Pattern.compile(
          "#?([0-9]{1,2})\\s*(?:ga|gauge|gage|gg)\\.?(?:\\s+([a-z-]+))?", Pattern.CASE_INSENSITIVE);
  private static final Range SILICON = Range.of(0, 5);
  private static final Range PHOSPHORUS = Range.of(0, 1);

  private final Fields fields;
  private final JobContext context;

  MetalReader(Fields fields, JobContext context) {
    this.fields = fields;
    this.context = context;
  }

  Metal read() {
    Optional<Material> material = material();
    OptionalDouble thickness = thickness();
    double thin = thickness.orElse(1);
    OptionalDouble thickest = fields.quantity("thickest", QuantityKind.LENGTH, THICKNESS_MM);
    if (thickness.isPresent() && thickest.isPresent() && thickest.getAsDouble() < thin) {
      fields
          .notes()
          .add(
              ProblemCode.OUT_OF_RANGE,
              fields
                  .quantityScalar("thickest", QuantityKind.LENGTH)
                  .map(Datum.Scalar::place)
                  .orElse(fields.place()),
              "thickest",
              Figures.upTo(thickest.getAsDouble(), 2),
              "at least " + Figures.upTo(thin, 2) + " mm",
              "the thickest wall is thinner than the thickness",
              "give the thinnest wall as thickness and the thickest as thickest");
    }
    List<WallArea> skins = new SkinReader(fields).read(thickness, thickest);
    double thick = skins.isEmpty() ? thin : skins.get(skins.size() - 1).thicknessMm();
    String certificate = fields.text("certificate");
    return new Metal(
        material.orElse(Material.OTHER),
        fields.text("material"),
        fields.text("grade"),
        thin,
        Math.max(thin, thickest.orElse(thick)),
        skins,
        fields.number("strength_mpa", Range.of(100, 3_000)),
        fields.quantity("bend_radius", QuantityKind.LENGTH, Range.of(0, 500)),
        isNone(certificate) ? "" : certificate,
        fields.number("si_pct", SILICON),
        fields.number("p_pct", PHOSPHORUS),
        fields.number("al_pct", PHOSPHORUS));
  }

  static boolean isNone(String text) {
    return List.of("", "none", "no", "-", "n/a", "missing", "keine")
        .contains(text.toLowerCase(Locale.ROOT));
  }

  private Optional<Material> material() {
    Optional<Datum.Scalar> scalar = fields.needed("material");
    if (scalar.isEmpty()) {
      return Optional.empty();
    }
    Optional<Material> material = Material.parse(scalar.get().text());
    if (material.isEmpty()) {
      List<String> words = Arrays.stream(Material.values()).map(Material::word).toList();
      fields
          .notes()
          .add(
              ProblemCode.UNKNOWN_WORD,
              scalar.get().place(),
              "material",
              scalar.get().text(),
              String.join(", ", words),
              "'"
                  + scalar.get().text()
                  + "' is no known material"
                  + Near.hint(scalar.get().text(), words),
              "use one of: " + String.join(", ", words));
    }
    return material;
  }

  private OptionalDouble thickness() {
    Optional<Datum.Scalar> gauge = fields.scalar("gauge");
    Optional<Datum.Scalar> scalar = fields.quantityScalar("thickness", QuantityKind.LENGTH);
    if (gauge.isPresent() && scalar.filter(s -> !s.isBlank()).isEmpty()) {
      fields.quantity("thickness", QuantityKind.LENGTH, THICKNESS_MM);
      return gauge("gauge", gauge.get(), gauge.get().text() + (isDigits(gauge.get()) ? " ga" : ""));
    }
    if (scalar.isPresent() && GAUGE.matcher(scalar.get().text()).matches()) {
      return gauge("thickness", scalar.get(), scalar.get().text());
    }
    OptionalDouble thickness =
        fields.quantityNeeded("thickness", QuantityKind.LENGTH, THICKNESS_MM);
    if (thickness.isPresent() && scalar.isPresent()) {
      doubtThickness(thickness.getAsDouble(), scalar.get());
    }
    return thickness;
  }

  private static boolean isDigits(Datum.Scalar scalar) {
    return scalar.text().matches("[0-9]+");
  }

  private OptionalDouble gauge(String key, Datum.Scalar scalar, String text) {
    Matcher matcher = GAUGE.matcher(text);
    Optional<String> named =
        matcher.matches() && matcher.group(2) != null
            ? Optional.of(matcher.group(2).toLowerCase(Locale.ROOT))
            : context.gaugeTable();
    OptionalDouble thickness =
        matcher.matches() && named.isPresent()
            ? Gauges.thicknessMm(named.get(), Integer.parseInt(matcher.group(1)))
            : OptionalDouble.empty();
    if (thickness.isEmpty()) {
      fields
          .notes()
          .add(
              ProblemCode.GAUGE_WITHOUT_TABLE,
              scalar.place(),
              key,
              scalar.text(),
              "mm, or a gauge of a named table: " + String.join(", ", Gauges.names().keySet()),
              !matcher.matches()
                  ? "'" + scalar.text() + "' is no gauge number"
                  : named.isEmpty()
                      ? "a gauge number is another thickness in every table, and no table is named"
                      : "the table '" + named.get() + "' has no such gauge",
              "measure it in mm, or name gauge_table in shop.yaml or columns.yaml");
    }
    return thickness;
  }

  private void doubtThickness(double mm, Datum.Scalar scalar) {
    boolean evenGauge = isDigits(scalar) && mm >= 14 && mm <= 28 && mm % 2 == 0;
    boolean weighed = fields.has("mass") || fields.has("mass_kg") || fields.has("mass_lb");
    if (mm >= THIN_MM && mm <= THICK_MM && (!evenGauge || weighed)) {
      return;
    }
    fields
        .notes()
        .add(
            ProblemCode.THICKNESS_UNUSUAL,
            scalar.place(),
            "thickness",
            scalar.text(),
            THIN_MM + " to " + Figures.upTo(THICK_MM, 0) + " mm",
            evenGauge
                ? "as written it is "
                    + scalar.text()
                    + " mm plate; "
                    + scalar.text()
                    + " gauge sheet would be "
                    + Gauges.thicknessMm("manufacturers-standard", (int) mm).orElse(Double.NaN)
                    + " mm"
                : "few parts are " + Figures.upTo(mm, 2) + " mm thick",
            "answer keep if it is right, else give the thickness in mm");
  }
}
