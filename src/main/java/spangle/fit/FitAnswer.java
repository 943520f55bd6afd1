package spangle.fit;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import spangle.measure.Interval;

/**
 * Does it go in, and how.
 *
 * @param verdict one of the four
 * @param space the smallest sizes on the way; margins are against these
 * @param rules the rules it was judged by
 * @param whole the attitude for one dip; empty otherwise
 * @param twoDips the two dips; empty otherwise
 * @param nearest where it comes nearest; filled when the verdict is no
 * @param hangDeg the angle to hang it at, level where nothing goes in
 * @param lift what the crane must do; empty where no crane is known
 * @param limitedBy station or crane that stands in the way of a better answer; empty if none does
 * @param cautions what to mind
 * @param waysOut what can be done instead, for the verdict no
 */
public record FitAnswer(
    Verdict verdict,
    UsableSpace space,
    FitRules rules,
    Optional<Attitude> whole,
    Optional<TwoDips> twoDips,
    Optional<Shortage> nearest,
    double hangDeg,
    Optional<Lift> lift,
    Optional<String> limitedBy,
    List<String> cautions,
    List<String> waysOut) {
  /** What every answer is subject to. */
  public static final String VALIDITY =
      "Geometry on the sizes given. Local codes and the galvanizer's written release decide.";

  /** What an answer about ovens, doors, booths and racks alone is subject to. */
  public static final String ROOM_VALIDITY =
      "Geometry on the sizes given. Local codes and the makers of the equipment decide.";

  /** Copies the lists. */
  public FitAnswer {
    cautions = List.copyOf(cautions);
    waysOut = List.copyOf(waysOut);
  }

  /** The side that lies across the tank, in mm. */
  public double acrossMm() {
    return whole
        .map(Attitude::acrossMm)
        .or(() -> twoDips.map(TwoDips::acrossMm))
        .or(() -> nearest.map(n -> n.lay().acrossMm()))
        .orElse(0.0);
  }

  /** One range of angles at which it goes in whole; empty when it does not. */
  public Optional<Interval> tiltDeg() {
    return whole.map(Attitude::tiltDeg);
  }

  /** All ranges of angles at which it goes in whole. */
  public List<Interval> tiltWindowsDeg() {
    return whole.map(Attitude::windowsDeg).orElse(List.of());
  }

  /** Sideways angles, where tilt alone is not enough. */
  public Optional<Interval> rollDeg() {
    return whole.flatMap(Attitude::rollDeg);
  }

  /** Angles of end-out dips. */
  public Optional<Interval> dipTiltDeg() {
    return twoDips.flatMap(TwoDips::dipTiltDeg);
  }

  /** How many dips cover it: 1, 2, or 0 when none do. */
  public int dips() {
    return switch (verdict) {
      case STRAIGHT, TILTED -> 1;
      case TWO_DIPS -> 2;
      case NO -> 0;
    };
  }

  /** The overlap of two dips in mm; empty when one dip does or none. */
  public OptionalDouble overlapMm() {
    return twoDips.isPresent()
        ? OptionalDouble.of(twoDips.get().overlapMm())
        : OptionalDouble.empty();
  }

  /** Usable less needed; a minus sign means missing. */
  public Margin margin() {
    return whole
        .map(attitude -> attitude.marginAt(attitude.statedDeg(), space))
        .or(() -> twoDips.map(TwoDips::margin))
        .or(() -> nearest.map(Shortage::margin))
        .orElseThrow();
  }
}
