package spangle.cli;

/** Ends a command with a code and one sentence for the person. */
public final class ExitException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  private final int code;

  private ExitException(int code, String sentence) {
    super(sentence);
    this.code = code;
  }

  /** Arguments that are wrong or contradict each other. */
  public static ExitException usage(String sentence) {
    return new ExitException(ExitCode.USAGE, sentence);
  }

  /** Input that is missing or cannot be read; nothing was written. */
  public static ExitException refused(String sentence) {
    return new ExitException(ExitCode.REFUSED, sentence);
  }

  /** The exit code. */
  public int code() {
    return code;
  }
}
