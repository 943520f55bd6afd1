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
import spangle.intake.problem.Meanwhile;
import spangle.intake.problem.Problem;
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

  /** Shut gates, and how the part goes into zinc where none is shut. */
  record Outcome(List<Held> shut, LegMaker.KettleWay way) {}

  Outcome ask(PartLine line, PartFacts part) {
    List<Held> shut = new ArrayList<>();
    for (Problem problem : input.problems()) {
      boolean here = problem.job().equals(part.jobId()) && problem.part().equals(part.partId());
      if (here && problem.meanwhile() == Meanwhile.GATE_SHUT) {
        shut.add(held(part, problem));
      }
    }
    List<Held> own = new SafetyGates(input).shut(line, part);
    own.stream()
        .filter(h -> shut.stream().noneMatch(s -> s.gate().equals(h.gate())))
        .forEach(shut::add);
    boolean alone = false;
    if (line.wanted().route().zinc() && !part.spun()) {
      Optional<FitAnswer> answer = fit(part);
      if (answer.isPresent() && answer.get().verdict() == Verdict.NO) {
        shut.add(doesNotFit(part, answer.get()));
      }
      alone = answer.isPresent() && answer.get().verdict() != Verdict.STRAIGHT;
    }
    SteelClass steel = draws.steel(part).steelClass();
    boolean reactive = steel == SteelClass.C || steel == SteelClass.D;
    String key = reactive ? "reactive steel" : "ordinary steel";
    return new Outcome(shut, new LegMaker.KettleWay(alone, reactive, key));
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
