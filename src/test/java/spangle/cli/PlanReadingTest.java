package spangle.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What every command says of a plan that is not there, or is none. */
class PlanReadingTest {
  @TempDir Path folder;

  private String refused(String command) {
    StringWriter said = new StringWriter();
    int code =
        Spangle.run(
            new PrintWriter(said),
            new PrintWriter(said),
            command.replace("PLAN", folder.toString()).split(" "));
    assertThat(code).as(said.toString()).isEqualTo(ExitCode.REFUSED);
    return said.toString().replaceAll("\\s+", " ");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "why PLAN H-1",
        "audit PLAN",
        "compare PLAN PLAN",
        "order samples/first-steps --plan PLAN",
        "replan samples/first-steps --keep PLAN --at tue",
        "back samples/first-steps --plan PLAN"
      })
  void aPlanThatIsNotThere(String command) {
    assertThat(refused(command)).contains("is not there; plan the week first");
  }

  @ParameterizedTest
  @ValueSource(strings = {"why PLAN H-1", "audit PLAN", "compare PLAN PLAN"})
  void aPlanThatIsNone(String command) throws IOException {
    Files.writeString(folder.resolve("plan.json"), "[1,");

    assertThat(refused(command)).contains(folder + ": ").doesNotContain("Exception");
  }

  @ParameterizedTest
  @ValueSource(strings = {"why PLAN H-1", "audit PLAN"})
  void aPlanThatCannotBeRead(String command) throws IOException {
    Files.createDirectories(folder.resolve("plan.json"));

    assertThat(refused(command)).contains("cannot be read: ").doesNotContain("Exception");
  }
}
