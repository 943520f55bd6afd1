package spangle.intake.brief;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import spangle.coating.zinc.SteelClass;
import spangle.fit.Body;
import spangle.fit.FitAnswer;
import spangle.fit.FitRequest;
import spangle.fit.FitRules;
import spangle.fit.KettleFit;
import spangle.fit.KettleWay;
import spangle.fit.Verdict;
import spangle.fit.gate.Gate;
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
  private final List<KettleWay> ways;
  private final Draws draws;

  GateStep(WeekInput input) {
    this.input = input;
    this.ways = KettleWays.of(input.shop());
    this.draws = new Draws(input);
  }

  /** Shut gates, how all stand, and how the part goes into zinc where none is shut. */
  record Outcome(List<Held> shut, PartGates gates, LegMaker.KettleWay way) {}

  Outcome ask(PartLine line, PartFacts part) {
    List<Held> shut = new ArrayList<>();
    for (Problem problem : input.problems()) {
      boolean here = problem.job().equals(part.jobId()) && problem.part().equals(part.partId());
      boolean asked = problem.code() == ProblemCode.STEEL_STRONG;
      if (here && problem.meanwhile() == Meanwhile.GATE_SHUT && !asked) {
        shut.add(held(part, problem));
      }
    }
    List<GateState> states = Gates.of(new GateCases(input, ways).of(line, part));
    states.stream()
        .filter(GateState::isShut)
        .filter(state -> !saidByHollow(state, states))
        .map(state -> held(part, state))
        .filter(h -> shut.stream().noneMatch(s -> s.gate().equals(h.gate())))
        .forEach(shut::add);
    boolean alone = false;
    Optional<FitAnswer> answer = Optional.empty();
    if (line.wanted().route().zinc() && !part.spun()) {
      answer = fit(part);
      if (answer.isPresent() && answer.get().verdict() == Verdict.NO) {
        shut.add(doesNotFit(part, answer.get()));
      }
      alone = answer.isPresent() && answer.get().verdict() != Verdict.STRAIGHT;
    }
    SteelClass steel = draws.steel(part).steelClass();
    boolean reactive = steel == SteelClass.C || steel == SteelClass.D;
    String key = reactive ? "reactive steel" : "ordinary steel";
    PartGates gates = new PartGates(part.jobId(), part.partId(), states, answer);
    return new Outcome(shut, gates, new LegMaker.KettleWay(alone, reactive, key));
  }

  /** Holes that are missing let nothing sink: one question, not two. */
  private static boolean saidByHollow(GateState state, List<GateState> states) {
    return state.gate() == Gate.FLOATING
        && states.stream().anyMatch(s -> s.gate() == Gate.HOLLOW && s.isShut());
  }

  /** The best answer any kettle of the shop gives. */
  private Optional<FitAnswer> fit(PartFacts part) {
    return ways.stream()
        .map(way -> KettleFit.answer(request(part), way))
        .min(Comparator.comparing(FitAnswer::verdict));
  }

  static FitRequest request(PartFacts part) {
    return new FitRequest(
        Body.of(part.envelopeMm()), OptionalDouble.of(part.massKg()), 0, FitRules.KETTLE);
  }

  private static Held doesNotFit(PartFacts part, FitAnswer answer) {
    String words =
        "does not go into the kettle whole or in two dips; limited by "
            + answer.limitedBy().orElse("the kettle")
            + ". Ways out: "
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
