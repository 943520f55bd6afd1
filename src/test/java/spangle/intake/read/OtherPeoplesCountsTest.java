package spangle.intake.read;

import static org.assertj.core.api.Assertions.assertThat;
import static spangle.intake.read.OtherLists.codes;
import static spangle.intake.read.OtherLists.parts;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import spangle.intake.problem.Problem;

/** Counts of pieces as people write them: read where they have one meaning, else refused. */
class OtherPeoplesCountsTest {
  @TempDir Path folder;

  private WeekReader.Reading qty(String qty) {
    return WeekFiles.rows(
            folder,
            "J-1,,A,\"" + qty + "\",steel,3,plate 160x120 mm,,,powder,P-GREY,,fri,no,no,,,,")
        .read();
  }

  @ParameterizedTest
  @CsvSource({
    "12, 12",
    "12.0, 12",
    "2.0 dz, 24",
    "1\u202f200, 1200",
    "1'000 pcs, 1000",
    "25 pcs, 25",
    "30 off, 30",
    "8 ea, 8",
    "2 dz, 24",
    "'1,200', 1200",
    "1.250, 1250",
    "1 200, 1200",
    "'12,500 pcs', 12500"
  })
  void countsAsPeopleWriteThem(String written, int pieces) {
    assertThat(parts(qty(written)).get(0).qty()).isEqualTo(pieces);
  }

  /** 1,000 is a thousand, or one with three decimals, as some programs write it. */
  @ParameterizedTest
  @CsvSource({
    "'1,000'",
    "12.000",
    "1.250 dz",
    "'1,500 dozen'",
    "2 x 30",
    "1 lot",
    "2 sets",
    "3 pallets",
    "1.5",
    "'12,50'",
    "0",
    "-3"
  })
  void whatIsNoCountOrTwoIsRefused(String written) {
    assertThat(codes(qty(written))).containsExactly("not-a-count " + written);
  }

  @Test
  void twoReadingsOfACountAreShown() {
    assertThat(qty("12.000").problems())
        .extracting(Problem::why)
        .containsExactly("this may be 12 or 12000 pieces; nothing is assumed for it");
  }
}
