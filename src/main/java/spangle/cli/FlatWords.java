package spangle.cli;

import java.io.PrintWriter;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import spangle.desk.DrawingDesk;
import spangle.intake.drawing.FlatRead;
import spangle.intake.drawing.UnitReading;
import spangle.intake.problem.Problem;
import spangle.intake.problem.Severity;
import spangle.measure.Box;
import spangle.measure.Figures;
import spangle.part.FlatPattern;

/** What a flat pattern adds to the figures of a piece. */
final class FlatWords {
  private FlatWords() {}

  static int exitCode(DrawingDesk.Flat flat) {
    if (flat.read().flatMap(FlatRead::shape).isEmpty()) {
      return ExitCode.REFUSED;
    }
    boolean waits = flat.problems().stream().anyMatch(p -> p.severity() != Severity.WARN);
    return waits ? ExitCode.WAITS : ExitCode.DONE;
  }

  static JsonOut json(JsonOut object, DrawingDesk.Flat flat) {
    Optional<FlatRead> read = flat.read();
    Optional<FlatPattern> shape = read.flatMap(FlatRead::shape);
    if (shape.isEmpty()) {
      object.put("area_m2", null).put("mass_kg", null).put("cut_edge_m", null);
    }
    // The flat size of a bent part would be taken for its envelope.
    if (shape.isEmpty() || shape.get().foldedSizeUnknown()) {
      object.put("envelope_mm", null);
    }
    shape.ifPresent(
        s ->
            object
                .put("flat_mm", List.of(s.flatLengthMm(), s.flatWidthMm()))
                .put("net_flat_m2", s.netAreaMm2() / 1e6));
    object
        .put("contours", read.map(r -> r.layout().contours()).orElse(0))
        .put("holes", read.map(r -> r.layout().holes().size()).orElse(0))
        .put("bends", read.map(r -> r.layout().bends().size()).orElse(0))
        .put("unit", read.map(r -> r.unit().symbol()).orElse(null));
    object.put("readings", read.map(FlatWords::readings).orElse(List.of()));
    return object.put("problems", flat.problems().stream().map(ProblemOut::json).toList());
  }

  private static List<JsonOut> readings(FlatRead read) {
    return read.readings().stream().map(FlatWords::reading).toList();
  }

  static JsonOut reading(UnitReading reading) {
    Box box = reading.measured().envelopeMm();
    return new JsonOut()
        .put("unit", reading.unit().symbol())
        .put("area_m2", reading.measured().areaM2())
        .put("mass_kg", reading.measured().massKg())
        .put("size_mm", List.of(box.lengthMm(), box.widthMm(), box.heightMm()))
        .put("likely", reading.likely());
  }

  static void print(DrawingDesk.Flat flat, PrintWriter out) {
    flat.read().ifPresent(read -> read.shape().ifPresent(shape -> print(read, shape, out)));
    for (Problem problem : flat.problems()) {
      print(problem, out);
    }
    out.flush();
  }

  static void print(Problem problem, PrintWriter out) {
    out.println(problem.severity().word().toUpperCase(Locale.ROOT) + "  " + where(problem));
    out.println("    " + problem.why() + ProblemOut.limit(problem));
    out.println("    do: " + problem.remedy());
  }

  private static String where(Problem problem) {
    return problem.place().words() + "  [" + problem.code().key() + "]";
  }

  private static void print(FlatRead read, FlatPattern shape, PrintWriter out) {
    out.println(
        "drawing   "
            + read.layout().outers().size()
            + " outline(s), "
            + read.layout().holes().size()
            + " hole(s), "
            + read.layout().bends().size()
            + " bend line(s); read in "
            + read.unit().words());
    out.println(
        "flat      "
            + Figures.upTo(shape.flatLengthMm(), 1)
            + " x "
            + Figures.upTo(shape.flatWidthMm(), 1)
            + " mm"
            + folded(read, shape));
    out.println("cut edge  " + Figures.significant(shape.cutEdgeMm() / 1000, 5) + " m");
  }

  private static String folded(FlatRead read, FlatPattern shape) {
    @Nullable String words =
        shape
            .foldedMm()
            .map(
                b ->
                    "; bent "
                        + Figures.upTo(b.lengthMm(), 1)
                        + " x "
                        + Figures.upTo(b.widthMm(), 1)
                        + " x "
                        + Figures.upTo(b.heightMm(), 1)
                        + " mm"
                        + (read.foldedReckoned() ? ", reckoned" : ""))
            .orElse(null);
    return words == null ? (shape.foldedSizeUnknown() ? "; bent size not known" : "") : words;
  }
}
