package spangle.intake.week;

import java.util.List;

/**
 * A set assembly needs complete.
 *
 * @param id unique in the week
 * @param name words for the sheet
 * @param sets how many sets are wanted
 * @param dueMin when, minutes from the week's zero
 * @param weight 1 (usual) to 9
 * @param oneLot whether its powder-coated parts come from one powder lot
 * @param lines what one set takes
 */
public record KitOrder(
    String id, String name, int sets, int dueMin, int weight, boolean oneLot, List<Line> lines) {

  /**
   * One line of the bill.
   *
   * @param partId the part
   * @param jobId the job its pieces come from
   * @param perSet pieces in one set
   * @param onHand finished pieces in the store for this kit
   */
  public record Line(String partId, String jobId, int perSet, int onHand) {}

  /** Copies the list. */
  public KitOrder {
    lines = List.copyOf(lines);
  }
}
