package spangle.intake.week;

import java.util.Optional;
import java.util.OptionalDouble;
import spangle.measure.Box;
import spangle.part.Shape;

/**
 * Form and size of one piece as the file gives them.
 *
 * @param shape shape in words, where given
 * @param areaM2 all wetted surface, where given
 * @param massKg mass, where given
 * @param sizeMm outside size folded, where given
 * @param drawing drawing beside the job file, path below the week folder; may be empty
 * @param drawingUnit unit of the drawing where the row says it; else empty
 * @param drawn what the drawing measures, where it could be read
 * @param picture the drawing as it was understood, one svg element; empty where there is none
 * @param maskedAreaM2 surface covered by plugs and tape
 */
public record Body(
    Optional<ShapeWords> shape,
    OptionalDouble areaM2,
    OptionalDouble massKg,
    Optional<Box> sizeMm,
    String drawing,
    String drawingUnit,
    Optional<Shape> drawn,
    String picture,
    double maskedAreaM2) {}
