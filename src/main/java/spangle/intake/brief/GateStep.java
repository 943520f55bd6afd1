package spangle.intake.brief;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import spangle.coating.zinc.SteelClass;
import spangle.fit.FitAnswer;
import spangle.fit.Verdict;
import spangle.fit.gate.Gate;
import spangle.fit.gate.GateCase;
import spangle.fit.gate.GateState;
import spangle.fit.gate.Gates;
import spangle.intake.problem.Meanwhile;
import spangle.intake.problem.Problem;
import spangle.intake.problem.ProblemCode;
import spangle.intake.problem.Severity;
import spangle.intake.week.PartLine;
import spangle.intake.week.WeekInput;
import spangle.plan.Held;
import spangle.plan.PartFacts;

/** Asks every gate before a part may be scheduled. No due date opens one. */
final class GateStep {
  private final WeekInput input;
  private final List<ZincWay> ways;
  private final PartBodies bodies;
  private final Draws draws;

  GateStep(WeekInput input) {
    this.input = input;
    this.ways = KettleWays.whenFilled(input.shop());
    this.bodies = new PartBodies(input, List.of());
    this.draws = new Draws(input);
  }

  /** Shut gates, how all stand, and how the part goes into zinc where none is shut. */
  record Outcome(List<Held> shut, PartGates gates, LegMaker.KettleWay way) {}

  Outcome ask(PartLine line, PartFacts part) {
    List<Held> shut = new ArrayList<>();
    for (Problem problem : input.problems()) {
      boolean here = problem.job().equals(part.jobId()) && problem.part().equals(part.partId());
      boolean byGate = problem.code() == ProblemCode.STEEL_STRONG;
      if (here && problem.meanwhile() == Meanwhile.GATE_SHUT && !byGate) {
        shut.add(held(part, problem));
      }
    }
    GateCase asked = new GateCases(input, ways).of(line, part);
    List<GateState> states = Gates.of(asked);
    states.stream()
        .filter(GateState::isShut)
        .filter(state -> !saidByHollow(state, states))
        .map(state -> held(part, state))
        .filter(h -> shut.stream().noneMatch(s -> s.gate().equals(h.gate())))
        .forEach(shut::add);
    boolean alone = false;
    Optional<KettleWays.Best> best = Optional.empty();
    Map<String, FitAnswer> kettles = Map.of();
    if (line.wanted().route().zinc() && !part.spun()) {
      List<KettleWays.Best> answers = KettleWays.answers(ways, part, bodies);
      best = KettleWays.best(answers);
      kettles = KettleWays.open(answers);
      Optional<FitAnswer> answer = best.map(KettleWays.Best::answer);
      if (answer.isPresent() && answer.get().verdict() == Verdict.NO) {
        shut.add(doesNotFit(part, answer.get()));
      }
      alone = answer.isPresent() && answer.get().verdict() != Verdict.STRAIGHT;
    }
    SteelClass steel = draws.steel(part).steelClass();
    boolean reactive = steel == SteelClass.C || steel == SteelClass.D;
    String key = reactive ? "reactive steel" : "ordinary steel";
    PartGates gates =
        new PartGates(part.jobId(), part.partId(), states, asked.build().members(), best);
    return new Outcome(shut, gates, new LegMaker.KettleWay(alone, reactive, key, kettles));
  }

  /** Holes that are missing let nothing sink: one question, not two. */
  private static boolean saidByHollow(GateState state, List<GateState> states) {
    return state.gate() == Gate.FLOATING
        && states.stream().anyMatch(s -> s.gate() == Gate.HOLLOW && s.isShut());
  }

  private static Held doesNotFit(PartFacts part, FitAnswer answer) {
    String words =
        "does not go into the kettle whole or in two dips; limited by "
            + answer.limitedBy().orElse("the kettle")
            + ". "
            + String.join("; ", answer.waysOut());
    return new Held(
        part.jobId(),
        part.partId(),
        part.description(),
        part.pieces(),
        "does-not-fit",
        words,
        "another size, another kettle, or paint instead of zinc",
        "design",
        1,
        part.dueMin());
  }

  private static Held held(PartFacts part, GateState state) {
    return new Held(
        part.jobId(),
        part.partId(),
        part.description(),
        part.pieces(),
        state.code(),
        state.words(),
        state.opens(),
        state.whoAnswers(),
        state.gate().danger(),
        part.dueMin());
  }

  private static Held held(PartFacts part, Problem problem) {
    int danger = problem.severity() == Severity.DANGER ? 0 : 1;
    return new Held(
        part.jobId(),
        part.partId(),
        part.description(),
        part.pieces(),
        problem.code().key(),
        problem.why(),
        problem.remedy(),
        "design",
        danger,
        part.dueMin());
  }
}
