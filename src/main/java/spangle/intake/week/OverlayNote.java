package spangle.intake.week;

/**
 * An overlay a week was read with.
 *
 * @param title what would be different, in words
 * @param bytes length of the file
 * @param sha256 SHA-256 of its bytes, 64 small hexadecimal digits
 */
public record OverlayNote(String title, long bytes, String sha256) {}
