package spangle.part.mesh;

import java.util.Optional;
import spangle.measure.Box;
import spangle.part.Solid;

/**
 * What the triangles of a body come to.
 *
 * @param triangles how many make up its surface
 * @param surfaceMm2 their area together
 * @param sizeMm upright box around them; empty where it has no thickness
 * @param bodies surfaces that lie in no other
 * @param openEdges edges at which the surface ends
 * @param turnedEdges edges between triangles that face opposite ways
 * @param sharedEdges edges at which more than two triangles meet
 * @param flatTriangles triangles without area, left out
 * @param insideOut whether an outer surface faced inwards and was taken the other way
 * @param doubtfulVoids inner surfaces that face outwards like a body of their own
 * @param welded whether corners had to be brought together to close it
 * @param solid the body; empty where its surface is not closed
 */
public record MeshFacts(
    int triangles,
    double surfaceMm2,
    Optional<Box> sizeMm,
    int bodies,
    int openEdges,
    int turnedEdges,
    int sharedEdges,
    int flatTriangles,
    boolean insideOut,
    int doubtfulVoids,
    boolean welded,
    Optional<Solid> solid) {

  /** Measures a body. */
  public static MeshFacts of(Triangles triangles) {
    return new MeshSurvey(triangles).facts();
  }
}
