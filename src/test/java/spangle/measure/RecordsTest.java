package spangle.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class RecordsTest {

  @Test
  void boxKnowsItsSidesInOrder() {
    Box box = new Box(800, 1000, 300);
    assertThat(box.longestMm()).isEqualTo(1000);
    assertThat(box.middleMm()).isEqualTo(800);
    assertThat(box.shortestMm()).isEqualTo(300);
    assertThat(box.volumeM3()).isCloseTo(0.24, within(1e-12));
    assertThat(new Box(3, 2, 1).middleMm()).isEqualTo(2);
    assertThat(new Box(1, 3, 2).middleMm()).isEqualTo(2);
  }

  @Test
  void boxRefusesSidesThatAreNone() {
    assertThatThrownBy(() -> new Box(0, 1, 1)).hasMessageContaining("length");
    assertThatThrownBy(() -> new Box(1, -1, 1)).hasMessageContaining("width");
    assertThatThrownBy(() -> new Box(1, 1, Double.NaN)).hasMessageContaining("height");
    assertThatThrownBy(() -> new Box(1, 1, Double.POSITIVE_INFINITY))
        .isInstanceOf(MeasureException.class);
  }

  @Test
  void intervalsIntersectAtTheirEnds() {
    Interval ten = new Interval(5, 10);
    assertThat(ten.intersect(new Interval(10, 20))).contains(new Interval(10, 10));
    assertThat(ten.intersect(new Interval(10.1, 20))).isEmpty();
    assertThat(ten.contains(5)).isTrue();
    assertThat(ten.contains(10)).isTrue();
    assertThat(ten.contains(10.01)).isFalse();
    assertThat(ten.contains(4.99)).isFalse();
    assertThat(ten.width()).isEqualTo(5);
    assertThat(ten.middle()).isEqualTo(7.5);
    assertThat(ten.shift(2)).isEqualTo(new Interval(7, 12));
  }

  @Test
  void intervalRefusesDisorder() {
    assertThatThrownBy(() -> new Interval(2, 1)).isInstanceOf(MeasureException.class);
    assertThatThrownBy(() -> new Interval(Double.NaN, 1)).isInstanceOf(MeasureException.class);
  }

  @Test
  void rangesAddAndScaleEndByEnd() {
    LowLikelyHigh range = new LowLikelyHigh(1, 2, 4);
    assertThat(range.plus(LowLikelyHigh.exactly(3))).isEqualTo(new LowLikelyHigh(4, 5, 7));
    assertThat(range.plus(LowLikelyHigh.exactly(0))).isEqualTo(range);
    assertThat(range.times(2)).isEqualTo(new LowLikelyHigh(2, 4, 8));
    assertThat(range.map(Math::ceil)).isEqualTo(range);
    assertThatThrownBy(() -> new LowLikelyHigh(3, 2, 4)).isInstanceOf(MeasureException.class);
    assertThatThrownBy(() -> new LowLikelyHigh(1, 5, 4)).isInstanceOf(MeasureException.class);
  }

  @Test
  void figuresDoNotDependOnTheMachine() {
    assertThat(Figures.fixed(2.345, 2)).isEqualTo("2.35");
    assertThat(Figures.fixed(1234567.5, 1)).isEqualTo("1234567.5");
    assertThat(Figures.fixed(-0.001, 2)).isEqualTo("0.00");
    assertThat(Figures.fixed(Double.NaN, 2)).isEqualTo("NaN");
    assertThat(Figures.upTo(12.50, 2)).isEqualTo("12.5");
    assertThat(Figures.upTo(100, 2)).isEqualTo("100");
    assertThat(Figures.upTo(Double.POSITIVE_INFINITY, 1)).isEqualTo("Infinity");
    assertThat(Figures.significant(1130.4, 3)).isEqualTo("1130");
    assertThat(Figures.significant(0.0123456, 3)).isEqualTo("0.0123");
    assertThat(Figures.significant(Double.NaN, 3)).isEqualTo("NaN");
    assertThat(Figures.rounded(1.00049, 3)).isEqualTo(1.0);
    assertThat(Figures.rounded(Double.POSITIVE_INFINITY, 3)).isEqualTo(Double.POSITIVE_INFINITY);
  }
}
