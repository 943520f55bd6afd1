package spangle.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Vent holes are looked through by two people; one name written twice is one person. */
class OneNameTwiceTest {
  @ParameterizedTest
  @CsvSource({
    "Kettle lead, true",
    "kettle  LEAD, true",
    "kettle\u00a0lead, true",
    "design desk, false"
  })
  void aNameSpacedOtherwiseIsTheSamePerson(String second, boolean one, @TempDir Path week)
      throws IOException {
    Path from = Path.of("samples/first-steps");
    Files.createDirectory(week.resolve("jobs"));
    for (String file : new String[] {"shop.yaml", "coatings.yaml", "jobs/jobs.csv"}) {
      Files.copy(from.resolve(file), week.resolve(file));
    }
    Files.writeString(
        week.resolve("gates.yaml"),
        "gates:\n  - {gate: vents, job: F-1, part: LB-20, opened_by: [kettle lead, \""
            + second
            + "\"], at: 2026-11-26 10:40, note: holes seen}\n");
    StringWriter out = new StringWriter();
    Spangle.run(
        new PrintWriter(out), new PrintWriter(new StringWriter()), "check", week.toString());
    assertThat(out.toString().contains("two people, each signs")).isEqualTo(one);
  }
}
