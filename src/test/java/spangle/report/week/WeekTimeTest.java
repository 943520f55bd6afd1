package spangle.report.week;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import org.junit.jupiter.api.Test;

class WeekTimeTest {
  private final WeekTime time = new WeekTime(LocalDate.of(2026, 11, 30));

  @Test
  void midnightBelongsToTheDayItEndsWhenWorkIsDue() {
    assertThat(time.due(3 * 1440)).isEqualTo("Wed 24:00");
    assertThat(time.due(0)).isEqualTo("Sun 29 Nov 24:00");
    assertThat(time.due(3 * 1440 + 1)).isEqualTo("Thu 00:01");
  }

  @Test
  void midnightBeginsADayWhenWorkStarts() {
    assertThat(time.at(3 * 1440)).isEqualTo("Thu 00:00");
  }
}
