package spangle.report;

import java.util.List;

/**
 * Stock and colours.
 *
 * @param purchases what the week needs and what is missing, short items first
 * @param baths what it does to the kettles
 * @param allowances what is kept ready for rejects, by part
 * @param swatches how coatings are shown
 */
public record Stores(
    List<PurchaseLine> purchases,
    List<BathLevel> baths,
    List<Allowance> allowances,
    List<Swatch> swatches) {
  /** Nothing known. */
  public static final Stores EMPTY = new Stores(List.of(), List.of(), List.of(), List.of());

  /** Copies the lists. */
  public Stores {
    purchases = List.copyOf(purchases);
    baths = List.copyOf(baths);
    allowances = List.copyOf(allowances);
    swatches = List.copyOf(swatches);
  }
}
