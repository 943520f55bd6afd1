package spangle.solve;

import java.util.function.Predicate;
import java.util.function.ToLongFunction;
import org.optaplanner.core.api.score.stream.Constraint;
import org.optaplanner.core.api.score.stream.ConstraintFactory;
import org.optaplanner.core.api.score.stream.ConstraintProvider;
import spangle.plan.clock.Loss;
import spangle.plan.clock.Tally;

/**
 * The rules and wishes by name. The plan carries its own totals, so each is one look at one number.
 * Rules about who may be where are hard; what finds no place is left out and counts before every
 * wish; wishes are weighed by the brief's goals.
 */
public class WeekRules implements ConstraintProvider {
  static final String WRONG_MACHINE = "Every lot may go in its machine";
  static final String OVER_PLACES = "A batch takes no more places than its machine has";
  static final String OVER_MASS = "A batch is no heavier than its machine bears";
  static final String WRONG_COMPANY = "The dwell windows of a batch meet and its kinds of work may";
  static final String NO_TIME = "Every lot finds time before the week ends";
  static final String WAITS = "Every lot is planned without waiting too long between stations";
  static final String GAP = "Every leg follows the leg before it soon enough";
  static final String CARRIERS = "Every lot finds a carrier";
  static final String SUPPLIES = "Every lot finds its material";
  static final String EARLIER_LEG = "Every leg comes after the leg before it";
  static final String ZINC_LEVEL = "Every lot is dipped while the zinc covers it";
  static final String RUN_MINUTES = "Few minutes in ovens and kettles";
  static final String LATE_LOTS = "Few lots late";
  static final String LATE_MINUTES = "Late lots little late";
  static final String SETTING_COST = "Cheap changes of setting";
  static final String SETTING_MINUTES = "Short changes of setting";
  static final String COLOUR_COST = "Cheap changes of colour";
  static final String LOADS = "Few carriers filled";
  static final String LATE_KITS = "Few kits late";
  static final String KIT_MINUTES = "Pieces of a set finished together";
  static final String SET_MINUTES = "Many sets whole early";
  static final String TRIPS = "Few trips to another firm";
  static final String MOVED = "Few loads moved against the announced plan";

  // One object each, so that the rules share one look and sound weeks go no further.
  private static final Predicate<Week> BREAKS = WeekRules::breaks;
  private static final Predicate<Week> LEAVES_OUT = WeekRules::leavesOut;

  @Override
  public Constraint[] defineConstraints(ConstraintFactory factory) {
    return new Constraint[] {
      wrongMachine(factory),
      overPlaces(factory),
      overMass(factory),
      wrongCompany(factory),
      noTime(factory),
      waits(factory),
      gap(factory),
      carriers(factory),
      supplies(factory),
      earlierLeg(factory),
      zincLevel(factory),
      runMinutes(factory),
      lateLots(factory),
      lateMinutes(factory),
      settingCost(factory),
      settingMinutes(factory),
      colourCost(factory),
      loads(factory),
      lateKits(factory),
      kitMinutes(factory),
      setMinutes(factory),
      trips(factory),
      moved(factory),
    };
  }

  Constraint wrongMachine(ConstraintFactory factory) {
    return broken(factory, WRONG_MACHINE, week -> week.term(Tally.WRONG_MACHINE));
  }

  Constraint overPlaces(ConstraintFactory factory) {
    return broken(factory, OVER_PLACES, week -> week.term(Tally.OVER_PLACES));
  }

  Constraint overMass(ConstraintFactory factory) {
    return broken(factory, OVER_MASS, week -> week.term(Tally.OVER_MASS));
  }

  Constraint wrongCompany(ConstraintFactory factory) {
    return broken(factory, WRONG_COMPANY, week -> week.term(Tally.WRONG_COMPANY));
  }

  Constraint noTime(ConstraintFactory factory) {
    return lost(factory, NO_TIME, Loss.NO_TIME);
  }

  Constraint waits(ConstraintFactory factory) {
    return lost(factory, WAITS, Loss.WAITS_TOO_LONG);
  }

  Constraint gap(ConstraintFactory factory) {
    return lost(factory, GAP, Loss.GAP_TOO_LONG);
  }

  Constraint carriers(ConstraintFactory factory) {
    return lost(factory, CARRIERS, Loss.NO_CARRIER);
  }

  Constraint supplies(ConstraintFactory factory) {
    return lost(factory, SUPPLIES, Loss.NO_SUPPLY);
  }

  Constraint earlierLeg(ConstraintFactory factory) {
    return lost(factory, EARLIER_LEG, Loss.EARLIER_LEG);
  }

  Constraint zincLevel(ConstraintFactory factory) {
    return lost(factory, ZINC_LEVEL, Loss.NO_ZINC_OVER_IT);
  }

  Constraint runMinutes(ConstraintFactory factory) {
    return each(factory, RUN_MINUTES, week -> week.term(Tally.RUN));
  }

  Constraint lateLots(ConstraintFactory factory) {
    return each(factory, LATE_LOTS, week -> week.term(Tally.LATE_LOTS));
  }

  Constraint lateMinutes(ConstraintFactory factory) {
    return each(factory, LATE_MINUTES, week -> week.term(Tally.LATE_MIN));
  }

  Constraint settingCost(ConstraintFactory factory) {
    return each(factory, SETTING_COST, week -> week.term(Tally.SETTING_COST));
  }

  Constraint settingMinutes(ConstraintFactory factory) {
    return each(factory, SETTING_MINUTES, week -> week.term(Tally.SETTING_MIN));
  }

  Constraint colourCost(ConstraintFactory factory) {
    return each(factory, COLOUR_COST, week -> week.term(Tally.COLOUR_COST));
  }

  Constraint loads(ConstraintFactory factory) {
    return each(factory, LOADS, week -> week.term(Tally.LOADS));
  }

  Constraint lateKits(ConstraintFactory factory) {
    return each(factory, LATE_KITS, week -> week.term(Tally.LATE_KITS));
  }

  Constraint kitMinutes(ConstraintFactory factory) {
    return each(factory, KIT_MINUTES, week -> week.term(Tally.KIT_MIN));
  }

  Constraint setMinutes(ConstraintFactory factory) {
    return each(factory, SET_MINUTES, week -> week.term(Tally.SET_MIN));
  }

  Constraint trips(ConstraintFactory factory) {
    return each(factory, TRIPS, week -> week.term(Tally.TRIPS));
  }

  Constraint moved(ConstraintFactory factory) {
    return each(factory, MOVED, week -> week.term(Tally.MOVED));
  }

  private static boolean breaks(Week week) {
    return week.getPlan().broken() != 0;
  }

  private static boolean leavesOut(Week week) {
    return week.getPlan().left() != 0;
  }

  private static Constraint lost(ConstraintFactory factory, String name, Loss loss) {
    int term = Tally.LOST + loss.place();
    return factory
        .forEach(Week.class)
        .filter(LEAVES_OUT)
        .penalizeConfigurableLong(week -> week.term(term))
        .asConstraint(name);
  }

  private static Constraint broken(
      ConstraintFactory factory, String name, ToLongFunction<Week> amount) {
    return factory
        .forEach(Week.class)
        .filter(BREAKS)
        .penalizeConfigurableLong(amount)
        .asConstraint(name);
  }

  private static Constraint each(
      ConstraintFactory factory, String name, ToLongFunction<Week> amount) {
    return factory.forEach(Week.class).penalizeConfigurableLong(amount).asConstraint(name);
  }
}
