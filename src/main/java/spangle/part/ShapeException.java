package spangle.part;

import spangle.measure.Figures;

/**
 * Dimensions that no piece of metal can have. The message is one sentence for the person; the parts
 * are kept so that a reader of files can put its own line and column before them.
 */
public final class ShapeException extends IllegalArgumentException {
  private static final long serialVersionUID = 1L;

  private final String what;
  private final String value;
  private final String limit;
  private final String remedy;

  /**
   * Makes the complaint.
   *
   * @param what the dimension, for example {@code wall thickness}
   * @param value its value in the unit given in {@code limit}
   * @param limit what it has to keep
   * @param remedy what to do about it
   */
  public ShapeException(String what, double value, String limit, String remedy) {
    super(sentence(what, Figures.upTo(value, 3), limit, remedy));
    this.what = what;
    this.value = Figures.upTo(value, 3);
    this.limit = limit;
    this.remedy = remedy;
  }

  private static String sentence(String what, String value, String limit, String remedy) {
    return what + " " + value + " is not " + limit + ": " + remedy;
  }

  /** The whole complaint, as the message. */
  public String sentence() {
    return sentence(what, value, limit, remedy);
  }

  /** The dimension. */
  public String what() {
    return what;
  }

  /** Its value. */
  public String value() {
    return value;
  }

  /** What it has to keep. */
  public String limit() {
    return limit;
  }

  /** What to do. */
  public String remedy() {
    return remedy;
  }
}
