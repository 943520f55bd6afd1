package spangle.desk;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import spangle.fit.FitAnswer;
import spangle.fit.Verdict;
import spangle.fit.gate.GateOpening;
import spangle.fit.gate.GateState;
import spangle.intake.brief.PartGates;
import spangle.intake.brief.PreparedWeek;
import spangle.plan.Held;
import spangle.plan.PartFacts;
import spangle.plan.json.Gate;

/** Every gate that was asked, and how it stands: for the plan as data and for the sheets. */
final class GateList {
  private GateList() {}

  /** Shut gates first, as the exceptions list has them; then the others, part by part. */
  static List<Gate> of(PreparedWeek week) {
    List<Gate> gates = new ArrayList<>();
    week.held().forEach(h -> gates.add(shut(h)));
    for (PartFacts part : week.parts()) {
      Optional<PartGates> asked = week.gates(part.jobId(), part.partId());
      asked.stream()
          .flatMap(g -> g.states().stream())
          .filter(state -> !state.isShut())
          .forEach(state -> gates.add(open(part, state)));
      asked
          .flatMap(PartGates::fit)
          .filter(answer -> answer.verdict() != Verdict.NO)
          .ifPresent(answer -> gates.add(fits(part, answer)));
    }
    return List.copyOf(gates);
  }

  private static Gate shut(Held held) {
    return Gate.shut(
        held.jobId(),
        held.partId(),
        held.gate(),
        held.pieces(),
        held.words() + "; opens with: " + held.opens(),
        held.whoAnswers());
  }

  private static Gate open(PartFacts part, GateState state) {
    return new Gate(
        part.jobId(),
        part.partId(),
        state.code(),
        state.standing().word(),
        true,
        part.pieces(),
        state.words(),
        state.whoAnswers(),
        state.opening().map(GateOpening::by).orElse(List.of()),
        state.opening().map(GateOpening::at).orElse(""),
        state.opening().map(GateOpening::seen).orElse(""));
  }

  private static Gate fits(PartFacts part, FitAnswer answer) {
    return new Gate(
        part.jobId(),
        part.partId(),
        "kettle fit",
        GateState.Standing.CLEAR.word(),
        true,
        part.pieces(),
        FitWording.sentence(answer),
        "design",
        List.of(),
        "",
        "");
  }

  /** What a load sheet says of a part: a line for each gate a person opened, one for the clear. */
  static List<String> lines(PartGates gates) {
    List<String> lines = new ArrayList<>();
    gates.states().stream().filter(GateState::isOpened).map(GateState::signed).forEach(lines::add);
    List<String> clear =
        gates.states().stream()
            .filter(s -> s.standing() == GateState.Standing.CLEAR)
            .map(s -> s.gate().word())
            .toList();
    if (!clear.isEmpty()) {
      lines.add("clear: " + String.join(", ", clear));
    }
    return lines;
  }
}
