package spangle.audit;

import spangle.equipment.Span;
import spangle.equipment.WorkCalendar;

/** Whether work lies inside the hours of a station. */
final class Hours {
  private Hours() {}

  /** True when the stretch lies inside one open span; a stretch of no minutes may touch its end. */
  static boolean within(WorkCalendar calendar, int startMin, int endMin) {
    for (Span span : calendar.open()) {
      if (startMin >= span.startMin() && endMin <= span.endMin() && startMin <= endMin) {
        return true;
      }
    }
    return false;
  }
}
