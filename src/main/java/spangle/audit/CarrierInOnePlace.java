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
    for (int i = 1; i < loads.size(); i++) {
      LoadView before = loads.get(i - 1);
      LoadView after = loads.get(i);
      if (before.frozen() && after.frozen()) {
        continue;
      }
      boolean stripped = carrier.stripAfterCycles() > 0 && i % carrier.stripAfterCycles() == 0;
      long free = (long) before.endMin() + (stripped ? carrier.stripMin() : 0);
      if (after.firstMin() < free) {
        findings.add(
            after.id(),
            "hangs on "
                + numbered.carrierId()
                + " number "
                + numbered.number()
                + " from "
                + Words.at(after.firstMin())
                + "; it is free after "
                + before.id()
                + (stripped ? " and its stripping from " : " from ")
                + Words.at(free));
      }
    }
  }
}
