package spangle.intake.read;

import java.nio.file.Path;
import java.util.Optional;

/**
 * Files that are read beside a week folder without being in it.
 *
 * @param overlay what would be different: a what-if
 * @param jobFile a job file that nobody has accepted yet
 */
public record Besides(Optional<Path> overlay, Optional<Path> jobFile) {
  /** Nothing but the folder. */
  public static final Besides NOTHING = new Besides(Optional.empty(), Optional.empty());

  /** The folder as it would be with an overlay. */
  public static Besides overlay(Optional<Path> overlay) {
    return new Besides(overlay, Optional.empty());
  }
}
