package spangle.bench.plain;

import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalLong;
import org.optaplanner.core.api.score.buildin.hardsoftlong.HardSoftLongScore;
import org.optaplanner.core.api.solver.SolverFactory;
import org.optaplanner.core.config.score.director.ScoreDirectorFactoryConfig;
import org.optaplanner.core.config.solver.SolverConfig;
import spangle.plan.Brief;
import spangle.plan.clock.Floor;
import spangle.plan.clock.LineFacts;
import spangle.plan.clock.LotFacts;
import spangle.plan.clock.MachineFacts;

/** Plans an oven brief with OptaPlanner's default construction, moves and acceptance. */
public final class PlainOvens {
  private PlainOvens() {}

  /** The weighed sum of the best plan in which every lot has a place; empty where none is found. */
  public static OptionalLong solve(Brief brief, double seconds) {
    Floor floor = Floor.of(brief);
    LineFacts line = floor.lines[0];
    List<PlainOven> ovens = new ArrayList<>();
    for (MachineFacts machine : line.machines) {
      ovens.add(new PlainOven(line, machine));
    }
    List<PlainLot> lots =
        Arrays.stream(floor.lots)
            .map((LotFacts lot) -> new PlainLot(lot, floor.single(lot.index, 0)))
            .toList();
    SolverConfig config =
        new SolverConfig()
            .withSolutionClass(PlainWeek.class)
            .withEntityClasses(PlainOven.class)
            .withScoreDirectorFactory(
                new ScoreDirectorFactoryConfig()
                    .withIncrementalScoreCalculatorClass(PlainScore.class))
            .withRandomSeed(1L)
            .withTerminationSpentLimit(Duration.ofMillis((long) (1000 * seconds)));
    PlainWeek best =
        SolverFactory.<PlainWeek>create(config)
            .buildSolver()
            .solve(new PlainWeek(ovens, lots, brief.goals()));
    HardSoftLongScore score = best.getScore();
    return score == null || !score.isSolutionInitialized() || score.hardScore() < 0
        ? OptionalLong.empty()
        : OptionalLong.of(-score.softScore());
  }
}
