package spangle.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class TemplateCommandTest {
  @TempDir private Path temp;
  private final StringWriter err = new StringWriter();

  private Path written(String week) {
    Path file = temp.resolve("jobs.xlsx");
    PrintWriter out = new PrintWriter(new StringWriter());
    int code = Spangle.run(out, new PrintWriter(err), "template", file.toString(), "--week", week);
    assertThat(code).isEqualTo(ExitCode.DONE);
    return file;
  }

  @Test
  void aWeekThatCannotBeUsedIsNotPassedOverInSilence() {
    assertThat(written("nowhere")).isNotEmptyFile();
    assertThat(err.toString()).contains("No choices are offered", "nowhere", "spangle check");
  }

  @Test
  void aWeekThatOffersChoicesIsNoMatterForWords() {
    assertThat(written("samples/first-steps")).isNotEmptyFile();
    assertThat(err.toString()).isEmpty();
  }
}
