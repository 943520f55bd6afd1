package spangle.desk;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import spangle.plan.Brief;
import spangle.plan.Chain;
import spangle.plan.LeftOut;
import spangle.plan.LoadTimes;
import spangle.plan.Lot;
import spangle.plan.Plan;
import spangle.plan.PlannedBatch;
import spangle.plan.PlannedLoad;

/**
 * Routes of which a plan holds the beginning and not the rest: pieces that come out galvanized or
 * primed and wait for the step that found no room.
 *
 * @param done the last leg that is planned
 * @param missing the leg after it, which is left out
 * @param loadId the load of the last leg
 * @param fromMin when its pieces stand there
 */
record HalfRoute(Lot done, Lot missing, String loadId, int fromMin) {

  /** All of a plan, by the lot that is left out. */
  static Map<String, HalfRoute> of(Brief brief, Plan plan) {
    Map<String, Lot> lots = new HashMap<>();
    brief.lots().forEach(l -> lots.put(l.id(), l));
    Map<String, Lot> wanting = new HashMap<>();
    for (LeftOut left : plan.leftOut()) {
      Optional.ofNullable(lots.get(left.lotId()))
          .ifPresent(lot -> lot.after().ifPresent(chain -> wanting.put(chain.lotId(), lot)));
    }
    Map<String, HalfRoute> routes = new TreeMap<>();
    for (PlannedBatch batch : plan.batches()) {
      for (PlannedLoad load : batch.loads()) {
        for (String id : load.lotIds()) {
          Lot done = lots.get(id);
          Lot missing = wanting.get(id);
          if (done != null && missing != null) {
            int from = LoadTimes.last(batch, load);
            routes.put(missing.id(), new HalfRoute(done, missing, load.id(), from));
          }
        }
      }
    }
    return routes;
  }

  /** The same plan; what waits half done is said with the reason it is left out. */
  static Plan said(Brief brief, Plan plan) {
    Map<String, HalfRoute> routes = of(brief, plan);
    List<LeftOut> said = new ArrayList<>();
    for (LeftOut left : plan.leftOut()) {
      HalfRoute route = routes.get(left.lotId());
      said.add(
          route == null
              ? left
              : new LeftOut(
                  left.lotId(),
                  left.code(),
                  left.reason() + "; " + route.words(),
                  left.earliestMin()));
    }
    return new Plan(plan.batches(), said, plan.figures(), plan.solve());
  }

  /** What whoever does the earlier step should know before it begins. */
  String caution() {
    return done.label()
        + ": \""
        + missing.finish().name()
        + "\" after this is left out of the plan. Begin only if "
        + done.pieces()
        + " pieces may wait half done"
        + keepUntil().map(until -> "; they are good until " + until).orElse("")
        + ".";
  }

  /** In what state its pieces wait, and how long they may. */
  String words() {
    return done.pieces()
        + " pieces wait behind \""
        + done.finish().name()
        + "\" (load "
        + loadId
        + ") from "
        + DayWords.of(fromMin)
        + keepUntil()
            .map(
                until ->
                    ", good for \""
                        + missing.finish().name()
                        + "\" until "
                        + until
                        + "; later their surface has to be made ready again first")
            .orElse("");
  }

  /** The longest gap between the two steps; empty where there is none. */
  private Optional<String> keepUntil() {
    return missing
        .after()
        .map(Chain::maxGapMin)
        .filter(gap -> gap != Integer.MAX_VALUE)
        .map(gap -> DayWords.of(fromMin + gap));
  }
}
