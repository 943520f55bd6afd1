package spangle.equipment;

import java.util.List;
import spangle.measure.Box;

/**
 * A kind of rack, cart, beam or spin basket.
 *
 * @param name name in the shop file
 * @param title words for the sheet
 * @param kind what it is
 * @param hanging how pieces lie on it
 * @param outside its own outside, which must pass doors and stand in ovens (length along the line
 *     of travel, width across, height)
 * @param usable where parts may hang: length = along the bar, width = off one face, height = drop
 * @param faces faces that are hung
 * @param gapAcrossMm least clear distance side by side, mm
 * @param gapDownMm least clear distance below a piece, mm
 * @param hookDropMm hook between bar and piece, mm
 * @param hookPitchMm distance of hook places, mm; 0 where hooks slide
 * @param hooks hooks on the whole carrier; {@link Integer#MAX_VALUE} where not counted
 * @param maxMassKg most it may carry, kg
 * @param ownMassKg its own mass, kg
 * @param floorUnits places it takes in an oven or over a kettle
 * @param stripAfterCycles cycles until it is stripped; 0 = never
 * @param stripMin minutes out of use then
 * @param cautions what must be said on the sheet
 */
public record CarrierProfile(
    String name,
    String title,
    Kind kind,
    Hanging hanging,
    Box outside,
    Box usable,
    int faces,
    double gapAcrossMm,
    double gapDownMm,
    double hookDropMm,
    double hookPitchMm,
    int hooks,
    double maxMassKg,
    double ownMassKg,
    int floorUnits,
    int stripAfterCycles,
    int stripMin,
    List<String> cautions)
    implements Profile {

  /** What it is. */
  public enum Kind {
    /** Pushed or hung, one or two faces. */
    RACK,
    /** A rack on wheels. */
    CART,
    /** Hangs from the crane over tanks and kettle. */
    BEAM,
    /** Dipped and spun. */
    BASKET
  }

  /** How pieces lie. */
  public enum Hanging {
    /** In rows under bars. */
    ROWS,
    /** Anywhere on a frame or mesh. */
    FREE,
    /** Thrown in. */
    BULK
  }

  /** Copies the list. */
  public CarrierProfile {
    cautions = List.copyOf(cautions);
  }
}
