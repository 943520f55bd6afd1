package spangle.plan.clock;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import spangle.equipment.Span;
import spangle.equipment.WorkCalendar;

/** Places in a calendar, against the same found minute by minute. */
class HoursTest {
  private static final int HORIZON = 700;

  @Property(tries = 500)
  void theFirstMinuteThatServesIsFound(
      @ForAll @Size(min = 1, max = 12) List<@IntRange(min = 1, max = 90) Integer> stretches,
      @ForAll @IntRange(max = 800) int notBefore,
      @ForAll @IntRange(max = 800) int free,
      @ForAll @IntRange(max = 20) int setup,
      @ForAll @IntRange(max = 80) int work) {
    List<Span> open = new ArrayList<>();
    int minute = 0;
    for (int k = 0; k + 1 < stretches.size(); k += 2) {
      int from = minute + stretches.get(k);
      minute = from + stretches.get(k + 1);
      open.add(new Span(from, minute));
    }
    Hours hours = new Hours(new WorkCalendar(open), HORIZON);

    assertThat(hours.place(notBefore, free, setup, work))
        .isEqualTo(byMinutes(open, notBefore, free, setup, work));
  }

  private static int byMinutes(List<Span> open, int notBefore, int free, int setup, int work) {
    for (int start = Math.max(notBefore, free + setup); start + work <= HORIZON; start++) {
      for (Span span : open) {
        if (start - setup >= span.startMin() && start + work <= span.endMin()) {
          return start;
        }
      }
    }
    return Hours.NEVER;
  }
}
