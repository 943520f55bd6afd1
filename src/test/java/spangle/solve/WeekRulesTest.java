package spangle.solve;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.function.BiFunction;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.optaplanner.core.api.score.stream.Constraint;
import org.optaplanner.core.api.score.stream.ConstraintFactory;
import org.optaplanner.test.api.score.stream.ConstraintVerifier;
import spangle.plan.Brief;
import spangle.plan.clock.Loss;
import spangle.plan.clock.Tallied;
import spangle.plan.clock.Tally;

/**
 * Each constraint counts its own term of the clock's tally, all of it, and nothing of any other.
 * That the clock tallies rightly is tested at the clock and proven by the audit.
 */
class WeekRulesTest {
  private static final Brief BRIEF = OvenWeek.of(1, 3);
  private static final int LOST = Tally.LOST;

  private static final ConstraintVerifier<WeekRules, WeekSolution> RULES =
      ConstraintVerifier.build(new WeekRules(), WeekSolution.class, Week.class);

  private static Arguments rule(
      String name, int term, BiFunction<WeekRules, ConstraintFactory, Constraint> rule) {
    return Arguments.of(name, term, rule);
  }

  static Stream<Arguments> rules() {
    return Stream.of(
        rule(WeekRules.WRONG_MACHINE, Tally.WRONG_MACHINE, WeekRules::wrongMachine),
        rule(WeekRules.OVER_PLACES, Tally.OVER_PLACES, WeekRules::overPlaces),
        rule(WeekRules.OVER_MASS, Tally.OVER_MASS, WeekRules::overMass),
        rule(WeekRules.WRONG_COMPANY, Tally.WRONG_COMPANY, WeekRules::wrongCompany),
        rule(WeekRules.NO_TIME, LOST + Loss.NO_TIME.place(), WeekRules::noTime),
        rule(WeekRules.WAITS, LOST + Loss.WAITS_TOO_LONG.place(), WeekRules::waits),
        rule(WeekRules.GAP, LOST + Loss.GAP_TOO_LONG.place(), WeekRules::gap),
        rule(WeekRules.CARRIERS, LOST + Loss.NO_CARRIER.place(), WeekRules::carriers),
        rule(WeekRules.SUPPLIES, LOST + Loss.NO_SUPPLY.place(), WeekRules::supplies),
        rule(WeekRules.EARLIER_LEG, LOST + Loss.EARLIER_LEG.place(), WeekRules::earlierLeg),
        rule(WeekRules.ZINC_LEVEL, LOST + Loss.NO_ZINC_OVER_IT.place(), WeekRules::zincLevel),
        rule(WeekRules.RUN_MINUTES, Tally.RUN, WeekRules::runMinutes),
        rule(WeekRules.LATE_LOTS, Tally.LATE_LOTS, WeekRules::lateLots),
        rule(WeekRules.LATE_MINUTES, Tally.LATE_MIN, WeekRules::lateMinutes),
        rule(WeekRules.SETTING_COST, Tally.SETTING_COST, WeekRules::settingCost),
        rule(WeekRules.SETTING_MINUTES, Tally.SETTING_MIN, WeekRules::settingMinutes),
        rule(WeekRules.COLOUR_COST, Tally.COLOUR_COST, WeekRules::colourCost),
        rule(WeekRules.LOADS, Tally.LOADS, WeekRules::loads),
        rule(WeekRules.LATE_KITS, Tally.LATE_KITS, WeekRules::lateKits),
        rule(WeekRules.KIT_MINUTES, Tally.KIT_MIN, WeekRules::kitMinutes),
        rule(WeekRules.SET_MINUTES, Tally.SET_MIN, WeekRules::setMinutes),
        rule(WeekRules.TRIPS, Tally.TRIPS, WeekRules::trips),
        rule(WeekRules.MOVED, Tally.MOVED, WeekRules::moved));
  }

  private static Week week(int term, long amount) {
    return new Week(Tallied.of(BRIEF, term, amount));
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("rules")
  void aPlanThatBreaksItIsCharged(
      String name, int term, BiFunction<WeekRules, ConstraintFactory, Constraint> rule) {
    RULES.verifyThat(rule).given(week(term, 7)).penalizesBy(7);
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("rules")
  void aPlanThatKeepsItIsNotWhateverElseItBreaks(
      String name, int term, BiFunction<WeekRules, ConstraintFactory, Constraint> rule) {
    for (int other = 0; other < Tally.SIZE; other++) {
      if (other != term) {
        RULES.verifyThat(rule).given(week(other, 7)).penalizesBy(0);
      }
    }
  }

  @Test
  void everyConstraintIsHere() {
    List<Object> names = rules().map(r -> r.get()[0]).toList();
    assertThat(names).doesNotHaveDuplicates().hasSize(23);
  }
}
