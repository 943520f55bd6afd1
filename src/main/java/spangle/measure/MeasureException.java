package spangle.measure;

/**
 * A quantity that cannot be read. The message is one sentence for the person who typed it; the
 * parts are kept so that a reader of files can put its own line and column before them.
 */
public final class MeasureException extends IllegalArgumentException {
  private static final long serialVersionUID = 1L;

  private final String value;
  private final String expected;
  private final String remedy;

  /**
   * Makes the complaint.
   *
   * @param value the text as it was given
   * @param expected what should have stood there, for example {@code a length with its unit}
   * @param remedy what to do about it
   */
  public MeasureException(String value, String expected, String remedy) {
    super("'" + shortened(value) + "' is not " + expected + ": " + remedy);
    this.value = value;
    this.expected = expected;
    this.remedy = remedy;
  }

  /** The text as it was given. */
  public String value() {
    return value;
  }

  /** What should have stood there. */
  public String expected() {
    return expected;
  }

  /** What to do. */
  public String remedy() {
    return remedy;
  }

  private static String shortened(String text) {
    return text.length() <= 60 ? text : text.substring(0, 57) + "...";
  }
}
