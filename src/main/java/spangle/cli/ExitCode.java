package spangle.cli;

/** What the program says with its exit code; scripts rely on these. */
public final class ExitCode {
  /** Done. */
  public static final int DONE = 0;

  /** Done, and something waits for a person: a gate shut, a job late or left out, a finding. */
  public static final int WAITS = 1;

  /** Wrong usage: nothing was done. */
  public static final int USAGE = 2;

  /** Input refused, nothing written. */
  public static final int REFUSED = 3;

  /** A fault of the program itself. */
  public static final int FAULT = 70;

  private ExitCode() {}
}
