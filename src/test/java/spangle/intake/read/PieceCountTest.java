package spangle.intake.read;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import java.util.OptionalInt;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import spangle.intake.problem.Place;
import spangle.intake.read.ColumnRules.Decimal;
import spangle.intake.source.Datum;

/** Counts where the file says what its marks mean, and where a workbook does. */
class PieceCountTest {
  private static OptionalInt count(String text, String cell, Optional<Decimal> decimal) {
    Datum.Scalar scalar = new Datum.Scalar(new Place("jobs/a", 2, 3, cell), text);
    return PieceCount.of(scalar, text, decimal).pieces();
  }

  private static OptionalInt expected(@Nullable Integer pieces) {
    return pieces == null ? OptionalInt.empty() : OptionalInt.of(pieces);
  }

  @ParameterizedTest
  @CsvSource({
    "COMMA, 1.250, 1250",
    "COMMA, '1.250,00', 1250",
    "COMMA, 12.000, 12000",
    "COMMA, '12,000', 12",
    "COMMA, 1\u2019000 Stk, 1000",
    "POINT, 1 000.0, 1000",
    "POINT, 1 00, ",
    "COMMA, '1,250', ",
    "COMMA, '1,5', ",
    "COMMA, 1.5, ",
    "POINT, '1,250', 1250",
    "POINT, '1,250.00 pcs', 1250",
    "POINT, '12,000', 12000",
    "POINT, 12.000, 12",
    "POINT, 1.250, ",
    "POINT, '1,250 dz', 15000",
    "POINT, '12,50', "
  })
  void marksMeanWhatTheFileSays(Decimal decimal, String text, @Nullable Integer pieces) {
    assertThat(count(text, "", Optional.of(decimal))).isEqualTo(expected(pieces));
  }

  /** A workbook stores 1.125 for one and an eighth, never for a thousand. */
  @ParameterizedTest
  @CsvSource({"1.125, ", "1125, 1125", "12.0, 12"})
  void aStoredNumberIsWhatItIs(String text, @Nullable Integer pieces) {
    assertThat(count(text, "Jobs!C2", Optional.empty())).isEqualTo(expected(pieces));
    assertThat(count(text, "Jobs!C2", Optional.of(Decimal.COMMA))).isEqualTo(expected(pieces));
  }
}
