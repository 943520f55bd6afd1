package spangle.plan.json;

import java.util.Optional;

/**
 * The overlay a what-if was planned with.
 *
 * @param title what is different, in words
 * @param file path of the file, seen from the folder the plan lies in, parts divided by "/"
 * @param bytes its length
 * @param sha256 SHA-256 of its bytes, 64 small hexadecimal digits (FIPS 180-4)
 * @param startedFrom the plan from which its search started; empty where it started anew
 */
public record OverlayDigest(
    String title, String file, long bytes, String sha256, Optional<StartedFrom> startedFrom) {
  /** Refuses what is no digest. */
  public OverlayDigest {
    if (!sha256.matches("[0-9a-f]{64}")) {
      throw new IllegalArgumentException("not a SHA-256: " + sha256);
    }
  }
}
