package spangle.intake.week;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/**
 * A liquid paint.
 *
 * @param id name in job files
 * @param name words for the sheet
 * @param colour colour in words
 * @param swatch colour for the screen
 * @param family colour family
 * @param chemistry epoxy, polyurethane ...
 * @param solidsPct solids by volume, per cent
 * @param thinnerPct thinner per 100 of unthinned paint by volume
 * @param loss share of all litres mixed that is lost
 * @param mix parts by volume, base first; one entry for a one-pack paint
 * @param film film
 * @param potLifeMin minutes a mix can be used; empty for one-pack
 * @param flashOffMin minutes before it may be warmed
 * @param recoatMinMin least minutes to the next coat
 * @param recoatMaxMin most minutes to the next coat; {@link Integer#MAX_VALUE} where no limit
 * @param specificGravity density where known
 * @param cure forced drying at metal temperature
 * @param recoating how rejected pieces are coated over
 * @param stock stock in litres
 */
public record Paint(
    String id,
    String name,
    String colour,
    String swatch,
    String family,
    String chemistry,
    double solidsPct,
    double thinnerPct,
    double loss,
    List<Double> mix,
    Film film,
    OptionalInt potLifeMin,
    int flashOffMin,
    int recoatMinMin,
    int recoatMaxMin,
    OptionalDouble specificGravity,
    Optional<Cure> cure,
    Recoating recoating,
    Stock stock)
    implements Coating {
  /** Copies the list. */
  public Paint {
    mix = List.copyOf(mix);
  }
}
