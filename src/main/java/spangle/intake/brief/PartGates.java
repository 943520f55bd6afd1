package spangle.intake.brief;

import java.util.List;
import java.util.Optional;
import spangle.fit.FitAnswer;
import spangle.fit.gate.GateCase;
import spangle.fit.gate.GateState;

/**
 * How every gate stands for one part, and how it goes into the kettle.
 *
 * @param jobId the order
 * @param partId the part
 * @param states all gates that concern it
 * @param members its hollow members with the holes on record
 * @param best the best answer any kettle of the shop gives; empty for work that is not hung for
 *     zinc
 */
public record PartGates(
    String jobId,
    String partId,
    List<GateState> states,
    List<GateCase.Member> members,
    Optional<KettleWays.Best> best) {
  /** Copies the lists. */
  public PartGates {
    states = List.copyOf(states);
    members = List.copyOf(members);
  }

  /** How it goes into the kettle. */
  public Optional<FitAnswer> fit() {
    return best.map(KettleWays.Best::answer);
  }
}
