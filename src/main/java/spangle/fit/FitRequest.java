package spangle.fit;

import java.util.OptionalDouble;
import spangle.measure.Box;

/**
 * What is to go in.
 *
 * @param body its size, or better its outline
 * @param massKg steel of one lift; empty when it is not known
 * @param jigKg beam, jig and wires
 * @param rules the shop's rules
 */
public record FitRequest(Body body, OptionalDouble massKg, double jigKg, FitRules rules) {
  /** A part of which only the outside size is known, under the usual rules. */
  public static FitRequest of(Box box) {
    return new FitRequest(Body.of(box), OptionalDouble.empty(), 0, FitRules.KETTLE);
  }

  /** The same with a mass in kg. */
  public FitRequest withMassKg(double kg) {
    return new FitRequest(body, OptionalDouble.of(kg), jigKg, rules);
  }

  /** The same under other rules. */
  public FitRequest withRules(FitRules other) {
    return new FitRequest(body, massKg, jigKg, other);
  }
}
