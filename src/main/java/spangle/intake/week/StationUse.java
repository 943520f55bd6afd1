package spangle.intake.week;

import java.util.Optional;
import java.util.OptionalDouble;
import spangle.equipment.KettleProfile;
import spangle.equipment.OvenProfile;
import spangle.equipment.Profile;

/**
 * A station of a line.
 *
 * @param id unique in the shop
 * @param profile {@link spangle.equipment.StationProfile}, {@link OvenProfile} or {@link
 *     KettleProfile}
 * @param count how many alike stand side by side
 * @param startsWith finish a booth holds when the week begins
 * @param startsAtC setting an oven stands at when the week begins
 * @param levelDownMm how far a bath stands below its usual mark, mm
 * @param levelAtMin when it was read, minutes from the week's zero
 * @param drossMm dross above the layer already taken off the usable depth, mm
 */
public record StationUse(
    String id,
    Profile profile,
    int count,
    Optional<String> startsWith,
    OptionalDouble startsAtC,
    double levelDownMm,
    int levelAtMin,
    double drossMm) {

  /** Whether loads stand in it as a batch: an oven or a kettle. */
  public boolean isMachine() {
    return profile instanceof OvenProfile || profile instanceof KettleProfile;
  }

  /** The same station with its bath at the usual mark. */
  public StationUse filled() {
    return new StationUse(id, profile, count, startsWith, startsAtC, 0, levelAtMin, drossMm);
  }
}
