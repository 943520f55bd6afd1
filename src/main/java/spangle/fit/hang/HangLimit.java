package spangle.fit.hang;

/** What stops one more piece from going on a carrier. */
public enum HangLimit {
  /** The piece does not go on the face at all, or stands too far off it. */
  DOES_NOT_HANG("the piece is too large for the carrier"),
  /** No room is left on the face. */
  ROOM("no room on the face"),
  /** The carrier would be too heavy. */
  MASS("the mass limit"),
  /** The hooks are used up. */
  HOOKS("the number of hooks"),
  /** The basket is full to its fill line. */
  VOLUME("the fill volume of the basket");

  private final String words;

  HangLimit(String words) {
    this.words = words;
  }

  /** The limit in words, for a sheet. */
  public String words() {
    return words;
  }
}
