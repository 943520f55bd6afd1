package spangle.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The event command from outside: what it cannot mean is not written. */
class EventCommandTest {
  @TempDir Path week;

  private String refused(String... about) {
    StringWriter err = new StringWriter();
    String[] args = new String[5 + about.length];
    args[0] = "event";
    args[1] = week.toString();
    args[2] = "hung";
    args[3] = "--when";
    args[4] = "mon 06:20";
    System.arraycopy(about, 0, args, 5, about.length);
    int code = Spangle.run(new PrintWriter(new StringWriter()), new PrintWriter(err), args);
    assertThat(code).isEqualTo(ExitCode.USAGE);
    assertThat(week.resolve("events.yaml")).doesNotExist();
    return err.toString();
  }

  @Test
  void oneEventIsOfOneLoad() {
    assertThat(refused("load=P01", "load=P02")).contains("'load' is given twice");
    assertThat(refused("load=P01", "LOAD=P02")).contains("'LOAD' is given twice");
  }

  @Test
  void whatItIsAboutHasAKeyAnEventKnows() {
    assertThat(refused("P01")).contains("'P01' is not KEY=VALUE");
    assertThat(refused("lod=P01")).contains("an event has no 'lod'");
    assertThat(refused("who=Ada")).contains("write --who", "in place of who=Ada");
  }
}
