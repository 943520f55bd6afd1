package spangle.equipment;

/** Who must be there while something is in a station. */
public enum Manning {
  /** People all the time: it rests in breaks. */
  PEOPLE,
  /** Runs on through breaks, not past the end of the shift. */
  THROUGH_BREAKS,
  /** Runs day and night once loaded. */
  ALWAYS
}
