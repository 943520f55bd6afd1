package spangle.intake.read;

import java.util.Optional;
import java.util.OptionalDouble;
import spangle.intake.problem.ProblemCode;
import spangle.intake.source.Datum;
import spangle.intake.week.Body;
import spangle.intake.week.Metal;
import spangle.intake.week.PieceFigures;
import spangle.intake.week.ShapeWords;
import spangle.measure.Box;
import spangle.measure.QuantityKind;
import spangle.part.ShapeException;

/** Reads form and size of a piece and says what is wanting to measure it. */
final class BodyReader {
  /** A side or diameter any piece can have. */
  static final Range SIDE_MM = Range.of(0.1, 30_000);

  static final Range AREA_M2 = Range.of(1e-6, 1_000);
  private static final Range MASS_KG = Range.of(1e-5, 30_000);

  private final Fields fields;
  private final JobContext context;

  BodyReader(Fields fields, JobContext context) {
    this.fields = fields;
    this.context = context;
  }

  Body read(Metal metal) {
    Optional<ShapeWords> shape = shape();
    OptionalDouble area = fields.quantity("area", QuantityKind.AREA, AREA_M2);
    OptionalDouble mass = fields.quantity("mass", QuantityKind.MASS, MASS_KG);
    Optional<Box> size = size();
    if (!metal.skins().isEmpty()) {
      new SkinReader(fields).checkArea(metal.skinAreaM2(), area);
    }
    double masked = fields.quantityOr("masked_area", QuantityKind.AREA, Range.of(0, 1_000), 0);
    Body byHand = new Body(shape, area, mass, size, "", "", Optional.empty(), "", masked);
    boolean needed = !measurable(metal, byHand);
    DrawingReader.Named drawing =
        new DrawingReader(fields, context).read(metal, mass, size, shape, needed);
    Body body =
        new Body(
            shape,
            area,
            mass,
            size,
            drawing.file(),
            drawing.unit(),
            drawing.shape(),
            drawing.picture(),
            masked);
    boolean asked = drawing.read() && !fields.notes().refused();
    if (asked) {
      return body;
    }
    if (!fields.notes().refused()) {
      checkMeasurable(metal, body);
    }
    return body;
  }

  private Optional<ShapeWords> shape() {
    for (String unit : new String[] {"", "mm", "cm", "in"}) {
      String key = unit.isEmpty() ? "shape" : "shape_" + unit;
      Optional<Datum.Scalar> scalar = fields.scalar(key);
      if (scalar.isPresent()) {
        return ShapeReader.read(key, scalar.get(), unit, fields.notes());
      }
    }
    return Optional.empty();
  }

  private Optional<Box> size() {
    OptionalDouble length = fields.quantity("length", QuantityKind.LENGTH, SIDE_MM);
    OptionalDouble width = fields.quantity("width", QuantityKind.LENGTH, SIDE_MM);
    OptionalDouble height = fields.quantity("height", QuantityKind.LENGTH, SIDE_MM);
    return length.isPresent() && width.isPresent() && height.isPresent()
        ? Optional.of(new Box(length.getAsDouble(), width.getAsDouble(), height.getAsDouble()))
        : Optional.empty();
  }

  private static boolean measurable(Metal metal, Body body) {
    try {
      return PieceFigures.of(metal, body).isPresent();
    } catch (ShapeException impossible) {
      return false;
    }
  }

  private void checkMeasurable(Metal metal, Body body) {
    try {
      if (PieceFigures.of(metal, body).isPresent()) {
        return;
      }
    } catch (ShapeException impossible) {
      fields
          .notes()
          .add(
              ProblemCode.SHAPE_NOT_READ,
              fields.valuePlace("shape"),
              "shape",
              body.shape().map(ShapeWords::text).orElse(""),
              impossible.limit(),
              impossible.what() + " " + impossible.value() + " is not " + impossible.limit(),
              impossible.remedy());
      return;
    }
    fields
        .notes()
        .add(
            ProblemCode.SIZE_MISSING,
            fields.place(),
            "shape",
            body.shape().map(ShapeWords::text).orElse(""),
            "",
            missing(body),
            "give a shape in words, or area or mass and length, width, height as it hangs");
  }

  private String missing(Body body) {
    boolean area = body.areaM2().isPresent() || body.massKg().isPresent();
    if (body.sizeMm().isEmpty() && area) {
      return fields.has("length") || fields.has("length_mm")
          ? "one of length, width and height is missing: a flat plate is told by its shape, such as"
              + " plate 160x120 mm; anything else by all three"
          : "the outside size is missing: nobody can say what it fits on or into";
    }
    return body.sizeMm().isPresent()
        ? "area and mass are missing, and no shape says them"
        : "shape, area, mass and size are missing";
  }
}
