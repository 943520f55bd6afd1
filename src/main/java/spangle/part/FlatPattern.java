package spangle.part;

import java.util.Optional;
import spangle.measure.Box;
import spangle.measure.Figures;

/**
 * A flat pattern taken from a drawing: figures of its contours, and its size after bending where it
 * is known.
 *
 * @param netAreaMm2 area inside the outer contours less the holes
 * @param cutEdgeMm length of all contours
 * @param thicknessMm sheet thickness
 * @param flatLengthMm longer side of the flat pattern
 * @param flatWidthMm shorter side of the flat pattern
 * @param bends number of bends
 * @param folded size after bending, when known; a part without bends needs none
 */
public record FlatPattern(
    double netAreaMm2,
    double cutEdgeMm,
    double thicknessMm,
    double flatLengthMm,
    double flatWidthMm,
    int bends,
    Optional<Folded> folded)
    implements Shape {
  /** Checks the figures against each other. */
  public FlatPattern {
    Require.positive(netAreaMm2, "net flat area in mm2");
    Require.positive(cutEdgeMm, "cut edge in mm");
    Require.length(thicknessMm, "thickness");
    Require.length(flatLengthMm, "flat length");
    Require.length(flatWidthMm, "flat width");
    Require.notNegative(bends, "number of bends");
    if (netAreaMm2 > flatLengthMm * flatWidthMm * (1 + 1e-9)) {
      throw new ShapeException(
          "net flat area in mm2",
          netAreaMm2,
          "at most the hull, " + flatLengthMm * flatWidthMm + " mm2",
          "check the drawing's unit");
    }
  }

  /** Whether the size after bending has to be asked for: it is bent and nobody said how big. */
  public boolean foldedSizeUnknown() {
    return bends > 0 && folded.isEmpty();
  }

  /** Size after bending, when known. */
  public Optional<Box> foldedMm() {
    return folded.map(Folded::sizeMm);
  }

  /** Size after bending if known, else the flat size. */
  public Box envelopeMm() {
    return foldedMm().orElseGet(() -> new Box(flatLengthMm, flatWidthMm, thicknessMm));
  }

  @Override
  public FlatPattern withLengthsTimes(double factor) {
    return new FlatPattern(
        netAreaMm2 * factor * factor,
        cutEdgeMm * factor,
        thicknessMm,
        flatLengthMm * factor,
        flatWidthMm * factor,
        bends,
        folded.map(f -> f.times(factor)));
  }

  @Override
  public Measured measure(double densityKgM3, Edges edges) {
    return Skin.sheet(netAreaMm2, cutEdgeMm, thicknessMm)
        .measured(
            densityKgM3,
            edges,
            envelopeMm(),
            thicknessMm,
            0,
            HollowKind.NONE,
            "two faces of "
                + Skin.mm2(netAreaMm2)
                + " net, cut length "
                + Figures.significant(cutEdgeMm / 1000, 5)
                + " m");
  }
}
