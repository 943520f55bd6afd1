package spangle.plan.clock;

import spangle.equipment.WorkCalendar;
import spangle.plan.PlacesOut;
import spangle.plan.StationSpec;

/** A station as the clock needs it. */
final class StationFacts {
  final StationSpec spec;
  private final Hours hours;

  /** By place where some are out for a while; else empty. */
  private final Hours[] placeHours;

  /** Set-up minutes and cost by state; one state where the station has no changes. */
  final int[][] setupMin;

  final int[][] setupCost;

  /** Place of its first place's entry in a line's state. */
  final int firstPlace;

  StationFacts(StationSpec spec, int horizonMin, int firstPlace) {
    this.spec = spec;
    this.hours = new Hours(spec.calendar(), horizonMin);
    this.placeHours = new Hours[spec.out().isEmpty() ? 0 : spec.alike()];
    for (int place = 1; place <= placeHours.length; place++) {
      WorkCalendar calendar = spec.calendar();
      for (PlacesOut out : spec.out()) {
        boolean here = place > spec.alike() - out.places();
        calendar = here ? calendar.without(out.span()) : calendar;
      }
      placeHours[place - 1] = new Hours(calendar, horizonMin);
    }
    this.setupMin = Tables.minutes(spec.setups());
    this.setupCost = Tables.costs(spec.setups());
    this.firstPlace = firstPlace;
  }

  /** Hours of a place, counted from 0. */
  Hours hours(int place) {
    return placeHours.length == 0 ? hours : placeHours[place];
  }

  boolean changes() {
    return setupMin.length > 1;
  }

  int stateFor(Load load) {
    return changes() ? load.finishIndex : 0;
  }
}
