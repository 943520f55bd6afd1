package spangle.intake.source;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Formats as ECMA-376 Part 1, 18.8.31 describes them. */
class NumberFormTest {
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "General | 3 | 3",
        "0.00 | 3.5 | 3.5",
        "0.0\" mm\" | 3 | 3 mm",
        "0.00\\ \"mm\" | 1.5 | 1.5 mm",
        "General\" kg\" | 2 | 2 kg",
        "0\" in\";[Red]-0\" in\" | 0.25 | 0.25 in",
        "0\\m\\m | 4 | 4 mm",
        "0\"\"\"\" | 4 | 4",
        "#,##0\" pcs\" | 1.125 | 1.1250 pcs",
        "_(* #,##0.00_) | 12 | 12",
        "[$EUR-407] #,##0.00 | 12 | 12",
        "\"No \"0 | 12 | 12",
        "00000 | 42 | 00042",
        "00000 | 123456 | 123456",
        "0 | 7 | 7",
        "000 | 1.5 | 1.5",
        "0\" | 7 | 7",
        "0\\ | 7 | 7",
        "[0 | 7 | 7"
      })
  void showsWhatStandsBehindTheDigits(String format, String plain, String words) {
    assertThat(NumberForm.of(format).words(plain)).isEqualTo(words);
  }

  @ParameterizedTest
  @CsvSource({"0.00%, true", "'0.00\"%\"', false", "0.00\\%, false", "General, false"})
  void aPerCentSignCountsWhereItScales(String format, boolean percent) {
    assertThat(NumberForm.of(format).percent()).isEqualTo(percent);
  }
}
