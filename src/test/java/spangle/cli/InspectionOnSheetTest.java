package spangle.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the inspector reads on the dip sheets. */
class InspectionOnSheetTest {

  /**
   * ISO 1461: of 4 to 500 pieces three are measured (from memory); from 10 cm2 to 2 m2 one
   * reference area each, at least five readings in it; over 6 mm 70 um in an area and 85 um in the
   * mean, 1.5 to 3 mm 45 and 55 (2009, Table 3).
   */
  @Test
  void sampleAreasReadingsAndLimitsStandOnTheSheet(@TempDir Path folder) throws IOException {
    StringWriter said = new StringWriter();
    Path out = folder.resolve("plan");
    int code =
        Spangle.run(
            new PrintWriter(said),
            new PrintWriter(said),
            "plan",
            "samples/first-steps",
            "--steps",
            "20",
            "--seed",
            "1",
            "--out",
            out.toString());

    assertThat(code).as(said.toString()).isIn(ExitCode.DONE, ExitCode.WAITS);
    assertThat(Files.readString(out.resolve("index.html")).replaceAll("\\s+", " "))
        .contains(
            "mooring plate: measure 3 of 60, 1 area of 10 cm2 on each, 5 readings in it.",
            "mean at least 85 um, no place under 70 um",
            "pedestal head: measure 3 of 12, 1 area of 10 cm2 on each, 5 readings in it.",
            "mean at least 55 um, no place under 45 um");
  }
}
