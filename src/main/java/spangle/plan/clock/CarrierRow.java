package spangle.plan.clock;

/** The numbered carriers of a kind: which one a load takes, when it is free again. */
final class CarrierRow {
  private CarrierRow() {}

  /** The lowest number that is free by then, else the one that is free first. */
  static int take(StateMap map, int[] state, CarrierFacts carrier, int by) {
    int best = 0;
    int first = map.carrierFree + carrier.firstNumber;
    for (int n = 0; n < carrier.spec.owned(); n++) {
      if (state[first + n] <= by) {
        return n;
      }
      if (state[first + n] < state[first + best]) {
        best = n;
      }
    }
    return best;
  }

  /**
   * The load on it has come to its end: it is free then, or once it is stripped. One the clock gave
   * to the load stands at never; by the log a carrier can also have had two loads at once, and is
   * free when the last of them is off.
   */
  static void giveBack(StateMap map, int[] state, CarrierFacts carrier, int number, int endMin) {
    int uses = ++state[map.carrierUses + carrier.firstNumber + number];
    int every = carrier.spec.stripAfterCycles();
    boolean stripped = every > 0 && uses % every == 0;
    int place = map.carrierFree + carrier.firstNumber + number;
    int free = endMin + (stripped ? carrier.spec.stripMin() : 0);
    state[place] = state[place] == Hours.NEVER ? free : Math.max(state[place], free);
  }
}
