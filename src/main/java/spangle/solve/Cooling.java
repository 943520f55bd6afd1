package spangle.solve;

import org.optaplanner.core.api.score.buildin.hardmediumsoftlong.HardMediumSoftLongScore;
import org.optaplanner.core.impl.localsearch.decider.acceptor.AbstractAcceptor;
import org.optaplanner.core.impl.localsearch.scope.LocalSearchMoveScope;
import spangle.solve.move.Dice;

/**
 * Simulated annealing (Kirkpatrick, Gelatt and Vecchi, 1983): a worse plan is accepted with the
 * chance exp(-worse / temperature). The dice are thrown before a move is scored: that chance is the
 * same as that of being no worse than the allowance thrown. Only wishes are annealed; a plan that
 * breaks more or leaves out more is never accepted.
 */
final class Cooling extends AbstractAcceptor<WeekSolution> {
  private static final int SAME_TEMPERATURE = 64;
  private final Rounds rounds;
  private final Dice dice;
  private double temperature;
  private int thrown;
  private double allowance;

  Cooling(Rounds rounds, long seed) {
    this.rounds = rounds;
    this.dice = new Dice(~seed);
  }

  /** Throws the dice for a move that is so much worse; whether it may be accepted. */
  boolean allows(long worse) {
    if (thrown++ % SAME_TEMPERATURE == 0) {
      temperature = rounds.temperature();
    }
    allowance = worse <= 0 ? 0 : -temperature * Math.log(1 - dice.unit());
    return worse <= allowance;
  }

  @Override
  public boolean isAccepted(LocalSearchMoveScope<WeekSolution> scope) {
    HardMediumSoftLongScore now =
        (HardMediumSoftLongScore)
            scope.getStepScope().getPhaseScope().getLastCompletedStepScope().getScore();
    HardMediumSoftLongScore then = (HardMediumSoftLongScore) scope.getScore();
    return then.compareTo(now) >= 0
        || (then.hardScore() == now.hardScore()
            && then.mediumScore() == now.mediumScore()
            && now.softScore() - then.softScore() <= allowance);
  }
}
