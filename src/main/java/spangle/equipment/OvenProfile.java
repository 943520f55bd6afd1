package spangle.equipment;

import java.util.List;
import spangle.measure.Box;

/**
 * A kind of oven.
 *
 * @param name name in the shop file
 * @param title words for the sheet
 * @param inside inside size (length along the line of travel)
 * @param usable what may stand in it with clear air around, mm
 * @param door clear opening: width and height; length is not used
 * @param maxMassKg parts and carriers together, kg
 * @param floorUnits places
 * @param minC lowest air setting, C
 * @param maxC highest air setting, C
 * @param heatsCPerMin rise of the air when the setting goes up, C per minute
 * @param coolsCPerMin fall of the air when the setting goes down, C per minute
 * @param recoveryMin minutes until the air is back at its setting after loading
 * @param turnaroundMin minutes between batches for doors and handling
 * @param convectionWM2K heat transfer by moving air, W/m2 K
 * @param wallWM2K heat its walls lose per m2 and kelvin, W/m2 K
 * @param airChangesPerHour exhaust in oven volumes an hour, at the temperature of the hall
 * @param heatUp measured minutes to the metal's cure temperature by steel thickness; may be empty
 * @param solventRated whether its exhaust is made for solvent
 * @param manning who must be there
 * @param cautions what must be said on the sheet
 */
public record OvenProfile(
    String name,
    String title,
    Box inside,
    Box usable,
    Box door,
    double maxMassKg,
    int floorUnits,
    double minC,
    double maxC,
    double heatsCPerMin,
    double coolsCPerMin,
    double recoveryMin,
    double turnaroundMin,
    double convectionWM2K,
    double wallWM2K,
    double airChangesPerHour,
    List<HeatUp> heatUp,
    boolean solventRated,
    Manning manning,
    List<String> cautions)
    implements Profile {

  /**
   * One measured point.
   *
   * @param thicknessMm steel thickness, mm
   * @param minutes minutes from loading until the metal is hot
   */
  public record HeatUp(double thicknessMm, double minutes) {}

  /** Walls, roof, floor and doors from inside, m2. */
  public double wallM2() {
    double l = inside.lengthMm() / 1000;
    double w = inside.widthMm() / 1000;
    double h = inside.heightMm() / 1000;
    return 2 * (l * w + l * h + w * h);
  }

  /** Exhaust at the temperature of the hall, m3/h. */
  public double exhaustM3H() {
    return airChangesPerHour * inside.volumeM3();
  }

  /** Copies the lists. */
  public OvenProfile {
    heatUp = List.copyOf(heatUp);
    cautions = List.copyOf(cautions);
  }
}
