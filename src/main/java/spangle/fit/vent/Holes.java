package spangle.fit.vent;

import java.util.ArrayList;
import java.util.List;

/**
 * Holes that answer the largest need of one task.
 *
 * @param winner the need that won
 * @param leastMm diameter no hole may stay under
 */
public record Holes(Need winner, double leastMm) {
  /**
   * So many holes of one size.
   *
   * @param count how many
   * @param drillMm next drill size
   */
  public record Choice(int count, double drillMm) {
    /** Open area in mm2. */
    public double areaMm2() {
      return count * Math.PI * drillMm * drillMm / 4;
    }

    /** For people: {@code 2 x 12 mm}. */
    public String words() {
      return count + " x " + Text.mm(drillMm);
    }
  }

  /** As the winning rule puts it, up to the next drill. */
  public Choice asRuled() {
    return new Choice(winner.holes(), Drills.nextMm(Math.max(leastMm, winner.eachMm())));
  }

  /** Other numbers of holes with at least the same area: 1, 2 and 4. */
  public List<Choice> otherwise() {
    List<Choice> choices = new ArrayList<>();
    for (int count : new int[] {1, 2, 4}) {
      if (count != winner.holes()) {
        double each = Drills.diameterMm(winner.areaMm2() / count);
        choices.add(new Choice(count, Drills.nextMm(Math.max(leastMm, each))));
      }
    }
    return choices;
  }
}
