package spangle.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The plain question goes past the option reader and answers as it would. */
class PartQuestionTest {
  private static final String WEEK = "samples/harbour-week";

  private record Said(int code, String out, String err) {}

  private static Said said(List<String> words) {
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    int code =
        Spangle.run(new PrintWriter(out), new PrintWriter(err), words.toArray(String[]::new));
    return new Said(code, out.toString(), err.toString());
  }

  @ParameterizedTest
  @CsvSource({
    WEEK + ", H-205/HC-42, 0, TILTED",
    WEEK + ", H-206, 1, does not go in",
    WEEK + ", h-204 dp-01, 1, NOT TO BE HUNG",
    WEEK + ", H-2O5, 2, no accepted part of this week is called 'H-2O5'",
    "samples/no-week, H-205, 3, cannot be used",
  })
  void answersRefusesAndComplainsLikeTheOptionReader(
      String week, String part, int code, String says) {
    Said plain = said(List.of("fit", week, part));
    // Behind "--" nothing is an option; only the option reader knows that.
    assertThat(plain).isEqualTo(said(List.of("fit", "--", week, part)));
    assertThat(plain.code()).isEqualTo(code);
    assertThat(plain.out() + plain.err()).contains(says);

    Said data = said(List.of("fit", week, part, "--json"));
    assertThat(data).isEqualTo(said(List.of("fit", "--json", "--", week, part)));
    assertThat(data).isEqualTo(said(List.of("fit", "--json", week, part)));
  }

  @ParameterizedTest
  @CsvSource({
    "plan, " + WEEK + ", H-205",
    "fit, " + WEEK + ", ' '",
    "fit, " + WEEK + ", -x",
    "fit, " + WEEK + ", @words",
    "fit, --kettle, kettle-small",
  })
  void everyOtherFormIsLeftToTheOptionReader(String command, String one, String other) {
    PrintWriter nowhere = new PrintWriter(new StringWriter());
    String[] words = {command, one, other};
    assertThat(PartQuestion.plain(nowhere, nowhere, words)).isEmpty();
  }

  @Test
  void moreOrFewerWordsAreLeftToTheOptionReader() {
    PrintWriter nowhere = new PrintWriter(new StringWriter());
    assertThat(PartQuestion.plain(nowhere, nowhere, new String[0])).isEmpty();
    assertThat(PartQuestion.plain(nowhere, nowhere, new String[] {"fit", WEEK})).isEmpty();
    assertThat(PartQuestion.plain(nowhere, nowhere, new String[] {"fit", WEEK, "H-205", "two"}))
        .isEmpty();
    assertThat(PartQuestion.plain(nowhere, nowhere, new String[] {"fit", "\0", "H-205"})).isEmpty();
  }

  @Test
  void aSheetIsWrittenBesideTheAnswer(@TempDir Path folder) {
    Path sheet = folder.resolve("cabinet.html");
    List<String> words = new ArrayList<>(List.of("fit", WEEK, "H-205/HC-42"));
    Said plain = said(words);
    words.addAll(List.of("--out", sheet.toString()));
    Said written = said(words);
    assertThat(written.out()).isEqualTo(plain.out());
    assertThat(written.err()).isEqualTo("Sheet: " + sheet + System.lineSeparator());
    assertThat(sheet).content().contains("H-205/HC-42", "<svg");
  }
}
