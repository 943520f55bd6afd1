package spangle.intake.week;

import java.util.List;
import java.util.OptionalInt;

/**
 * How a piece is handled.
 *
 * @param hooks hooks one piece takes, where given
 * @param showFace the face towards the sprayer in words; may be empty
 * @param masking plugs and tape in words
 * @param spin whether it goes into the spin basket
 * @param carriers carriers allowed; empty = all it fits
 * @param movingParts whether it moves in itself
 * @param mayTurn whether a quarter turn on the rack is allowed
 */
public record Handling(
    OptionalInt hooks,
    String showFace,
    List<String> masking,
    Told spin,
    List<String> carriers,
    Told movingParts,
    Told mayTurn) {
  /** Copies the lists. */
  public Handling {
    masking = List.copyOf(masking);
    carriers = List.copyOf(carriers);
  }
}
