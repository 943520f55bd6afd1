package spangle.bench;

import com.google.ortools.Loader;
import com.google.ortools.sat.BoolVar;
import com.google.ortools.sat.CircuitConstraint;
import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.CpSolver;
import com.google.ortools.sat.CpSolverStatus;
import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;
import com.google.ortools.sat.Literal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import spangle.equipment.Span;
import spangle.plan.Brief;
import spangle.plan.Dwell;
import spangle.plan.Goals;
import spangle.plan.LineSpec;
import spangle.plan.Lot;
import spangle.plan.MachineSpec;

/**
 * The oven stage as a constraint program, written from the words of the brief alone: it shares
 * neither clock nor rules with the product. For briefs of one line without stations whose lots
 * travel alone. A batch is called by the first of its lots; on each machine the batches form one
 * round trip from the state the machine stands in.
 */
public final class ExactOvens {
  private static final int GRAMS = 1000;

  static {
    Loader.loadNativeLibraries();
  }

  /**
   * What came of it.
   *
   * @param proven whether the value is proven to be the best there is
   * @param found whether any plan was found
   * @param value weighed sum of the brief's goals, lots left out with it
   * @param bound proven floor of that sum
   */
  public record Answer(boolean proven, boolean found, long value, double bound) {}

  private final CpModel model = new CpModel();
  private final Brief brief;
  private final LineSpec line;
  private final List<Lot> lots;
  private final List<MachineSpec> machines;
  private final int horizon;
  private final Goals goals;
  private final int longest;
  private final boolean whole;

  private final BoolVar[][] in;
  private final BoolVar[] left;
  private final BoolVar[][] on;
  private final List<Map<Integer, BoolVar>> at = new ArrayList<>();
  private final IntVar[] start;
  private final IntVar[] dwell;
  private final IntVar[] setup;
  private final IntVar[] cost;
  private final LinearExprBuilder goal = LinearExpr.newBuilder();

  private ExactOvens(Brief brief, boolean whole) {
    this.whole = whole;
    this.brief = brief;
    this.line = brief.lines().get(0);
    this.lots = brief.lots();
    this.machines = line.machines();
    this.horizon = brief.horizonMin();
    this.goals = brief.goals();
    int n = lots.size();
    int most = 0;
    for (Lot lot : lots) {
      for (Dwell each : lot.dwells()) {
        most = Math.max(most, each.minMin());
      }
    }
    this.longest = most;
    this.in = new BoolVar[n][n];
    this.left = new BoolVar[n];
    this.on = new BoolVar[n][machines.size()];
    this.start = new IntVar[n];
    this.dwell = new IntVar[n];
    this.setup = new IntVar[n];
    this.cost = new IntVar[n];
  }

  /**
   * Solves it.
   *
   * @param seconds most seconds
   * @param threads threads
   */
  public static Answer solve(Brief brief, double seconds, int threads) {
    return new ExactOvens(brief, false).answer(seconds, threads);
  }

  /** The same where no lot may be left out, whatever the goals say of it. */
  public static Answer solveWhole(Brief brief, double seconds, int threads) {
    return new ExactOvens(brief, true).answer(seconds, threads);
  }

  private Answer answer(double seconds, int threads) {
    lots();
    batches();
    rounds();
    goals();
    CpSolver solver = new CpSolver();
    solver.getParameters().setMaxTimeInSeconds(seconds);
    solver.getParameters().setNumSearchWorkers(threads);
    solver.getParameters().setRandomSeed(1);
    CpSolverStatus status = solver.solve(model);
    boolean found = status == CpSolverStatus.OPTIMAL || status == CpSolverStatus.FEASIBLE;
    return new Answer(
        status == CpSolverStatus.OPTIMAL,
        found,
        found ? Math.round(solver.objectiveValue()) : 0,
        solver.bestObjectiveBound());
  }

  private static OptionalInt dwellAt(Lot lot, int setting, boolean least) {
    for (Dwell each : lot.dwells()) {
      if (each.setting() == setting) {
        return OptionalInt.of(least ? each.minMin() : each.maxMin());
      }
    }
    return OptionalInt.empty();
  }

  private static boolean meet(Lot a, Lot b) {
    boolean machine = a.machines().stream().anyMatch(b.machines()::contains);
    boolean window = false;
    for (Dwell x : a.dwells()) {
      for (Dwell y : b.dwells()) {
        window |=
            x.setting() == y.setting()
                && Math.max(x.minMin(), y.minMin()) <= Math.min(x.maxMin(), y.maxMin());
      }
    }
    return machine && window && a.batchGroup().equals(b.batchGroup());
  }

  private int places(Lot lot) {
    return brief.carriers().stream()
        .filter(c -> c.id().equals(lot.carriers().get(0)))
        .findFirst()
        .orElseThrow()
        .floorUnits();
  }

  private long grams(Lot lot) {
    double carrier =
        brief.carriers().stream()
            .filter(c -> c.id().equals(lot.carriers().get(0)))
            .findFirst()
            .orElseThrow()
            .ownMassKg();
    return Math.round((lot.massKg() + carrier) * GRAMS);
  }

  /** Every lot is in one batch, called by itself or by an earlier lot, or left out. */
  private void lots() {
    for (int l = 0; l < lots.size(); l++) {
      left[l] = model.newBoolVar("left " + l);
      List<Literal> places = new ArrayList<>();
      places.add(left[l]);
      if (whole) {
        model.addEquality(left[l], 0);
      }
      for (int r = 0; r <= l; r++) {
        if (r == l || meet(lots.get(l), lots.get(r))) {
          in[l][r] = model.newBoolVar("in " + l + " " + r);
          places.add(in[l][r]);
        }
      }
      model.addExactlyOne(places);
      for (int r = 0; r < l; r++) {
        if (in[l][r] != null) {
          model.addImplication(in[l][r], in[r][r]);
        }
      }
    }
  }

  private void batches() {
    for (int r = 0; r < lots.size(); r++) {
      start[r] = model.newIntVar(0, horizon, "start " + r);
      dwell[r] = model.newIntVar(0, longest, "dwell " + r);
      setup[r] = model.newIntVar(0, horizon, "setup " + r);
      cost[r] = model.newIntVar(0, 1_000_000, "cost " + r);
      model.addEquality(dwell[r], 0).onlyEnforceIf(in[r][r].not());
      machine(r);
      setting(r);
      for (int l = r; l < lots.size(); l++) {
        if (in[l][r] != null) {
          member(l, r);
        }
      }
    }
  }

  private void machine(int r) {
    LinearExprBuilder chosen = LinearExpr.newBuilder();
    LinearExprBuilder room = LinearExpr.newBuilder();
    LinearExprBuilder bears = LinearExpr.newBuilder();
    for (int m = 0; m < machines.size(); m++) {
      MachineSpec machine = machines.get(m);
      on[r][m] = model.newBoolVar("on " + r + " " + m);
      chosen.add(on[r][m]);
      room.addTerm(on[r][m], machine.capacityUnits());
      long most =
          Double.isInfinite(machine.maxMassKg())
              ? 1_000_000_000L
              : Math.round(machine.maxMassKg() * GRAMS);
      bears.addTerm(on[r][m], most);
      LinearExprBuilder spans = LinearExpr.newBuilder();
      for (Span span : machine.calendar().open()) {
        BoolVar inside = model.newBoolVar("inside");
        spans.add(inside);
        model
            .addGreaterOrEqual(
                LinearExpr.weightedSum(new IntVar[] {start[r], setup[r]}, new long[] {1, -1}),
                span.startMin())
            .onlyEnforceIf(inside);
        model
            .addLessOrEqual(
                LinearExpr.sum(new IntVar[] {start[r], dwell[r]}), Math.min(horizon, span.endMin()))
            .onlyEnforceIf(inside);
      }
      model.addEquality(spans, on[r][m]);
    }
    model.addEquality(chosen, in[r][r]);
    LinearExprBuilder units = LinearExpr.newBuilder();
    LinearExprBuilder grams = LinearExpr.newBuilder();
    for (int l = r; l < lots.size(); l++) {
      if (in[l][r] != null) {
        units.addTerm(in[l][r], places(lots.get(l)));
        grams.addTerm(in[l][r], grams(lots.get(l)));
      }
    }
    model.addLessOrEqual(units, room);
    model.addLessOrEqual(grams, bears);
  }

  private void setting(int r) {
    Map<Integer, BoolVar> settings = new HashMap<>();
    LinearExprBuilder sum = LinearExpr.newBuilder();
    for (Dwell each : lots.get(r).dwells()) {
      BoolVar chosen = model.newBoolVar("setting");
      settings.put(each.setting(), chosen);
      sum.add(chosen);
    }
    model.addEquality(sum, in[r][r]);
    at.add(settings);
  }

  private void member(int l, int r) {
    Lot lot = lots.get(l);
    model.addGreaterOrEqual(start[r], lot.readyMin()).onlyEnforceIf(in[l][r]);
    for (int m = 0; m < machines.size(); m++) {
      if (!lot.machines().contains(machines.get(m).id())) {
        model.addImplication(in[l][r], on[r][m].not());
      }
    }
    at.get(r)
        .forEach(
            (setting, chosen) -> {
              OptionalInt least = dwellAt(lot, setting, true);
              if (least.isEmpty()) {
                model.addImplication(in[l][r], chosen.not());
                return;
              }
              int most = dwellAt(lot, setting, false).orElseThrow();
              Literal[] both = {in[l][r], chosen};
              model.addGreaterOrEqual(dwell[r], least.getAsInt()).onlyEnforceIf(both);
              model.addLessOrEqual(dwell[r], most).onlyEnforceIf(both);
            });
  }

  /** On each machine one round trip through its batches, from node 0. */
  private void rounds() {
    int n = lots.size();
    for (int m = 0; m < machines.size(); m++) {
      MachineSpec machine = machines.get(m);
      CircuitConstraint round = model.addCircuit();
      round.addArc(0, 0, model.newBoolVar("idle"));
      for (int q = 0; q < n; q++) {
        if (!lots.get(q).machines().contains(machine.id())) {
          model.addEquality(on[q][m], 0);
          continue;
        }
        round.addArc(q + 1, q + 1, on[q][m].not());
        round.addArc(q + 1, 0, model.newBoolVar("last"));
        BoolVar first = model.newBoolVar("first");
        round.addArc(0, q + 1, first);
        model.addGreaterOrEqual(start[q], setup[q]).onlyEnforceIf(first);
        int initial = machine.initialSetting();
        int node = q;
        at.get(q).forEach((to, chosen) -> change(initial, to, node, first, chosen));
        for (int r = 0; r < n; r++) {
          if (r != q && lots.get(r).machines().contains(machine.id())) {
            BoolVar next = model.newBoolVar("next");
            round.addArc(r + 1, q + 1, next);
            follow(machine, r, q, next);
          }
        }
      }
    }
  }

  private void follow(MachineSpec machine, int r, int q, BoolVar next) {
    model
        .addGreaterOrEqual(
            LinearExpr.weightedSum(
                new IntVar[] {start[q], setup[q], start[r], dwell[r]}, new long[] {1, -1, -1, -1}),
            machine.turnaroundMin())
        .onlyEnforceIf(next);
    if (machine.kgPerHour() > 0) {
      LinearExprBuilder wait = LinearExpr.newBuilder();
      long gramsPerHour = Math.round(machine.kgPerHour() * GRAMS);
      wait.addTerm(start[q], gramsPerHour).addTerm(start[r], -gramsPerHour);
      for (int l = r; l < lots.size(); l++) {
        if (in[l][r] != null) {
          wait.addTerm(in[l][r], -60 * Math.round(lots.get(l).massKg() * GRAMS));
        }
      }
      model.addGreaterOrEqual(wait, 0).onlyEnforceIf(next);
    }
    at.get(r)
        .forEach(
            (from, was) ->
                at.get(q).forEach((to, chosen) -> change(from, to, q, next, was, chosen)));
  }

  private void change(int from, int to, int q, Literal... when) {
    model
        .addEquality(setup[q], line.settingChange().minutes().get(from).get(to))
        .onlyEnforceIf(when);
    model.addEquality(cost[q], line.settingChange().costs().get(from).get(to)).onlyEnforceIf(when);
  }

  private void goals() {
    for (int r = 0; r < lots.size(); r++) {
      model.addEquality(setup[r], 0).onlyEnforceIf(in[r][r].not());
      model.addEquality(cost[r], 0).onlyEnforceIf(in[r][r].not());
      goal.addTerm(dwell[r], goals.runMinute());
      goal.addTerm(setup[r], goals.settingMinute());
      goal.addTerm(cost[r], goals.settingCost());
    }
    for (int l = 0; l < lots.size(); l++) {
      Lot lot = lots.get(l);
      goal.addTerm(left[l], (long) goals.leftOut() * lot.weight());
      goal.add(goals.load());
      goal.addTerm(left[l], -goals.load());
      BoolVar late = model.newBoolVar("late");
      IntVar minutes = model.newIntVar(0, horizon, "minutes late");
      goal.addTerm(late, (long) goals.lateLot() * lot.weight());
      goal.addTerm(minutes, (long) goals.lateMinute() * lot.weight());
      for (int r = 0; r <= l; r++) {
        if (in[l][r] != null) {
          LinearExpr end = LinearExpr.sum(new IntVar[] {start[r], dwell[r]});
          model
              .addLessOrEqual(end, lot.dueMin())
              .onlyEnforceIf(new Literal[] {in[l][r], late.not()});
          model
              .addLessOrEqual(
                  LinearExpr.weightedSum(
                      new IntVar[] {start[r], dwell[r], minutes}, new long[] {1, 1, -1}),
                  lot.dueMin())
              .onlyEnforceIf(in[l][r]);
        }
      }
    }
    model.minimize(goal);
  }
}
