package spangle.equipment;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class PaceTest {
  @Test
  void aSlowerVisitTakesEveryMinuteSoManyTimes() {
    Pace slower = new Pace(10, 0.5, 2, 0.1).times(1.5);

    assertThat(slower).isEqualTo(new Pace(15, 0.75, 3, 0.1 * 1.5));
    assertThat(slower.variableMin(4, 1, 10)).isEqualTo(4 * 0.75 + 3 + 1.5);
  }
}
