package spangle.plan.json;

/**
 * The plan of the week as it is from which the search of a what-if started.
 *
 * @param version its letter
 * @param sha256 SHA-256 of its file, 64 small hexadecimal digits (FIPS 180-4)
 * @param same whether the overlay changes nothing the planner knows: the plan is then that one
 */
public record StartedFrom(String version, String sha256, boolean same) {
  /** Refuses what is no digest. */
  public StartedFrom {
    if (!sha256.matches("[0-9a-f]{64}")) {
      throw new IllegalArgumentException("not a SHA-256: " + sha256);
    }
  }
}
