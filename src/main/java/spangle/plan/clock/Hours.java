package spangle.plan.clock;

import java.util.List;
import spangle.equipment.Span;
import spangle.equipment.WorkCalendar;

/** A calendar as arrays, with the one rule by which anything is placed in time. */
final class Hours {
  /** No span is long enough. */
  static final int NEVER = WorkCalendar.NEVER;

  /** Minutes, as a power of two, of a step of {@link #first}. */
  private static final int STEP = 6;

  private final int[] open;
  private final int[] close;

  /** By steps of the week: the first span that closes in that step or later. */
  private final int[] first;

  Hours(WorkCalendar calendar, int horizonMin) {
    List<Span> spans =
        calendar.open().stream()
            .filter(s -> s.startMin() < horizonMin && s.endMin() > s.startMin())
            .toList();
    open = spans.stream().mapToInt(Span::startMin).toArray();
    close = spans.stream().mapToInt(s -> Math.min(s.endMin(), horizonMin)).toArray();
    first = new int[(Math.max(0, horizonMin) >>> STEP) + 1];
    int k = 0;
    for (int step = 0; step < first.length; step++) {
      while (k < close.length && close[k] >>> STEP < step) {
        k++;
      }
      first[step] = k;
    }
  }

  /**
   * The earliest start of work, such that it starts no sooner than {@code notBefore}, its set-up
   * lies directly before it and no sooner than {@code free}, and both lie together in one span.
   */
  int place(int notBefore, int free, int setupMin, int workMin) {
    int base = Math.max(notBefore, free + setupMin);
    int step = (base + workMin) >>> STEP;
    if (step >= first.length) {
      return NEVER;
    }
    for (int k = first[step]; k < close.length; k++) {
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
