package spangle.plan.event;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class LotNamesTest {
  @Test
  void workIsPartEventOfARejectionAndLegWhateverTheNumber() {
    assertThat(LotNames.work("J/A#1")).isEqualTo(LotNames.work("J/A#12")).isEqualTo("J/A#");
    assertThat(LotNames.work("J/A#3.2")).isEqualTo("J/A#.2");
    assertThat(LotNames.work("J/A#r4-2")).isEqualTo(LotNames.work("J/A#r4")).isEqualTo("J/A#r4");
    assertThat(LotNames.work("J/A#r4-2.1")).isEqualTo("J/A#r4.1");
    assertThat(LotNames.work("z")).isEqualTo("z");
  }
}
