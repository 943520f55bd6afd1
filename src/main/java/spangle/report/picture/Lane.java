package spangle.report.picture;

import java.util.List;
import spangle.equipment.WorkCalendar;

/**
 * One station, oven or kettle on a line chart.
 *
 * @param stationId what it shows
 * @param name words at its left
 * @param calendar when it is open
 * @param bars what it does
 */
record Lane(String stationId, String name, WorkCalendar calendar, List<Bar> bars) {
  Lane {
    bars = List.copyOf(bars);
  }
}
