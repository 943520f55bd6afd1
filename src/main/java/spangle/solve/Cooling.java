package spangle.solve;

import org.optaplanner.core.api.score.buildin.hardmediumsoftlong.HardMediumSoftLongScore;
import org.optaplanner.core.impl.localsearch.decider.acceptor.AbstractAcceptor;
import org.optaplanner.core.impl.localsearch.scope.LocalSearchMoveScope;

/**
 * Simulated annealing with one geometric cooling (Kirkpatrick, Gelatt and Vecchi, 1983): a worse
 * plan is accepted with the chance exp(-worse / temperature). Only wishes are annealed; a plan that
 * breaks more or leaves out more is never accepted.
 */
final class Cooling extends AbstractAcceptor<WeekSolution> {
  /** A move this many temperatures worse is accepted less often than once in two thousand times. */
  private static final double HOPELESS = 8;

  private final double hot;
  private final double fall;
  private final Pace pace;

  Cooling(double hot, double cold, Pace pace) {
    this.hot = hot;
    this.fall = Math.log(cold / hot);
    this.pace = pace;
  }

  private double temperature() {
    return hot * Math.exp(fall * Math.min(1, pace.fraction()));
  }

  /** How much worse a plan may be to be worth a look. */
  long mostWorse() {
    return (long) (HOPELESS * temperature());
  }

  @Override
  public boolean isAccepted(LocalSearchMoveScope<WeekSolution> scope) {
    HardMediumSoftLongScore now =
        (HardMediumSoftLongScore)
            scope.getStepScope().getPhaseScope().getLastCompletedStepScope().getScore();
    HardMediumSoftLongScore then = (HardMediumSoftLongScore) scope.getScore();
    if (then.compareTo(now) >= 0) {
      return true;
    }
    if (then.hardScore() != now.hardScore() || then.mediumScore() != now.mediumScore()) {
      return false;
    }
    double worse = (double) now.softScore() - then.softScore();
    return scope.getWorkingRandom().nextDouble() < Math.exp(-worse / temperature());
  }
}
