package spangle.audit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import spangle.plan.CarrierSpec;

/** A numbered carrier is in one place at a time, and away while it is stripped. */
final class CarrierInOnePlace extends Rule {
  CarrierInOnePlace() {
    super(
        "carrier-in-one-place",
        "A numbered carrier carries one load at a time, and none while it is stripped.",
        "Every lot finds a carrier");
  }

  private record Numbered(String carrierId, int number) {}

  @Override
  void check(PlanView view, Findings findings) {
    Map<Numbered, List<LoadView>> uses = new LinkedHashMap<>();
    for (LoadView load : view.loads()) {
      int number = load.load().carrierNumber();
      if (!load.frozen() && (number < 1 || number > load.carrier().owned())) {
        findings.add(
            load.id(),
            "hangs on number "
                + number
                + " of "
                + load.carrier().id()
                + "; the shop owns "
                + load.carrier().owned());
      }
      uses.computeIfAbsent(new Numbered(load.carrier().id(), number), n -> new ArrayList<>())
          .add(load);
    }
    uses.forEach((numbered, loads) -> checkUses(numbered, loads, findings));
  }

  private static void checkUses(Numbered numbered, List<LoadView> loads, Findings findings) {
    loads.sort(Comparator.comparingInt(LoadView::firstMin).thenComparingInt(LoadView::endMin));
    CarrierSpec carrier = loads.get(0).carrier();
    LoadView last = loads.get(0);
    long free = free(last, carrier, 1);
    for (int i = 1; i < loads.size(); i++) {
      LoadView after = loads.get(i);
      if (after.firstMin() < free && !(last.frozen() && after.frozen())) {
        findings.add(
            after.id(),
            "hangs on "
                + numbered.carrierId()
                + " number "
                + numbered.number()
                + " from "
                + Words.at(after.firstMin())
                + "; it is free after "
                + last.id()
                + (free > last.endMin() ? " and its stripping from " : " from ")
                + Words.at(free));
      }
      // Of loads that were reported, one that hung later may have come off sooner.
      long next = free(after, carrier, i + 1);
      if (next >= free) {
        last = after;
        free = next;
      }
    }
  }

  /** When the carrier is free after its load number n. */
  private static long free(LoadView load, CarrierSpec carrier, int n) {
    int every = carrier.stripAfterCycles();
    return (long) load.endMin() + (every > 0 && n % every == 0 ? carrier.stripMin() : 0);
  }
}
