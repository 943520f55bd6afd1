package spangle.intake.read;

import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import spangle.intake.drawing.Asked;
import spangle.intake.drawing.DrawingUnit;
import spangle.intake.problem.Meanwhile;
import spangle.intake.problem.Place;
import spangle.intake.problem.Problem;
import spangle.intake.problem.ProblemCode;
import spangle.intake.problem.Severity;
import spangle.intake.source.Datum;
import spangle.intake.week.Metal;
import spangle.intake.week.ShapeWords;
import spangle.measure.Box;
import spangle.part.Shape;

/** Reads the drawing a row names: a plain file beside the job file, never one elsewhere. */
final class DrawingReader {
  private static final double STEEL = 7850;
  private static final Map<String, DrawingUnit> UNITS = units();

  private final Fields fields;
  private final JobContext context;

  DrawingReader(Fields fields, JobContext context) {
    this.fields = fields;
    this.context = context;
  }

  /**
   * A drawing as named and read.
   *
   * @param file path below the week folder; empty without one
   * @param unit unit as the row says it; empty where it does not
   * @param shape what it measures
   * @param picture how it was understood; empty where there is none
   * @param read whether it was opened
   */
  record Named(String file, String unit, Optional<Shape> shape, String picture, boolean read) {}

  /**
   * Reads it.
   *
   * @param needed whether area, mass or size can come from the drawing only
   */
  Named read(
      Metal metal,
      OptionalDouble massKg,
      Optional<Box> size,
      Optional<ShapeWords> shape,
      boolean needed) {
    String file = file(shape);
    Optional<DrawingUnit> unit = fields.word("drawing_unit", UNITS);
    String kind = file.substring(file.lastIndexOf('.') + 1).toLowerCase(Locale.ROOT);
    boolean known = kind.equals("dxf") || kind.equals("stl");
    String unitWord = unit.map(DrawingUnit::symbol).orElse("");
    if (file.isEmpty() || !known || fields.notes().refused()) {
      return new Named(file, unitWord, Optional.empty(), "", false);
    }
    Asked asked =
        new Asked(
            metal.thicknessMm(),
            metal.material().densityKgM3().orElse(STEEL),
            massKg,
            unit,
            size,
            OptionalDouble.empty(),
            metal.bendRadiusMm());
    DrawingShelf.Drawn drawn = context.drawings().drawn(file, asked);
    for (Problem problem : drawn.problems()) {
      // The hollow of a body is a gate of its own, and only for work that goes into zinc.
      if (problem.code() != ProblemCode.BODY_HAS_VOID) {
        fields.notes().add(ofRow(problem, file, needed));
      }
    }
    return new Named(file, unitWord, drawn.shape(), drawn.picture(), true);
  }

  /** As the row sees it: answered under the drawing's name, and shut only where it is needed. */
  private static Problem ofRow(Problem p, String file, boolean needed) {
    String name = file.substring(file.lastIndexOf('/') + 1);
    boolean drawing = p.field().isEmpty() || p.field().equals("drawing");
    boolean refused = p.severity() == Severity.REFUSED;
    return new Problem(
        p.code() == ProblemCode.JOB_FILE_UNREADABLE ? ProblemCode.DRAWING_UNREADABLE : p.code(),
        refused && !needed ? Severity.ASK : p.severity(),
        p.place(),
        drawing ? "drawing" : p.field(),
        drawing ? name : p.severity() == Severity.ASK ? "" : p.value(),
        p.limit(),
        p.why(),
        p.remedy() + look(p, file),
        needed ? p.meanwhile() : Meanwhile.AS_WRITTEN);
  }

  /** How to see the places that are numbered. */
  private static String look(Problem p, String file) {
    return p.why().contains("in the picture")
        ? "; the week's sheets show it, or: spangle calc area --flat "
            + file
            + " --thickness T --picture FILE.svg"
        : "";
  }

  private static Map<String, DrawingUnit> units() {
    Map<String, DrawingUnit> units = new LinkedHashMap<>();
    for (DrawingUnit unit : DrawingUnit.values()) {
      units.put(unit.symbol(), unit);
    }
    units.put("inch", DrawingUnit.IN);
    return units;
  }

  private String file(Optional<ShapeWords> shape) {
    Optional<Datum.Scalar> own = fields.scalar("drawing");
    Optional<String> named =
        own.map(Datum.Scalar::text)
            .or(() -> shape.filter(DrawingReader::drawn).map(ShapeWords::file));
    if (named.isEmpty()) {
      return "";
    }
    Place place = own.map(Datum.Scalar::place).orElse(fields.valuePlace("shape"));
    String beside = beside(place.file(), named.get());
    if (beside.isEmpty()) {
      return refuse(
          ProblemCode.PATH_OUTSIDE,
          place,
          named.get(),
          "the drawing's name leads elsewhere; it is not opened",
          "put the drawing beside the job file and give its plain name");
    }
    if (!context.folder().inside(beside)) {
      return context.folder().exists(beside)
          ? refuse(
              ProblemCode.PATH_OUTSIDE,
              place,
              named.get(),
              "a link leads out of the week folder, or it is no plain file; it is not opened",
              "copy the drawing itself beside the job file")
          : refuse(
              ProblemCode.DRAWING_MISSING,
              place,
              named.get(),
              "the drawing is not there",
              "put it beside the job file, or take its name out");
    }
    return beside;
  }

  private static boolean drawn(ShapeWords words) {
    return words.form() == ShapeWords.Form.FLAT || words.form() == ShapeWords.Form.SOLID;
  }

  private String refuse(ProblemCode code, Place place, String value, String why, String remedy) {
    fields.notes().add(code, place, "drawing", value, "a file beside the job file", why, remedy);
    return "";
  }

  /** Path below the week folder; empty for a name that is not a plain file name. */
  private static String beside(String jobFile, String name) {
    boolean plain =
        !name.isBlank()
            && name.length() <= 120
            && !name.contains("..")
            && name.chars().noneMatch(c -> c < ' ' || "/\\:*?\"<>|".indexOf(c) >= 0);
    int slash = jobFile.lastIndexOf('/');
    return plain ? jobFile.substring(0, slash + 1) + name : "";
  }
}
