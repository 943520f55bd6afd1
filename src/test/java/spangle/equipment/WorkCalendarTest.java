package spangle.equipment;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class WorkCalendarTest {
  private static WorkCalendar open(int... bounds) {
    Span[] spans = new Span[bounds.length / 2];
    for (int i = 0; i < spans.length; i++) {
      spans[i] = new Span(bounds[2 * i], bounds[2 * i + 1]);
    }
    return new WorkCalendar(List.of(spans));
  }

  @Test
  void hoursThatOverlapOrFollowOneAnotherBecomeOne() {
    assertThat(open(360, 500, 600, 840).or(open(480, 620))).isEqualTo(open(360, 840));
    assertThat(open(360, 600).or(open(600, 840))).isEqualTo(open(360, 840));
    assertThat(open(360, 600).or(open(601, 840))).isEqualTo(open(360, 600, 601, 840));
    assertThat(open(360, 840).or(open(400, 500))).isEqualTo(open(360, 840));
    assertThat(open().or(open(360, 840))).isEqualTo(open(360, 840));
  }

  @Test
  void hoursCanBeGivenInAnyOrder() {
    assertThat(WorkCalendar.joining(List.of(new Span(600, 840), new Span(360, 600))))
        .isEqualTo(open(360, 840));
  }

  @Test
  void aStayLiesInsideOneSpan() {
    WorkCalendar hours = open(360, 600, 600, 840);
    assertThat(hours.holds(360, 600)).isTrue();
    assertThat(hours.holds(599, 601)).isFalse();
    assertThat(hours.holds(359, 400)).isFalse();
    assertThat(hours.holds(830, 841)).isFalse();
  }
}
