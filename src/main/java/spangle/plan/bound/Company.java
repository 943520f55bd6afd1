package spangle.plan.bound;

import spangle.plan.CarrierSpec;
import spangle.plan.MachineSpec;

/** Says of two lots that they can never share a machine, or never a carrier. */
final class Company {
  /** Sums may be this much over a limit before they count as too large. */
  private static final double SLACK = 1e-6;

  private Company() {}

  /** Whether nothing in their papers keeps them out of one machine at one time. */
  static boolean kindsMeet(OpenLot a, OpenLot b) {
    if (!a.lot.batchGroup().equals(b.lot.batchGroup())) {
      return false;
    }
    boolean window = false;
    for (int s = 0; s < a.dwellMin.length && !window; s++) {
      window =
          a.dwellMin[s] >= 0
              && b.dwellMin[s] >= 0
              && Math.max(a.dwellMin[s], b.dwellMin[s]) <= Math.min(a.dwellMax[s], b.dwellMax[s]);
    }
    return window && (a.machineBits & b.machineBits) != 0;
  }

  /** Whether they may be in one batch together, sizes counted. */
  static boolean mayShareMachine(OpenLot a, OpenLot b) {
    if (!kindsMeet(a, b)) {
      return false;
    }
    if (mayShareCarrier(a, b)) {
      return true;
    }
    for (int m = 0; m < a.line.machines().size(); m++) {
      if ((a.machineBits & b.machineBits & 1L << m) != 0 && goIn(a, b, a.line.machines().get(m))) {
        return true;
      }
    }
    return false;
  }

  /** Whether both go in on carriers of their own. */
  private static boolean goIn(OpenLot a, OpenLot b, MachineSpec machine) {
    for (CarrierSpec one : a.carriers) {
      for (CarrierSpec other : b.carriers) {
        double kg = a.lot.massKg() + b.lot.massKg() + one.ownMassKg() + other.ownMassKg();
        if (one.floorUnits() + other.floorUnits() <= machine.capacityUnits()
            && kg <= machine.maxMassKg() * (1 + SLACK) + SLACK) {
          return true;
        }
      }
    }
    return false;
  }

  /** Whether they may hang on one carrier together, as far as sums can tell. */
  static boolean mayShareCarrier(OpenLot a, OpenLot b) {
    if (a.lot.alone()
        || b.lot.alone()
        || !a.lot.finish().key().equals(b.lot.finish().key())
        || !kindsMeet(a, b)) {
      return false;
    }
    if (a.massShare + b.massShare > 1 + SLACK
        || a.roomShare + b.roomShare > 1 + SLACK
        || a.hookShare + b.hookShare > 1 + SLACK) {
      return false;
    }
    return a.sharesCarrierKind(b);
  }
}
