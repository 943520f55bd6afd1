package spangle.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.apache.poi.ss.usermodel.DataFormatter;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
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
  void aWeekWithoutJobsOffersItsChoices() throws IOException {
    Path week = Files.createDirectory(temp.resolve("fresh"));
    for (String file : List.of("shop.yaml", "coatings.yaml")) {
      Files.copy(Path.of("samples/first-steps", file), week.resolve(file));
    }

    Path file = written(week.toString());

    assertThat(err.toString()).isEmpty();
    String powder =
        Files.readAllLines(week.resolve("coatings.yaml")).stream()
            .filter(line -> line.strip().startsWith("- id: "))
            .map(line -> line.strip().substring(6))
            .findFirst()
            .orElseThrow();
    try (XSSFWorkbook book = new XSSFWorkbook(Files.newInputStream(file))) {
      DataFormatter cells = new DataFormatter(Locale.ROOT);
      List<String> choices = new ArrayList<>();
      book.sheetIterator()
          .forEachRemaining(
              sheet -> sheet.forEach(r -> r.forEach(c -> choices.add(cells.formatCellValue(c)))));
      assertThat(choices).contains(powder);
    }
  }

  @Test
  void aWeekThatOffersChoicesIsNoMatterForWords() {
    assertThat(written("samples/first-steps")).isNotEmptyFile();
    assertThat(err.toString()).isEmpty();
  }
}
