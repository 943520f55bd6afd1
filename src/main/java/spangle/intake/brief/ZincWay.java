package spangle.intake.brief;

import java.util.List;
import java.util.OptionalDouble;
import spangle.equipment.KettleProfile;
import spangle.fit.Body;
import spangle.fit.FitRequest;
import spangle.fit.FitRules;
import spangle.fit.KettleWay;
import spangle.intake.week.StationUse;
import spangle.measure.Interval;

/**
 * A kettle of the shop and all a part must pass to reach it.
 *
 * @param use the kettle's place in the line
 * @param kettle its profile
 * @param way tanks, dryer, kettle, crane
 * @param beams mass of beams, lightest first, with what each bears
 */
public record ZincWay(StationUse use, KettleProfile kettle, KettleWay way, List<Beam> beams) {
  /**
   * What hangs between crane and work.
   *
   * @param ownKg its own mass
   * @param bearsKg most it may carry
   */
  public record Beam(double ownKg, double bearsKg) {}

  /** Copies the list. */
  public ZincWay {
    beams = List.copyOf(beams);
  }

  /** The usual rules with the drain limits of this kettle. */
  public FitRules rules() {
    return new FitRules(
        new Interval(kettle.drainMinDeg(), kettle.drainMaxDeg()),
        FitRules.KETTLE.overlapMm(),
        true);
  }

  /** One piece under the lightest beam that bears it; under the heaviest where none does. */
  public FitRequest request(Body body, double massKg) {
    double jig =
        beams.stream()
            .filter(beam -> beam.bearsKg() >= massKg)
            .findFirst()
            .or(() -> beams.stream().reduce((one, other) -> other))
            .map(Beam::ownKg)
            .orElse(0.0);
    return new FitRequest(body, OptionalDouble.of(massKg), jig, rules());
  }
}
