package spangle.intake.read;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class SectionNamesTest {
  @ParameterizedTest
  @CsvSource({
    "50x50x2 SHS 1200 mm long, section shs50x50x2 x 1200 mm",
    "SHS 50x50x2 x 1200 mm, section shs50x50x2 x 1200 mm",
    "RHS 60x40x3 1.2m, section rhs60x40x3 x 1.2m",
    "CHS 48.3x3.2 L=1200mm, section chs48.3x3.2 x 1200mm",
    "L50x50x5 - 900 mm, section l50x50x5 x 900 mm",
    "UPN 100 x 600 mm, section upn100 x 600 mm",
    "HF SHS 50 x 50 x 3 @ 2 m, section hfshs50x50x3 x 2 m",
    "SHS 50x2 x 1200 mm, section shs50x2 x 1200 mm",
    "SHS 50x50x2 x 1200, section shs50x50x2 x 1200"
  })
  void aCutListsNameIsASection(String text, String spelled) {
    assertThat(SectionNames.spelled(text)).isEqualTo(spelled);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "plate 160x120 mm",
        "SHS 50x50x2",
        "L 50x50x5 mm",
        "RHS 60x40x3 mm",
        "CHS 48.3x3.2 mm",
        "UPN 100 x 50 x 6 mm",
        "UPN 100",
        "section SHS50x50x3 x 1200 mm",
        "2x SHS 50x50x2 x 1200 mm",
        "tube 50x50x1200 mm"
      })
  void anythingElseStays(String text) {
    assertThat(SectionNames.spelled(text)).isEqualTo(text);
  }
}
