package spangle.fit;

import java.util.Optional;
import spangle.measure.Interval;

/**
 * Two overlapping dips that cover a part. The derivation stands with the package.
 *
 * @param form how the part meets the bath the second time
 * @param acrossMm side across
 * @param lMm side along the tank (end out: the side in which the two dips meet)
 * @param hMm side upright (turned over: the side in which the two dips meet)
 * @param overlapMm how far they overlap
 * @param dipTiltDeg angles for end-out dips; empty when turned over
 * @param margin usable less needed, end out at the middle of the angles
 * @param outline the side view it was found for; empty where the box was enough
 */
public record TwoDips(
    Form form,
    double acrossMm,
    double lMm,
    double hMm,
    double overlapMm,
    Optional<Interval> dipTiltDeg,
    Margin margin,
    Optional<Silhouette> outline) {
  /** How the second dip reaches what the first left out. */
  public enum Form {
    /** Level both times, turned over between the dips. */
    TURNED_OVER("turned over"),
    /** Sloping over the rim, swung end for end between the dips. */
    END_OUT("end out");

    private final String words;

    Form(String words) {
      this.words = words;
    }

    /** For people. */
    public String words() {
      return words;
    }
  }

  /** The angle drawn and hung: 0 when turned over, else the middle of the angles. */
  public double hangDeg() {
    return dipTiltDeg.map(Interval::middle).orElse(0.0);
  }

  /** The side view: its outline, else the box's. */
  public Silhouette side() {
    return outline.orElseGet(() -> new RectangleSilhouette(lMm, hMm));
  }

  /** The side along which the two dips meet. */
  public double meetingSideMm() {
    return form == Form.TURNED_OVER ? hMm : lMm;
  }

  /** How far the first dip reaches along that side: past its middle by half the overlap. */
  public double reachMm() {
    return (meetingSideMm() + overlapMm) / 2;
  }
}
