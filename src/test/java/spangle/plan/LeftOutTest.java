package spangle.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import java.util.OptionalInt;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import spangle.plan.clock.Loss;

/** Whatever is left out has a date, or what it waits for. */
class LeftOutTest {
  private static LeftOut left(String code, OptionalInt earliest) {
    return new LeftOut("J-1/P#1", code, "words", earliest);
  }

  @Test
  void everyReasonWithoutADateSaysItsCondition() {
    List<String> codes =
        Stream.concat(
                Arrays.stream(Loss.values()).map(Loss::code), Stream.of("no-place", "half-route"))
            .toList();

    assertThat(codes)
        .hasSize(9)
        .allSatisfy(
            code ->
                assertThat(left(code, OptionalInt.empty()).condition())
                    .as(code)
                    .isNotBlank()
                    .doesNotStartWith("nothing is known"));
    assertThat(codes.stream().map(c -> left(c, OptionalInt.empty()).condition()))
        .doesNotHaveDuplicates();
  }

  @Test
  void whereThereIsADateNoConditionIsSaid() {
    assertThat(left("no-time", OptionalInt.of(9_000)).condition()).isEmpty();
  }

  @Test
  void aReasonOfAnotherVersionOfTheProgramIsNotInventedUpon() {
    assertThat(left("moon-phase", OptionalInt.empty()).condition())
        .isEqualTo("nothing is known that would bring it in");
  }
}
