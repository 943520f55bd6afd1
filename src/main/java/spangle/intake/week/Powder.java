package spangle.intake.week;

import java.util.Optional;

/**
 * A powder.
 *
 * @param id name in job files
 * @param name words for the sheet
 * @param colour colour in words
 * @param swatch colour for the screen
 * @param family colour family
 * @param chemistry polyester, hybrid, epoxy ...
 * @param gloss gloss, satin, matt; may be empty
 * @param texture smooth, fine, coarse, metallic; may be empty
 * @param specificGravity density / 1000 kg/m3
 * @param film film
 * @param use share of sprayed powder that stays on the work
 * @param colourLossKg lost at each colour run, kg
 * @param cure cure at metal temperature
 * @param firstCoatShare share of the cure it gets as the first of two coats
 * @param recoating how rejected pieces are coated over
 * @param stock stock in kg
 */
public record Powder(
    String id,
    String name,
    String colour,
    String swatch,
    String family,
    String chemistry,
    String gloss,
    String texture,
    double specificGravity,
    Film film,
    double use,
    double colourLossKg,
    Optional<Cure> cure,
    double firstCoatShare,
    Recoating recoating,
    Stock stock)
    implements Coating {}
