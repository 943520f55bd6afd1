package spangle.intake.drawing;

import java.util.List;
import java.util.Optional;
import spangle.intake.problem.Place;
import spangle.intake.problem.ProblemCode;
import spangle.intake.problem.Problems;
import spangle.intake.source.UnreadableException;
import spangle.measure.Figures;
import spangle.part.Measured;
import spangle.part.ShapeException;
import spangle.part.Solid;
import spangle.part.mesh.MeshFacts;

/** From the bytes of an STL file to a body, with everything a person should look at. */
public final class SolidFile {
  /** Larger or heavier things come on no lorry to a finishing shop; common practice. */
  private static final double LONGEST_MM = 13_000;

  private static final double HEAVIEST_KG = 20_000;
  private static final double SHORTEST_MM = 5;

  private final String file;
  private final Asked asked;
  private final Problems problems;

  private SolidFile(String file, Asked asked, Problems problems) {
    this.file = file;
    this.asked = asked;
    this.problems = problems;
  }

  /**
   * Reads a body; never throws for what is in the file.
   *
   * @return empty when it cannot be read at all, with the reason among the problems
   */
  public static Optional<SolidRead> read(
      String file, byte[] bytes, Asked asked, Problems problems) {
    try {
      MeshFacts facts = MeshFacts.of(StlReader.read(file, bytes, problems));
      if (facts.triangles() == 0) {
        throw UnreadableException.grammar(
            Place.file(file), "no triangle in it has an area", "export the body again as STL");
      }
      return Optional.of(new SolidFile(file, asked, problems).read(facts));
    } catch (UnreadableException broken) {
      Unreadable.note(broken, problems);
    } catch (ShapeException impossible) {
      Unreadable.note(file, impossible, problems);
    }
    return Optional.empty();
  }

  private SolidRead read(MeshFacts facts) {
    say(facts);
    if (facts.solid().isEmpty()) {
      notClosed(facts);
      DrawingUnit unit = asked.unit().orElse(DrawingUnit.MM);
      return new SolidRead(Optional.empty(), facts, unit, List.of());
    }
    Solid body = facts.solid().get();
    UnitChoice.Chosen chosen =
        new UnitChoice(file, problems, body, asked, SolidFile::likely)
            .choose(Optional.empty(), Optional.empty());
    Solid inMm = body.withLengthsTimes(chosen.unit().mm());
    if (inMm.voids() > 0) {
      hollow(inMm, facts.doubtfulVoids());
    }
    return new SolidRead(Optional.of(inMm), facts, chosen.unit(), chosen.readings());
  }

  private static boolean likely(Measured measured) {
    double longest = measured.envelopeMm().longestMm();
    return longest <= LONGEST_MM && longest >= SHORTEST_MM && measured.massKg() <= HEAVIEST_KG;
  }

  private void hollow(Solid body, int doubtful) {
    add(
        ProblemCode.BODY_HAS_VOID,
        body.voids()
            + " closed inner space(s) of "
            + Figures.significant(body.voidMm3() / 1e6, 3)
            + " l that no opening reaches: it bursts in molten zinc"
            + (doubtful > 0
                ? "; "
                    + doubtful
                    + " of them face outwards like bodies of their own and may be metal"
                : ""),
        "vent and drain holes, seen and signed for, or the drawing put right");
  }

  private void notClosed(MeshFacts facts) {
    add(
        ProblemCode.BODY_NOT_CLOSED,
        facts.openEdges()
            + " edge(s) at which the surface ends, "
            + facts.turnedEdges()
            + " between triangles that face opposite ways: there is no volume and no mass,"
            + " and nobody can say whether it has closed spaces",
        "export a closed body, or give area, mass and size by hand");
  }

  private void say(MeshFacts facts) {
    if (facts.flatTriangles() > 0) {
      add(
          ProblemCode.DRAWING_NOTE,
          facts.flatTriangles() + " triangle(s) without area were left out",
          "nothing");
    }
    if (facts.welded()) {
      add(
          ProblemCode.DRAWING_NOTE,
          "corners a hair apart were brought together to close the surface",
          "nothing");
    }
    if (facts.insideOut()) {
      add(
          ProblemCode.DRAWING_NOTE,
          "an outer surface faces inwards; it was taken the other way",
          "export the body again with its faces outwards");
    }
    if (facts.solid().isPresent() && facts.bodies() > 1) {
      doubt(
          facts.bodies() + " separate bodies in one file; reckoned all together",
          "one piece to a file; answer keep if they are one piece");
    }
    if (facts.solid().isPresent() && facts.sharedEdges() > 0) {
      doubt(
          facts.sharedEdges()
              + " edge(s) at which more than two triangles meet: bodies that touch, or one drawn"
              + " twice; what lies between them was reckoned as coated, and metal may be counted"
              + " twice",
          "export one closed body; answer keep if the figures are right");
    }
  }

  private void doubt(String why, String remedy) {
    problems.add(DrawingDoubt.of(file, why, remedy));
  }

  private void add(ProblemCode code, String why, String remedy) {
    problems.add(code, Place.file(file), "drawing", "", "", why, remedy);
  }
}
