package spangle.cli;

import java.io.PrintWriter;
import java.util.List;
import java.util.Optional;
import spangle.desk.DrawingDesk;
import spangle.intake.drawing.SolidRead;
import spangle.intake.problem.Problem;
import spangle.intake.problem.Severity;
import spangle.measure.Figures;
import spangle.part.Solid;
import spangle.part.mesh.MeshFacts;

/** What a body adds to the figures of a piece. */
final class SolidWords {
  private SolidWords() {}

  static int exitCode(DrawingDesk.Body body) {
    if (body.read().isEmpty()) {
      return ExitCode.REFUSED;
    }
    boolean waits = body.problems().stream().anyMatch(p -> p.severity() != Severity.WARN);
    return waits ? ExitCode.WAITS : ExitCode.DONE;
  }

  static JsonOut json(JsonOut object, DrawingDesk.Body body) {
    Optional<SolidRead> read = body.read();
    Optional<Solid> shape = read.flatMap(SolidRead::shape);
    if (shape.isEmpty()) {
      object
          .put("area_m2", read.map(r -> r.surfaceMm2() / 1e6).orElse(null))
          .put("mass_kg", null)
          .put("envelope_mm", read.flatMap(SolidWords::size).orElse(null));
    }
    return object
        .put("watertight", shape.isPresent())
        .put("volume_l", shape.map(s -> s.metalMm3() / 1e6).orElse(null))
        .put("voids", shape.map(Solid::voids).orElse(null))
        .put("triangles", read.map(r -> r.facts().triangles()).orElse(0))
        .put("unit", read.map(r -> r.unit().symbol()).orElse(null))
        .put(
            "readings",
            read.map(r -> r.readings().stream().map(FlatWords::reading).toList()).orElse(List.of()))
        .put("problems", body.problems().stream().map(ProblemOut::json).toList());
  }

  private static Optional<List<Double>> size(SolidRead read) {
    double mm = read.unit().mm();
    return read.facts()
        .sizeMm()
        .map(b -> List.of(b.lengthMm() * mm, b.widthMm() * mm, b.heightMm() * mm));
  }

  static void print(DrawingDesk.Body body, PrintWriter out) {
    body.read().ifPresent(read -> print(read, out));
    for (Problem problem : body.problems()) {
      FlatWords.print(problem, out);
    }
    out.flush();
  }

  private static void print(SolidRead read, PrintWriter out) {
    MeshFacts facts = read.facts();
    String surface =
        facts.triangles()
            + " triangles; "
            + (read.shape().isPresent() ? "closed" : "not closed")
            + "; read in "
            + read.unit().words();
    out.println("body      " + surface);
    if (read.shape().isEmpty()) {
      out.println(
          "surface   " + Figures.significant(read.surfaceMm2() / 1e6, 5) + " m2, of all triangles");
    }
  }
}
