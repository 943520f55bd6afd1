package spangle.cli;

import java.io.PrintWriter;
import java.util.Locale;
import spangle.solve.Progress;

/** The progress line: one line rewritten on a terminal, a line for each tenth step elsewhere. */
final class ProgressLine {
  private final PrintWriter err;
  private final boolean terminal;
  private double lastShown = -1;

  ProgressLine(PrintWriter err, boolean terminal) {
    this.err = err;
    this.terminal = terminal;
  }

  void show(Progress p) {
    boolean due = lastShown < 0 || p.seconds() - lastShown >= (terminal ? 0.2 : 2);
    if (!due) {
      return;
    }
    lastShown = p.seconds();
    String line =
        String.format(
            Locale.ROOT,
            "%5.1f s  %d batches, %d late, %d left out, cost %d, %d improvements",
            p.seconds(),
            p.batches(),
            p.lateLots(),
            p.leftOut(),
            p.goal(),
            p.improvements());
    err.print(terminal ? "\r" + line + "   " : line + System.lineSeparator());
    err.flush();
  }

  void end() {
    if (terminal && lastShown >= 0) {
      err.println();
      err.flush();
    }
  }
}
