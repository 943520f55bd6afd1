package spangle.solve;

import org.optaplanner.core.api.domain.constraintweight.ConstraintConfiguration;
import org.optaplanner.core.api.domain.constraintweight.ConstraintWeight;
import org.optaplanner.core.api.score.buildin.hardmediumsoftlong.HardMediumSoftLongScore;
import spangle.plan.Goals;

/**
 * The brief's goals as weights of the rules in {@link WeekRules}. A rule that weighs nothing is not
 * even built.
 */
@ConstraintConfiguration
@SuppressWarnings("unused") // OptaPlanner reads the fields
public class GoalWeights {
  @ConstraintWeight(WeekRules.WRONG_MACHINE)
  private final HardMediumSoftLongScore wrongMachine = HardMediumSoftLongScore.ONE_HARD;

  @ConstraintWeight(WeekRules.OVER_PLACES)
  private final HardMediumSoftLongScore overPlaces = HardMediumSoftLongScore.ONE_HARD;

  @ConstraintWeight(WeekRules.OVER_MASS)
  private final HardMediumSoftLongScore overMass = HardMediumSoftLongScore.ONE_HARD;

  @ConstraintWeight(WeekRules.WRONG_COMPANY)
  private final HardMediumSoftLongScore wrongCompany = HardMediumSoftLongScore.ONE_HARD;

  @ConstraintWeight(WeekRules.NO_TIME)
  private final HardMediumSoftLongScore noTime = HardMediumSoftLongScore.ONE_MEDIUM;

  @ConstraintWeight(WeekRules.WAITS)
  private final HardMediumSoftLongScore waits = HardMediumSoftLongScore.ONE_MEDIUM;

  @ConstraintWeight(WeekRules.GAP)
  private final HardMediumSoftLongScore gap = HardMediumSoftLongScore.ONE_MEDIUM;

  @ConstraintWeight(WeekRules.CARRIERS)
  private final HardMediumSoftLongScore carriers = HardMediumSoftLongScore.ONE_MEDIUM;

  @ConstraintWeight(WeekRules.SUPPLIES)
  private final HardMediumSoftLongScore supplies = HardMediumSoftLongScore.ONE_MEDIUM;

  @ConstraintWeight(WeekRules.EARLIER_LEG)
  private final HardMediumSoftLongScore earlierLeg = HardMediumSoftLongScore.ONE_MEDIUM;

  @ConstraintWeight(WeekRules.ZINC_LEVEL)
  private final HardMediumSoftLongScore zincLevel = HardMediumSoftLongScore.ONE_MEDIUM;

  @ConstraintWeight(WeekRules.RUN_MINUTES)
  private final HardMediumSoftLongScore runMinutes;

  @ConstraintWeight(WeekRules.LATE_LOTS)
  private final HardMediumSoftLongScore lateLots;

  @ConstraintWeight(WeekRules.LATE_MINUTES)
  private final HardMediumSoftLongScore lateMinutes;

  @ConstraintWeight(WeekRules.SETTING_COST)
  private final HardMediumSoftLongScore settingCost;

  @ConstraintWeight(WeekRules.SETTING_MINUTES)
  private final HardMediumSoftLongScore settingMinutes;

  @ConstraintWeight(WeekRules.COLOUR_COST)
  private final HardMediumSoftLongScore colourCost;

  @ConstraintWeight(WeekRules.LOADS)
  private final HardMediumSoftLongScore loads;

  @ConstraintWeight(WeekRules.LATE_KITS)
  private final HardMediumSoftLongScore lateKits;

  @ConstraintWeight(WeekRules.KIT_MINUTES)
  private final HardMediumSoftLongScore kitMinutes;

  @ConstraintWeight(WeekRules.SET_MINUTES)
  private final HardMediumSoftLongScore setMinutes;

  @ConstraintWeight(WeekRules.TRIPS)
  private final HardMediumSoftLongScore trips;

  @ConstraintWeight(WeekRules.MOVED)
  private final HardMediumSoftLongScore moved;

  GoalWeights(Goals goals) {
    runMinutes = HardMediumSoftLongScore.ofSoft(goals.runMinute());
    lateLots = HardMediumSoftLongScore.ofSoft(goals.lateLot());
    lateMinutes = HardMediumSoftLongScore.ofSoft(goals.lateMinute());
    settingCost = HardMediumSoftLongScore.ofSoft(goals.settingCost());
    settingMinutes = HardMediumSoftLongScore.ofSoft(goals.settingMinute());
    colourCost = HardMediumSoftLongScore.ofSoft(goals.colourCost());
    loads = HardMediumSoftLongScore.ofSoft(goals.load());
    lateKits = HardMediumSoftLongScore.ofSoft(goals.lateKit());
    kitMinutes = HardMediumSoftLongScore.ofSoft(goals.kitMinute());
    setMinutes = HardMediumSoftLongScore.ofSoft(goals.setMinute());
    trips = HardMediumSoftLongScore.ofSoft(goals.trip());
    moved = HardMediumSoftLongScore.ofSoft(goals.moved());
  }
}
