package spangle.report;

import java.util.List;

/**
 * How good the plan is and what it changed.
 *
 * @param bounds against what no plan can beat
 * @param comparisons against simple rules
 * @param changes against the plan announced before
 */
public record Yardstick(List<Bound> bounds, List<Comparison> comparisons, List<Change> changes) {
  /** Nothing to compare with. */
  public static final Yardstick EMPTY = new Yardstick(List.of(), List.of(), List.of());

  /** Copies the lists. */
  public Yardstick {
    bounds = List.copyOf(bounds);
    comparisons = List.copyOf(comparisons);
    changes = List.copyOf(changes);
  }
}
