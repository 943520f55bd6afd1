package spangle.fit.vent;

/**
 * What one published rule asks for one task.
 *
 * @param rule its name
 * @param source where it stands
 * @param task vent or drain
 * @param holes how many
 * @param eachMm exact least diameter of each
 * @param working the arithmetic in words
 * @param counted whether it may win; readings that are only shown beside are not counted
 */
public record Need(
    String rule,
    String source,
    Task task,
    int holes,
    double eachMm,
    String working,
    boolean counted) {
  /** Open area asked for, in mm2. */
  public double areaMm2() {
    return holes * Math.PI * eachMm * eachMm / 4;
  }
}
