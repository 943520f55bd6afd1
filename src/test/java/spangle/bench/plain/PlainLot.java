package spangle.bench.plain;

import spangle.plan.clock.Load;
import spangle.plan.clock.LotFacts;

/** A lot as an element of an oven's list. */
public final class PlainLot {
  final LotFacts lot;
  final Load load;
  final int setting;

  PlainLot(LotFacts lot, Load load) {
    this.lot = lot;
    this.load = load;
    int runs = 0;
    while (load.dwellMin[runs] < 0) {
      runs++;
    }
    this.setting = runs;
  }

  @Override
  public String toString() {
    return lot.lot.id();
  }
}
