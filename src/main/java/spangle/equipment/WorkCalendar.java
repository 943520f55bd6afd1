package spangle.equipment;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * When a station is manned or free: spans in time order that do not overlap. Work is never
 * interrupted, so a visit lies inside one span; spans that only touch count as two.
 */
public record WorkCalendar(List<Span> open) {
  /** Returned where no span is left that is long enough. */
  public static final int NEVER = Integer.MAX_VALUE;

  /** Refuses spans out of order or overlapping. */
  public WorkCalendar {
    open = List.copyOf(open);
    for (int i = 1; i < open.size(); i++) {
      if (open.get(i).startMin() < open.get(i - 1).endMin()) {
        throw new IllegalArgumentException("calendar spans overlap or are out of order: " + open);
      }
    }
  }

  /** A station that is there at any time up to the horizon. */
  public static WorkCalendar always(int horizonMin) {
    return new WorkCalendar(List.of(new Span(0, horizonMin)));
  }

  /**
   * Open in all these hours, whatever their order: those that overlap or follow one another without
   * a break become one span.
   */
  public static WorkCalendar joining(List<Span> hours) {
    List<Span> sorted = new ArrayList<>(hours);
    sorted.sort(Comparator.comparingInt(Span::startMin));
    List<Span> joined = new ArrayList<>();
    for (Span span : sorted) {
      int last = joined.size() - 1;
      if (last >= 0 && span.startMin() <= joined.get(last).endMin()) {
        Span before = joined.get(last);
        joined.set(last, new Span(before.startMin(), Math.max(before.endMin(), span.endMin())));
      } else {
        joined.add(span);
      }
    }
    return new WorkCalendar(joined);
  }

  /** Whether one span holds all of a stay. */
  public boolean holds(int startMin, int endMin) {
    return open.stream().anyMatch(span -> span.startMin() <= startMin && endMin <= span.endMin());
  }

  /** The first minute from {@code fromMin} on at which work of that length fits into one span. */
  public int earliestStart(int fromMin, int minutes) {
    for (Span span : open) {
      int start = Math.max(fromMin, span.startMin());
      if ((long) start + minutes <= span.endMin()) {
        return start;
      }
    }
    return NEVER;
  }

  /** Minutes open in all. */
  public int minutesOpen() {
    return open.stream().mapToInt(Span::minutes).sum();
  }

  /** The calendar without a blocked stretch (maintenance, a breakdown, an absence). */
  public WorkCalendar without(Span blocked) {
    List<Span> left = new ArrayList<>();
    for (Span span : open) {
      if (!span.overlaps(blocked)) {
        left.add(span);
        continue;
      }
      if (span.startMin() < blocked.startMin()) {
        left.add(new Span(span.startMin(), blocked.startMin()));
      }
      if (blocked.endMin() < span.endMin()) {
        left.add(new Span(blocked.endMin(), span.endMin()));
      }
    }
    return new WorkCalendar(left);
  }

  /** Open whenever this or the other is. */
  public WorkCalendar or(WorkCalendar other) {
    List<Span> both = new ArrayList<>(open);
    both.addAll(other.open);
    return joining(both);
  }
}
