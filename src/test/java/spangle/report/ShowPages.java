package spangle.report;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

class ShowPages {
  @Test
  void show() throws Exception {
    Path dir = Path.of("/tmp/report-out");
    Files.createDirectories(dir);
    for (var e : ReportFiles.render(HarbourWeek.report()).entrySet()) {
      Files.write(dir.resolve(e.getKey()), e.getValue());
    }
    Files.writeString(dir.resolve("term.txt"), TerminalSummary.of(HarbourWeek.report()));
  }
}
