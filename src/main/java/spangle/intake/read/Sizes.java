package spangle.intake.read;

import java.util.Optional;
import java.util.OptionalDouble;
import spangle.intake.problem.ProblemCode;
import spangle.intake.source.Datum;
import spangle.measure.Box;
import spangle.measure.Figures;
import spangle.measure.QuantityKind;

/** Reads sizes of equipment and holds usable against inside. */
final class Sizes {
  private static final Range SIDE = Range.of(1, 50_000);
  private static final String[] SIDES = {"length", "width", "height"};

  private final Fields fields;

  Sizes(Fields fields) {
    this.fields = fields;
  }

  /** {@code depth} where the inside is given by depth, as tanks are; else {@code height}. */
  String third() {
    return fields
        .raw("inside_mm")
        .filter(Datum.Group.class::isInstance)
        .filter(d -> ((Datum.Group) d).entries().containsKey("depth"))
        .map(d -> "depth")
        .orElse("height");
  }

  Optional<Box> box(String base, String third) {
    Optional<Box> box = optionalBox(base, third);
    if (box.isEmpty() && fields.raw(base + "_mm").isEmpty()) {
      fields.missing(base + "_mm");
    }
    return box;
  }

  Optional<Box> optionalBox(String base, String third) {
    Optional<Fields> inner = fields.inner(base + "_mm");
    if (inner.isEmpty()) {
      return Optional.empty();
    }
    OptionalDouble length = side(inner.get(), "length");
    OptionalDouble width = side(inner.get(), "width");
    OptionalDouble height = side(inner.get(), third);
    inner.get().finish();
    return length.isPresent() && width.isPresent() && height.isPresent()
        ? Optional.of(new Box(length.getAsDouble(), width.getAsDouble(), height.getAsDouble()))
        : Optional.empty();
  }

  private static OptionalDouble side(Fields size, String key) {
    Optional<Datum.Scalar> scalar = size.needed(key);
    return scalar.isEmpty()
        ? OptionalDouble.empty()
        : size.quantity(key, scalar.get(), QuantityKind.LENGTH, "mm", SIDE);
  }

  /**
   * Refuses a usable size that is not inside the real one.
   *
   * @param times how many usable sizes lie side by side along each axis
   * @param clearance whether equal is refused too, because nothing then clears the walls
   */
  void within(
      String innerName,
      Optional<Box> inner,
      String outerName,
      Optional<Box> outer,
      double[] times,
      boolean clearance) {
    if (inner.isEmpty() || outer.isEmpty()) {
      return;
    }
    double[] small = sides(inner.get());
    double[] large = sides(outer.get());
    for (int i = 0; i < small.length; i++) {
      double needed = small[i] * times[i];
      if (needed < large[i] || (needed == large[i] && !clearance)) {
        continue;
      }
      String words = needed > large[i] ? "is larger than" : "leaves no clearance to";
      fields
          .notes()
          .add(
              ProblemCode.USABLE_LARGER_THAN_INSIDE,
              fields.valuePlace(innerName + "_mm"),
              innerName + "_mm",
              Figures.upTo(needed, 1),
              "under " + Figures.upTo(large[i], 1) + " mm",
              "the " + innerName + " " + SIDES[i] + " " + words + " the " + outerName + " one",
              "measure again; work that touches a wall is lost or hurts somebody");
    }
  }

  private static double[] sides(Box box) {
    return new double[] {box.lengthMm(), box.widthMm(), box.heightMm()};
  }
}
