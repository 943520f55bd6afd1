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
        "\uFF1D1"
      })
  void textThatASpreadsheetWouldRunIsNeutralised(String formula) {
    assertThat(SafeCell.text(formula)).startsWith("'").endsWith(formula.strip());
  }

  @ParameterizedTest
  @ValueSource(strings = {"ladder bracket", "-5", "+3.2", "1e-3", "J-101", "", "a=b"})
  void plainTextAndNumbersStayAsTheyAre(String text) {
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
  void noCellStartsLikeAFormulaUnlessItIsANumber(@ForAll String any) {
    String safe = SafeCell.text(any);
    boolean number = safe.matches("[+-][0-9].*");
    assertThat(
            number
                || safe.stripLeading().isEmpty()
                || "=+-@".indexOf(safe.stripLeading().charAt(0)) < 0)
        .isTrue();
  }
}
