package spangle.part;

import spangle.measure.Box;
import spangle.part.section.SectionProfile;

/**
 * A length of a standard section, cut square; a hollow one is open at both ends.
 *
 * @param profile the section
 * @param lengthMm length
 */
public record Section(SectionProfile profile, double lengthMm) implements Shape {
  /** Checks the length. */
  public Section {
    Require.length(lengthMm, "section length");
  }

  /** Only the length: the section is standard whatever unit the length was written in. */
  @Override
  public Section withLengthsTimes(double factor) {
    return new Section(profile, lengthMm * factor);
  }

  @Override
  public Measured measure(double densityKgM3, Edges edges) {
    return TubeSkin.of(lengthMm, profile.outerMm(), profile.boreMm(), profile.metalMm2())
        .measured(
            densityKgM3,
            edges,
            new Box(lengthMm, profile.widthMm(), profile.heightMm()),
            profile.thicknessMm(),
            profile.boreMm2() * lengthMm,
            profile.hollow() ? HollowKind.OPEN : HollowKind.NONE,
            profile.name() + ": " + TubeSkin.words(lengthMm, profile.outerMm(), profile.boreMm()));
  }
}
