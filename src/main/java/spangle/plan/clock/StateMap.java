package spangle.plan.clock;

/** Where things stand in the state of a line that is walked whole: one array of whole numbers. */
final class StateMap {
  final int placeFree;
  final int placeState;
  final int lastStart;
  final int machineFree;
  final int machineHeat;
  final int machineSetting;
  final int carrierFree;
  final int carrierUses;
  final int bathDown;
  final int bathAt;
  final int size;

  StateMap(LineFacts line, int numbers) {
    placeFree = 0;
    placeState = placeFree + line.places;
    lastStart = placeState + line.places;
    machineFree = lastStart + line.stations.length;
    machineHeat = machineFree + line.machines.length;
    machineSetting = machineHeat + line.machines.length;
    carrierFree = machineSetting + line.machines.length;
    carrierUses = carrierFree + numbers;
    int baths = line.hasBath() ? line.machines.length : 0;
    bathDown = carrierUses + numbers;
    bathAt = bathDown + baths;
    size = bathAt + baths;
  }

  int[] atTheStart(LineFacts line) {
    int[] state = new int[size];
    for (StationFacts station : line.stations) {
      for (int p = 0; p < station.spec.alike(); p++) {
        state[placeState + station.firstPlace + p] =
            station.changes() ? station.spec.initialState() : 0;
      }
    }
    for (MachineFacts machine : line.machines) {
      state[machineSetting + machine.index] = machine.spec.initialSetting();
      if (machine.bath != null) {
        state[bathAt + machine.index] = -1;
      }
    }
    return state;
  }
}
