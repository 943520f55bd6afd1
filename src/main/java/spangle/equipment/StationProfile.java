package spangle.equipment;

import java.util.List;
import java.util.Optional;
import spangle.measure.Box;

/**
 * A kind of station that is neither oven nor kettle: hanging place, washer, booth, tank, dryer,
 * cooling bay, centrifuge.
 *
 * @param name name in the shop file
 * @param title words for the sheet
 * @param kind what is done there
 * @param inside inside size, where it has one
 * @param usable what may be in it, where it has a size
 * @param maxMassKg most it may hold, kg; infinite where nothing is said
 * @param manning who must be there
 * @param pace how long a visit takes
 * @param longestWaitAfterMin minutes until the next station at most; {@link Integer#MAX_VALUE}
 *     where there is no limit
 * @param celsius bath or air temperature; NaN where it has none
 * @param cautions what must be said on the sheet
 */
public record StationProfile(
    String name,
    String title,
    Kind kind,
    Optional<Box> inside,
    Optional<Box> usable,
    double maxMassKg,
    Manning manning,
    Pace pace,
    int longestWaitAfterMin,
    double celsius,
    List<String> cautions)
    implements Profile {

  /** What is done there. */
  public enum Kind {
    /** Parts are hung, wired or filled in. */
    HANGING,
    /** Spray cleaning and conversion. */
    WASH,
    /** Parts are dried. */
    DRYER,
    /** Powder is sprayed. */
    POWDER_BOOTH,
    /** Liquid paint is sprayed. */
    LIQUID_BOOTH,
    /** Solvent leaves wet paint. */
    FLASH_OFF,
    /** Hot alkaline or acid cleaning. */
    DEGREASE,
    /** Water. */
    RINSE,
    /** Acid. */
    PICKLE,
    /** Flux. */
    FLUX,
    /** Water behind the kettle. */
    QUENCH,
    /** Baskets are spun. */
    CENTRIFUGE,
    /** Parts cool. */
    COOLING,
    /** Parts come off and are looked at. */
    UNHANGING,
    /** Another firm's work, by the day. */
    OUTSIDE
  }

  /** Copies the list. */
  public StationProfile {
    cautions = List.copyOf(cautions);
  }

  /** The same station where every visit takes so many times longer: crew away, tired acid. */
  public StationProfile slower(double factor) {
    return new StationProfile(
        name,
        title,
        kind,
        inside,
        usable,
        maxMassKg,
        manning,
        pace.times(factor),
        longestWaitAfterMin,
        celsius,
        cautions);
  }
}
