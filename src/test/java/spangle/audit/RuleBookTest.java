package spangle.audit;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class RuleBookTest {
  @Test
  void everyRuleHasItsOwnNameAndWords() {
    assertThat(RuleBook.entries())
        .extracting(RuleBook.Entry::name)
        .doesNotHaveDuplicates()
        .allMatch(name -> name.matches("[a-z]+(-[a-z]+)*"));
    assertThat(RuleBook.entries())
        .extracting(RuleBook.Entry::words)
        .doesNotHaveDuplicates()
        .allMatch(words -> words.endsWith("."));
  }

  @Test
  void timesAreSpokenAsInTheShop() {
    assertThat(Words.at(0)).isEqualTo("Mon 00:00");
    assertThat(Words.at(24 * 60 + 9 * 60 + 5)).isEqualTo("Tue 09:05");
    assertThat(Words.at(7 * 24 * 60 + 60)).isEqualTo("Mon 01:00 of week 2");
    assertThat(Words.at(-5)).isEqualTo("-5 min");
    assertThat(Words.number(60.10)).isEqualTo("60.1");
    assertThat(Words.number(-0.0004)).isEqualTo("0");
    assertThat(Words.number(Double.POSITIVE_INFINITY)).isEqualTo("infinite");
  }
}
