package spangle.plan.json;

/** A plan that cannot be read; the message says where and what was expected. */
public final class PlanFileException extends Exception {
  private static final long serialVersionUID = 1L;

  /** A plan that reads, and cannot be built on. */
  public PlanFileException(String sentence) {
    super(sentence);
  }

  PlanFileException(String sentence, Throwable cause) {
    super(sentence, cause);
  }
}
