package spangle.plan.clock;

import java.util.ArrayList;
import java.util.List;
import spangle.plan.LineKind;
import spangle.plan.LineSpec;
import spangle.plan.MachineSpec;
import spangle.plan.StationSpec;

/** A line as the clock needs it. */
public final class LineFacts {
  /** Place in {@link Floor#lines}. */
  public final int index;

  /** The line itself. */
  public final LineSpec spec;

  /** Its machines. */
  public final MachineFacts[] machines;

  /** Number of settings. */
  public final int settings;

  /** Minutes of setting changes, from-to. */
  public final int[][] settingMin;

  /** Cost of setting changes, from-to. */
  public final int[][] settingCost;

  /** Stations ahead of the machine, then those behind it. */
  final StationFacts[] stations;

  final int ahead;
  final int places;

  LineFacts(int index, LineSpec spec, int horizonMin) {
    this.index = index;
    this.spec = spec;
    this.settings = spec.settings().size();
    if (spec.machines().size() > LineSpec.MOST_MACHINES) {
      throw new IllegalArgumentException(
          "line %s has %d machines; %d are the most a line may have"
              .formatted(spec.id(), spec.machines().size(), LineSpec.MOST_MACHINES));
    }
    List<MachineFacts> ovens = new ArrayList<>();
    for (MachineSpec machine : spec.machines()) {
      ovens.add(
          new MachineFacts(ovens.size(), machine, spec.kind() == LineKind.OUTSIDE, horizonMin));
    }
    this.machines = ovens.toArray(MachineFacts[]::new);
    this.settingMin = Tables.minutes(spec.settingChange());
    this.settingCost = Tables.costs(spec.settingChange());
    List<StationSpec> beside = new ArrayList<>(spec.before());
    beside.addAll(spec.after());
    List<StationFacts> facts = new ArrayList<>();
    int place = 0;
    for (StationSpec station : beside) {
      facts.add(new StationFacts(station, horizonMin, place));
      place += station.alike();
    }
    this.stations = facts.toArray(StationFacts[]::new);
    this.ahead = spec.before().size();
    this.places = place;
  }

  /** Id of a station beside the machine. */
  public String stationId(int station) {
    return stations[station].spec.id();
  }

  /** Number of stations beside the machine. */
  public int stationCount() {
    return stations.length;
  }

  /** Whether the zinc of one of its kettles may stand too low for a lot. */
  boolean hasBath() {
    for (MachineFacts machine : machines) {
      if (machine.bath != null) {
        return true;
      }
    }
    return false;
  }
}
