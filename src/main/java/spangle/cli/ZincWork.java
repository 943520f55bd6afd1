package spangle.cli;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import spangle.part.HollowKind;

/**
 * What is dipped.
 *
 * @param walls all its surface, by thickness
 * @param steelKg black steel before dipping, all pieces
 * @param pieces how many
 * @param hollow kind of inner space, where the form says so
 * @param note what does not agree; may be empty
 * @param working how the area came about
 */
record ZincWork(
    List<Wall> walls,
    double steelKg,
    int pieces,
    Optional<HollowKind> hollow,
    String note,
    String working) {

  /**
   * Surface of one thickness, all pieces together.
   *
   * @param thicknessMm thickness
   * @param inches the same, where it was given in inches
   * @param areaM2 coated surface: faces, bores, edges
   */
  record Wall(double thicknessMm, OptionalDouble inches, double areaM2) {}

  double areaM2() {
    return walls.stream().mapToDouble(Wall::areaM2).sum();
  }

  double thickestMm() {
    return walls.stream().mapToDouble(Wall::thicknessMm).max().orElseThrow();
  }
}
