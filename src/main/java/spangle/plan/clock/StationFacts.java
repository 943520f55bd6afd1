package spangle.plan.clock;

import spangle.plan.StationSpec;

/** A station as the clock needs it. */
final class StationFacts {
  final StationSpec spec;
  final Hours hours;

  /** Set-up minutes and cost by state; one state where the station has no changes. */
  final int[][] setupMin;

  final int[][] setupCost;

  /** Place of its first place's entry in a line's state. */
  final int firstPlace;

  StationFacts(StationSpec spec, int horizonMin, int firstPlace) {
    this.spec = spec;
    this.hours = new Hours(spec.calendar(), horizonMin);
    this.setupMin = Tables.minutes(spec.setups());
    this.setupCost = Tables.costs(spec.setups());
    this.firstPlace = firstPlace;
  }

  boolean changes() {
    return setupMin.length > 1;
  }

  int stateFor(Load load) {
    return changes() ? load.finishIndex : 0;
  }
}
