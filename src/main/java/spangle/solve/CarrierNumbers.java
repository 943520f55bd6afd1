package spangle.solve;

import spangle.plan.PlannedBatch;
import spangle.plan.PlannedLoad;
import spangle.plan.clock.Floor;

/** Numbers for carriers so many that none is used twice; those of frozen loads are taken. */
final class CarrierNumbers {
  private final Floor floor;
  private final int[] last;

  CarrierNumbers(Floor floor) {
    this.floor = floor;
    this.last = new int[floor.carriers.length];
  }

  int next(int carrier) {
    String id = floor.carriers[carrier].spec.id();
    int number = ++last[carrier];
    while (taken(id, number)) {
      number = ++last[carrier];
    }
    return number;
  }

  private boolean taken(String carrierId, int number) {
    for (PlannedBatch batch : floor.brief.frozen()) {
      for (PlannedLoad load : batch.loads()) {
        if (load.carrierId().equals(carrierId) && load.carrierNumber() == number) {
          return true;
        }
      }
    }
    return false;
  }
}
