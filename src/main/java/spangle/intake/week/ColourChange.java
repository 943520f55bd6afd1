package spangle.intake.week;

import java.util.List;
import java.util.Map;

/**
 * Minutes to change a booth from one colour to another.
 *
 * @param families names of the colour families in the order of the table
 * @param minutes from family, to family, minutes
 * @param otherChemistryMin least minutes between different chemistries; 0 where none is said
 * @param overrides exact pairs of finishes, which win over the table
 */
public record ColourChange(
    List<String> families,
    Map<String, Map<String, Integer>> minutes,
    int otherChemistryMin,
    List<Pair> overrides) {

  /** An exact pair. */
  public record Pair(String fromFinish, String toFinish, int minutes, String why) {}

  /** Copies the collections; the order of families is kept in {@code families}. */
  public ColourChange {
    families = List.copyOf(families);
    minutes = Map.copyOf(minutes);
    overrides = List.copyOf(overrides);
  }

  /**
   * Minutes from one coating to another; nothing between one and the same.
   *
   * @param from what the booth holds
   * @param to what comes next
   */
  public int minutes(Coating from, Coating to) {
    for (Pair pair : overrides) {
      if (pair.fromFinish().equals(from.id()) && pair.toFinish().equals(to.id())) {
        return pair.minutes();
      }
    }
    if (from.id().equals(to.id())) {
      return 0;
    }
    int table = minutes.getOrDefault(from.family(), Map.of()).getOrDefault(to.family(), 0);
    boolean clash = !from.chemistry().equals(to.chemistry());
    return clash ? Math.max(table, otherChemistryMin) : table;
  }
}
