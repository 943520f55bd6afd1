package spangle.plan.clock;

/**
 * A machine filled batch by batch with arrival times that are only guessed: for plans under
 * construction, before the line is walked.
 */
public final class MachineGuess {
  private final LineFacts line;
  private final MachineFacts machine;
  private int free;
  private int heat;
  private int setting;

  /** The machine at the week's beginning. */
  public MachineGuess(LineFacts line, MachineFacts machine) {
    this.line = line;
    this.machine = machine;
    this.setting = machine.spec.initialSetting();
  }

  /**
   * The machine that is free first, of those alike the first.
   *
   * @param closed by machine, whether it takes no more
   * @return its place; -1 where all are closed
   */
  public static int firstFree(MachineGuess[] guesses, boolean[] closed) {
    int best = -1;
    for (int m = 0; m < guesses.length; m++) {
      if (!closed[m] && (best < 0 || guesses[m].free < guesses[best].free)) {
        best = m;
      }
    }
    return best;
  }

  /** Minute from which it may be set up again. */
  public int free() {
    return free;
  }

  /** Setting it stands at. */
  public int setting() {
    return setting;
  }

  /** Start of a batch that is at the machine from that minute on; huge where no span is left. */
  public int start(Batch batch, int thereMin) {
    return MachineClock.start(line, machine, batch, thereMin, free, heat, setting);
  }

  /** Runs a batch from that minute on. */
  public void pass(Batch batch, int startMin) {
    free = MachineClock.free(machine, startMin + batch.dwell);
    heat = machine.heatFree(startMin, batch.massKg);
    setting = batch.setting;
  }
}
