package spangle.desk;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import spangle.fit.FitAnswer;
import spangle.fit.Verdict;

class HeadStartTest {

  /** A part that goes in level would leave the search for angles unloaded. */
  @Test
  void looksForTheTiltToo() {
    assertThat(HeadStart.answerOnce()).map(FitAnswer::verdict).contains(Verdict.TILTED);
  }
}
