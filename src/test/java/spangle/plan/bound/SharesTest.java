package spangle.plan.bound;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;

class SharesTest {

  private static int fewest(double... shares) {
    return Shares.fewest(shares, shares.length);
  }

  @Test
  void halvesPairAndWhatIsOverAHalfDoesNot() {
    assertThat(fewest(0.5, 0.5, 0.5, 0.5)).isEqualTo(2);
    assertThat(fewest(0.51, 0.51, 0.51)).isEqualTo(3);
    assertThat(fewest(0.34, 0.34, 0.34)).isEqualTo(2);
    assertThat(fewest(1 / 3.0, 1 / 3.0, 1 / 3.0)).isEqualTo(1);
    assertThat(fewest()).isZero();
  }

  @Test
  void aSmallShareThatFindsNoRoomBesideTheLargeOnesCounts() {
    assertThat(fewest(0.7, 0.7, 0.4)).isEqualTo(3);
  }

  /** Bins packed on purpose are never fewer than the floor says. */
  @Property(tries = 500)
  void neverMoreThanAPackingNeeds(
      @ForAll @Size(min = 1, max = 14) List<@IntRange(min = 1, max = 60) Integer> sizes) {
    int[] largeFirst = sizes.stream().mapToInt(Integer::intValue).toArray();
    Arrays.sort(largeFirst);
    int[] room = new int[sizes.size()];
    Arrays.fill(room, 60);
    int used = 0;
    for (int i = largeFirst.length - 1; i >= 0; i--) {
      int bin = 0;
      while (room[bin] < largeFirst[i]) {
        bin++;
      }
      room[bin] -= largeFirst[i];
      used = Math.max(used, bin + 1);
    }

    double[] shares = sizes.stream().mapToDouble(s -> s / 60.0).toArray();

    assertThat(Shares.fewest(shares, shares.length)).isLessThanOrEqualTo(used);
  }
}
