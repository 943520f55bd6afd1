package spangle.measure;

import static org.assertj.core.api.Assertions.assertThat;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class SafeCellTest {
  @ParameterizedTest
  @ValueSource(
      strings = {
        "=1+1",
        "+cmd",
        "-2+3",
        "@SUM(A1)",
        "\t=1",
        "  =1",
        "=HYPERLINK(\"x\")",
        "+1",
        "-1",
        "\uFF1D1"
      })
  void textThatASpreadsheetWouldRunIsNeutralised(String formula) {
    assertThat(SafeCell.text(formula)).startsWith("'").endsWith(formula.strip());
  }

  @ParameterizedTest
  @ValueSource(strings = {"ladder bracket", "1e-3", "J-101", "", "a=b"})
  void plainTextStaysAsItIs(String text) {
    assertThat(SafeCell.text(text)).isEqualTo(text);
  }

  @Test
  void aCsvFieldIsQuotedOnlyWhereItMustBe() {
    assertThat(SafeCell.csv("a,b", ',')).isEqualTo("\"a,b\"");
    assertThat(SafeCell.csv("a,b", ';')).isEqualTo("a,b");
    assertThat(SafeCell.csv("2\" pipe", ',')).isEqualTo("\"2\"\" pipe\"");
    assertThat(SafeCell.csv("=A1,B1", ',')).isEqualTo("\"'=A1,B1\"");
  }

  @Property(tries = 300)
  void noCellStartsLikeAFormulaAndAllReadBack(@ForAll String any) {
    String safe = SafeCell.text(any);
    assertThat(SafeCell.runs(safe)).isFalse();
    if (!any.startsWith("'") && any.codePoints().noneMatch(Character::isISOControl)) {
      assertThat(SafeCell.plain(safe)).isEqualTo(any);
    }
  }
}
