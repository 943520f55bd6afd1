package spangle.part;

/** What kind of inner space a part has. */
public enum HollowKind {
  /** None. */
  NONE,
  /** A space that is open at an end or a face: air and liquid can pass if it hangs rightly. */
  OPEN,
  /** A space closed all round. It must never meet molten zinc without vent and drain holes. */
  CLOSED
}
