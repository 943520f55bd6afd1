package spangle.plan.json;

/**
 * One file a plan was made from.
 *
 * @param file path inside the week folder, parts divided by "/"
 * @param bytes its length
 * @param sha256 SHA-256 of its bytes, 64 small hexadecimal digits (FIPS 180-4)
 */
public record InputDigest(String file, long bytes, String sha256) {
  /** Refuses anything but a path downwards and a digest. */
  public InputDigest {
    if (!sha256.matches("[0-9a-f]{64}")) {
      throw new IllegalArgumentException("not a SHA-256: " + sha256);
    }
    if (file.isEmpty()
        || file.startsWith("/")
        || file.contains("\\")
        || ("/" + file + "/").contains("/../")) {
      throw new IllegalArgumentException("not a path inside the week folder: " + file);
    }
  }
}
