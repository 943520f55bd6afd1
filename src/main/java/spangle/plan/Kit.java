package spangle.plan;

import java.util.List;

/**
 * A set assembly needs complete.
 *
 * @param id unique in the week
 * @param name words for the sheet
 * @param sets how many sets are wanted
 * @param dueMin wanted completion
 * @param weight how much it counts; 1 is usual
 * @param oneLot whether its powder-coated parts are to come from one maker's lot of powder
 * @param lines what one set takes
 */
public record Kit(
    String id, String name, int sets, int dueMin, int weight, boolean oneLot, List<KitLine> lines) {
  /** Copies the list. */
  public Kit {
    lines = List.copyOf(lines);
  }

  /** A kit whose parts may come from any lot of powder. */
  public Kit(String id, String name, int sets, int dueMin, int weight, List<KitLine> lines) {
    this(id, name, sets, dueMin, weight, false, lines);
  }

  /** The same kit, wanted at another time. */
  public Kit due(int otherMin) {
    return new Kit(id, name, sets, otherMin, weight, oneLot, lines);
  }

  /**
   * One line of the bill.
   *
   * @param partId the part, finished
   * @param jobId the order its pieces come from
   * @param perSet pieces in one set
   * @param onHand finished pieces already in the store for this kit
   */
  public record KitLine(String partId, String jobId, int perSet, int onHand) {}
}
