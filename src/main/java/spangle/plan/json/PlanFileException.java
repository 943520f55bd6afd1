package spangle.plan.json;

/** A plan that cannot be read; the message says where and what was expected. */
public final class PlanFileException extends Exception {
  private static final long serialVersionUID = 1L;

  PlanFileException(String sentence, Throwable cause) {
    super(sentence, cause);
  }
}
