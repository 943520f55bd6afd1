package spangle.plan;

import java.util.List;

/**
 * A line: loads pass the stations before the machine in this order, then one machine (oven or
 * kettle) as a batch, then the stations after it. Every load visits a station in the order it is
 * fed to the line.
 *
 * @param id unique in the week
 * @param name words for the sheet
 * @param kind what it does
 * @param before stations ahead of the machine, in order; empty where loads go straight in
 * @param machines ovens or kettles side by side
 * @param after stations behind the machine, in order
 * @param settings what the machines can be set to
 * @param settingChange from-to changes of the setting, by {@link Setting#index()}
 */
public record LineSpec(
    String id,
    String name,
    LineKind kind,
    List<StationSpec> before,
    List<MachineSpec> machines,
    List<StationSpec> after,
    List<Setting> settings,
    SetupTable settingChange) {
  /**
   * Most ovens or kettles side by side on one line: which of them take a load is kept in a word.
   */
  public static final int MOST_MACHINES = Long.SIZE;

  /** Copies the lists. */
  public LineSpec {
    before = List.copyOf(before);
    machines = List.copyOf(machines);
    after = List.copyOf(after);
    settings = List.copyOf(settings);
  }

  /** The same with other stations and machines. */
  public LineSpec with(
      List<StationSpec> stationsBefore,
      List<MachineSpec> otherMachines,
      List<StationSpec> stationsAfter) {
    return new LineSpec(
        id, name, kind, stationsBefore, otherMachines, stationsAfter, settings, settingChange);
  }

  /** The same with other minutes between settings. */
  public LineSpec changing(SetupTable others) {
    return new LineSpec(id, name, kind, before, machines, after, settings, others);
  }
}
