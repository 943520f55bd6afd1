package spangle.coating.heat;

/**
 * One kind of part in an oven batch.
 *
 * @param name words for the verdict
 * @param part metal, thickness, faces
 * @param transfer how the oven gives it heat
 * @param window what its coating needs and bears
 */
public record BatchPart(String name, HeatedPart part, HeatTransfer transfer, CureWindow window) {}
