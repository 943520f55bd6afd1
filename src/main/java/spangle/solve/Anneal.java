package spangle.solve;

import io.micrometer.core.instrument.Tags;
import java.util.EnumSet;
import java.util.List;
import java.util.function.BiConsumer;
import org.optaplanner.core.api.score.buildin.hardmediumsoftlong.HardMediumSoftLongScore;
import org.optaplanner.core.config.localsearch.LocalSearchPhaseConfig;
import org.optaplanner.core.config.localsearch.decider.forager.LocalSearchForagerConfig;
import org.optaplanner.core.config.score.director.ScoreDirectorFactoryConfig;
import org.optaplanner.core.config.solver.EnvironmentMode;
import org.optaplanner.core.config.solver.SolverConfig;
import org.optaplanner.core.config.solver.monitoring.SolverMetric;
import org.optaplanner.core.config.solver.random.RandomType;
import org.optaplanner.core.config.solver.termination.TerminationConfig;
import org.optaplanner.core.impl.heuristic.HeuristicConfigPolicy;
import org.optaplanner.core.impl.heuristic.selector.move.MoveSelector;
import org.optaplanner.core.impl.heuristic.selector.move.factory.MoveIteratorFactoryToMoveSelectorBridge;
import org.optaplanner.core.impl.localsearch.DefaultLocalSearchPhaseFactory;
import org.optaplanner.core.impl.localsearch.decider.acceptor.Acceptor;
import org.optaplanner.core.impl.phase.Phase;
import org.optaplanner.core.impl.phase.scope.AbstractPhaseScope;
import org.optaplanner.core.impl.score.director.InnerScoreDirectorFactory;
import org.optaplanner.core.impl.solver.ClassInstanceCache;
import org.optaplanner.core.impl.solver.DefaultSolver;
import org.optaplanner.core.impl.solver.DefaultSolverFactory;
import org.optaplanner.core.impl.solver.change.DefaultProblemChangeDirector;
import org.optaplanner.core.impl.solver.random.DefaultRandomFactory;
import org.optaplanner.core.impl.solver.recaller.BestSolutionRecaller;
import org.optaplanner.core.impl.solver.recaller.BestSolutionRecallerFactory;
import org.optaplanner.core.impl.solver.scope.SolverScope;
import org.optaplanner.core.impl.solver.termination.AbstractTermination;
import org.optaplanner.core.impl.solver.termination.BasicPlumbingTermination;

/**
 * Puts OptaPlanner's local search together with the moves and the acceptor of this package, which
 * its configuration alone has no place for.
 */
final class Anneal {
  private final EnvironmentMode mode;
  private final DefaultSolverFactory<WeekSolution> factory;

  Anneal(EnvironmentMode mode) {
    this.mode = mode;
    SolverConfig config =
        new SolverConfig()
            .withEnvironmentMode(mode)
            .withSolutionClass(WeekSolution.class)
            .withEntityClassList(List.of(Week.class))
            .withScoreDirectorFactory(
                new ScoreDirectorFactoryConfig().withConstraintProviderClass(WeekRules.class))
            .withTerminationConfig(new TerminationConfig().withStepCountLimit(1));
    factory = new DefaultSolverFactory<>(config);
  }

  /**
   * Searches from the week's plan on until the pace is over.
   *
   * @param better told of every better plan with its score
   */
  WeekSolution run(
      WeekSolution from,
      MoveStream moves,
      Cooling cooling,
      Pace pace,
      long seed,
      BiConsumer<WeekSolution, HardMediumSoftLongScore> better) {
    InnerScoreDirectorFactory<WeekSolution, HardMediumSoftLongScore> directors =
        factory.getScoreDirectorFactory();
    SolverScope<WeekSolution> scope = new SolverScope<>();
    scope.setMonitoringTags(Tags.empty());
    scope.setSolverMetricSet(EnumSet.noneOf(SolverMetric.class));
    scope.setScoreDirector(directors.buildScoreDirector(true, mode.isAsserted()));
    scope.setProblemChangeDirector(new DefaultProblemChangeDirector<>(scope.getScoreDirector()));
    BestSolutionRecaller<WeekSolution> recaller =
        BestSolutionRecallerFactory.create().buildBestSolutionRecaller(mode);
    HeuristicConfigPolicy<WeekSolution> policy =
        new HeuristicConfigPolicy.Builder<WeekSolution>(
                mode,
                null,
                null,
                null,
                directors.getInitializingScoreTrend(),
                factory.getSolutionDescriptor(),
                ClassInstanceCache.create())
            .build();
    BasicPlumbingTermination<WeekSolution> plumbing = new BasicPlumbingTermination<>(false);
    Over over = new Over(pace);
    Phase<WeekSolution> phase = new Annealing(moves, cooling).buildPhase(0, policy, recaller, over);
    DefaultSolver<WeekSolution> solver =
        new DefaultSolver<>(
            mode,
            new DefaultRandomFactory(RandomType.JDK, seed),
            recaller,
            plumbing,
            over,
            List.of(phase),
            scope,
            "1");
    solver.addEventListener(
        event ->
            better.accept(
                event.getNewBestSolution(), (HardMediumSoftLongScore) event.getNewBestScore()));
    return solver.solve(from);
  }

  /** OptaPlanner's local search with our moves and our acceptor. */
  private static final class Annealing extends DefaultLocalSearchPhaseFactory<WeekSolution> {
    private final MoveStream moves;
    private final Cooling cooling;

    Annealing(MoveStream moves, Cooling cooling) {
      super(
          new LocalSearchPhaseConfig()
              .withForagerConfig(new LocalSearchForagerConfig().withAcceptedCountLimit(1)));
      this.moves = moves;
      this.cooling = cooling;
    }

    @Override
    protected Acceptor<WeekSolution> buildAcceptor(HeuristicConfigPolicy<WeekSolution> policy) {
      return cooling;
    }

    @Override
    protected MoveSelector<WeekSolution> buildMoveSelector(
        HeuristicConfigPolicy<WeekSolution> policy) {
      return new MoveIteratorFactoryToMoveSelectorBridge<>(moves, true);
    }
  }

  /** Over when the pace says so. */
  private static final class Over extends AbstractTermination<WeekSolution> {
    private final Pace pace;

    Over(Pace pace) {
      this.pace = pace;
    }

    @Override
    public boolean isSolverTerminated(SolverScope<WeekSolution> scope) {
      return pace.over();
    }

    @Override
    public boolean isPhaseTerminated(AbstractPhaseScope<WeekSolution> scope) {
      return pace.over();
    }

    @Override
    public double calculateSolverTimeGradient(SolverScope<WeekSolution> scope) {
      return Math.min(1, pace.fraction());
    }

    @Override
    public double calculatePhaseTimeGradient(AbstractPhaseScope<WeekSolution> scope) {
      return Math.min(1, pace.fraction());
    }
  }
}
