package spangle.plan.clock;

import java.util.List;
import spangle.equipment.Span;
import spangle.equipment.WorkCalendar;

/** A calendar as arrays, with the one rule by which anything is placed in time. */
final class Hours {
  /** No span is long enough. */
  static final int NEVER = WorkCalendar.NEVER;

  private final int[] open;
  private final int[] close;

  Hours(WorkCalendar calendar, int horizonMin) {
    List<Span> spans =
        calendar.open().stream()
            .filter(s -> s.startMin() < horizonMin && s.endMin() > s.startMin())
            .toList();
    open = spans.stream().mapToInt(Span::startMin).toArray();
    close = spans.stream().mapToInt(s -> Math.min(s.endMin(), horizonMin)).toArray();
  }

  /**
   * The earliest start of work, such that it starts no sooner than {@code notBefore}, its set-up
   * lies directly before it and no sooner than {@code free}, and both lie together in one span.
   */
  int place(int notBefore, int free, int setupMin, int workMin) {
    int base = Math.max(notBefore, free + setupMin);
    int from = 0;
    int to = close.length;
    while (from < to) {
      int middle = (from + to) >>> 1;
      if (close[middle] < base + workMin) {
        from = middle + 1;
      } else {
        to = middle;
      }
    }
    for (int k = from; k < close.length; k++) {
      int start = Math.max(base, open[k] + setupMin);
      if (start + workMin <= close[k]) {
        return start;
      }
    }
    return NEVER;
  }

  /** Minutes open in all. */
  int minutes() {
    int sum = 0;
    for (int k = 0; k < open.length; k++) {
      sum += close[k] - open[k];
    }
    return sum;
  }
}
