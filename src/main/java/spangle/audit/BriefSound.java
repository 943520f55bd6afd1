package spangle.audit;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import spangle.plan.CarrierSpec;
import spangle.plan.LineSpec;
import spangle.plan.Lot;
import spangle.plan.MachineSpec;
import spangle.plan.SetupTable;
import spangle.plan.StationSpec;

/** The brief itself holds together: without that no other rule can be asked. */
final class BriefSound extends Rule {
  BriefSound() {
    super(
        "brief-sound",
        "The brief holds together: every name stands for one thing, every set-up table is square"
            + " and has the states its stations, machines and settings name.",
        "");
  }

  @Override
  void check(PlanView view, Findings findings) {
    check(view.brief().lines(), findings);
    Set<String> carriers = new HashSet<>();
    for (CarrierSpec carrier : view.brief().carriers()) {
      once("carrier", carrier.id(), carriers, findings);
    }
    Set<String> lots = new HashSet<>();
    for (Lot lot : view.brief().lots()) {
      once("lot", lot.id(), lots, findings);
    }
  }

  private static void check(List<LineSpec> lines, Findings findings) {
    Set<String> lineIds = new HashSet<>();
    Set<String> places = new HashSet<>();
    for (LineSpec line : lines) {
      once("line", line.id(), lineIds, findings);
      square(line.id(), line.settingChange(), findings);
      int settings = line.settings().size();
      for (int i = 0; i < settings; i++) {
        if (line.settings().get(i).index() != i) {
          findings.add(line.id(), "its settings are not numbered from 0 on");
        }
      }
      if (line.settingChange().states().size() != settings) {
        findings.add(line.id(), "its table of setting changes does not match its settings");
      }
      for (MachineSpec machine : line.machines()) {
        once("machine", machine.id(), places, findings);
        state(machine.id(), machine.initialSetting(), settings, findings);
      }
      for (StationSpec station : PlanView.beside(line)) {
        once("station", station.id(), places, findings);
        square(station.id(), station.setups(), findings);
        state(station.id(), station.initialState(), station.setups().states().size(), findings);
      }
    }
  }

  private static void once(String what, String id, Set<String> seen, Findings findings) {
    if (!seen.add(id)) {
      findings.add(id, "the brief holds two of this name; the second is a " + what);
    }
  }

  private static void state(String id, int state, int states, Findings findings) {
    if (state < 0 || state >= states) {
      findings.add(
          id, "stands at state number " + state + " of " + states + " at the week's start");
    }
  }

  private static void square(String id, SetupTable table, Findings findings) {
    int states = table.states().size();
    boolean square =
        states > 0
            && table.minutes().size() == states
            && table.costs().size() == states
            && table.minutes().stream().allMatch(row -> row.size() == states)
            && table.costs().stream().allMatch(row -> row.size() == states);
    if (!square) {
      findings.add(id, "its set-up table is not square");
    }
  }
}
