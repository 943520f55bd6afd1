package spangle.fit.vent;

import java.util.List;
import java.util.Optional;

/**
 * What a hollow needs.
 *
 * @param hollow the space
 * @param needs every rule that speaks of it, largest area first for each task
 * @param vent holes for air; empty when no rule asks for one
 * @param drain holes for zinc; empty when no rule asks for one
 * @param cautions what to mind
 */
public record VentAnswer(
    Hollow hollow,
    List<Need> needs,
    Optional<Holes> vent,
    Optional<Holes> drain,
    List<String> cautions) {
  /** Copies the lists. */
  public VentAnswer {
    needs = List.copyOf(needs);
    cautions = List.copyOf(cautions);
  }

  /** The holes for one task. */
  public Optional<Holes> of(Task task) {
    return task == Task.VENT ? vent : drain;
  }
}
