package spangle.equipment;

import java.util.List;

/**
 * A hoist that serves a kettle line.
 *
 * @param name name in the shop file
 * @param title words for the sheet
 * @param maxMassKg parts, jig and drained zinc together, kg, as plated; never derated here
 * @param liftMm room between the hook and the highest tank edge, mm
 * @param hangerMm beam and slings between hook and part, mm
 * @param moveMin minutes of one move
 * @param cautions what must be said on the sheet
 */
public record CraneProfile(
    String name,
    String title,
    double maxMassKg,
    double liftMm,
    double hangerMm,
    double moveMin,
    List<String> cautions)
    implements Profile {

  /** Copies the list. */
  public CraneProfile {
    cautions = List.copyOf(cautions);
  }
}
