package spangle.plan.clock;

import spangle.plan.CarrierSpec;

/** A kind of carrier as the clock needs it. */
public final class CarrierFacts {
  /** Place in {@link Floor#carriers}. */
  public final int index;

  /** The carrier itself. */
  public final CarrierSpec spec;

  /** Whether there are so few, or they are stripped so often, that the clock must count them. */
  public final boolean counted;

  /** Place of number 1 of it in its line's state. */
  final int firstNumber;

  CarrierFacts(int index, CarrierSpec spec, boolean counted, int firstNumber) {
    this.index = index;
    this.spec = spec;
    this.counted = counted;
    this.firstNumber = firstNumber;
  }
}
