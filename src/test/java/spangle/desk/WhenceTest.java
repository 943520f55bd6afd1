package spangle.desk;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** What pieces were before they came onto a load is not read as what they are now. */
class WhenceTest {
  @Test
  void whatKeptThemOffEveryLoadIsOver() {
    Whence held = new Whence(Whence.How.HELD, "held by the paper mill");
    assertThat(held.said()).isEqualTo("held: held by the paper mill");
    assertThat(held.sofar()).isEqualTo("until now held: held by the paper mill");
    assertThat(new Whence(Whence.How.SCRAPPED, "6 of 9").sofar())
        .isEqualTo("until now scrapped: 6 of 9");
    assertThat(new Whence(Whence.How.LEFT_OUT, "").sofar()).isEqualTo("until now left out");
  }

  @Test
  void whatTheyDidBeforeStaysAsItIs() {
    assertThat(Whence.of(Whence.How.REJECTED).sofar()).isEqualTo("rejected");
    assertThat(Whence.of(Whence.How.STRIPPED).sofar()).isEqualTo("stripped");
    assertThat(Whence.of(Whence.How.UNPLANNED).sofar()).isEqualTo("not in the plan");
  }
}
