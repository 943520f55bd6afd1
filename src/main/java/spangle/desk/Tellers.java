package spangle.desk;

import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import spangle.intake.brief.PreparedWeek;
import spangle.intake.week.Shop;
import spangle.plan.Brief;
import spangle.plan.Held;
import spangle.plan.LeftOut;
import spangle.plan.LineKind;
import spangle.plan.LoadTimes;
import spangle.plan.Lot;
import spangle.plan.clock.Loss;
import spangle.plan.event.LotNames;

/** Who must be told of a change: those who do the work, those who wait for it. */
final class Tellers {
  private static final int HOUR_MIN = 60;

  private final PreparedWeek week;
  private final Map<String, Lot> lots = new HashMap<>();
  private final Map<String, LineKind> kinds = new HashMap<>();
  private final Map<String, LoadMatch.Spot> old;
  private final Map<String, LoadMatch.Spot> now;
  private final List<LeftOut> out;

  Tellers(
      PreparedWeek week,
      Brief before,
      Map<String, LoadMatch.Spot> old,
      Map<String, LoadMatch.Spot> now,
      List<LeftOut> out) {
    this.week = week;
    this.old = old;
    this.now = now;
    this.out = List.copyOf(out);
    before.lots().forEach(l -> lots.put(l.id(), l));
    week.brief().lots().forEach(l -> lots.put(l.id(), l));
    week.brief().lines().forEach(l -> kinds.put(l.id(), l.kind()));
  }

  /** All who must hear of a change to a load of these lots. */
  Set<String> of(List<String> ids, ChangeList.Kind kind) {
    Set<String> told = new LinkedHashSet<>();
    boolean none = kind == ChangeList.Kind.LEFT_OUT;
    for (String id : ids) {
      Lot lot = lots.get(id);
      if (lot == null) {
        continue;
      }
      if (!none) {
        told.add(crew(kinds.get(lot.lineId())));
      }
      if (waited(lot)) {
        lot.kitIds().forEach(kit -> told.add("assembly (" + kit + ")"));
      }
      if (none || kind == ChangeList.Kind.DROPPED) {
        answerers(lot, told);
      }
      if (lot.lastLeg() && news(lot, kind)) {
        told.add("sales" + customer(lot));
      }
    }
    return told;
  }

  /** Those who hang, spray and bake these lots. */
  Set<String> crews(List<String> ids) {
    Set<String> told = new LinkedHashSet<>();
    for (String id : ids) {
      Lot lot = lots.get(id);
      if (lot != null) {
        told.add(crew(kinds.get(lot.lineId())));
      }
    }
    return told;
  }

  /** Those at the oven or kettle, where a load stays in its place and runs otherwise. */
  Set<String> atTheMachine(List<String> ids) {
    Set<String> told = new LinkedHashSet<>();
    for (String id : ids) {
      Lot lot = lots.get(id);
      LineKind kind = lot == null ? null : kinds.get(lot.lineId());
      told.add(kind == LineKind.ZINC || kind == LineKind.OUTSIDE ? crew(kind) : "oven");
    }
    return told;
  }

  /** Those who hear of pieces a gate holds. */
  Set<String> of(Held held) {
    Set<String> told = new LinkedHashSet<>();
    told.add(held.whoAnswers());
    told.add("sales" + customer(held.jobId()));
    return told;
  }

  /** Whether assembly, which waits for kits, has pieces later or sooner by more than an hour. */
  private boolean waited(Lot lot) {
    LoadMatch.Spot was = old.get(lot.id());
    LoadMatch.Spot is = now.get(lot.id());
    return was == null || is == null || Math.abs(is.lastMin() - was.lastMin()) > HOUR_MIN;
  }

  /**
   * Whether the customer hears another answer than before: out or back in, late or in time again,
   * late on another day.
   */
  private boolean news(Lot lot, ChangeList.Kind kind) {
    LoadMatch.Spot was = old.get(lot.id());
    LoadMatch.Spot is = now.get(lot.id());
    if (is == null || kind == ChangeList.Kind.DROPPED) {
      return true;
    }
    if (was == null) {
      return late(lot, is) || (kind == ChangeList.Kind.NEW && !LotNames.rework(lot));
    }
    boolean otherDay = day(was) != day(is);
    return late(lot, is) != late(lot, was) || (late(lot, is) && otherDay);
  }

  private static int day(LoadMatch.Spot spot) {
    return Math.floorDiv(LoadTimes.last(spot.batch(), spot.load()), Shop.DAY_MIN);
  }

  /** Who can bring back what has fallen out: those who buy, or those a gate waits for. */
  private void answerers(Lot lot, Set<String> told) {
    for (LeftOut left : out) {
      Lot that = lots.get(left.lotId());
      if (that != null && LotNames.work(that.id()).equals(LotNames.work(lot.id()))) {
        if (left.code().equals(Loss.NO_SUPPLY.code())) {
          told.add("purchasing");
        }
        return;
      }
    }
    week.held().stream()
        .filter(h -> h.jobId().equals(lot.jobId()) && h.partId().equals(lot.partId()))
        .forEach(h -> told.add(h.whoAnswers()));
  }

  private static boolean late(Lot lot, LoadMatch.Spot spot) {
    return LoadTimes.last(spot.batch(), spot.load()) > lot.dueMin();
  }

  private String customer(Lot lot) {
    return customer(lot.jobId());
  }

  private String customer(String job) {
    return week.parts().stream()
        .filter(p -> p.jobId().equals(job) && !p.customer().isEmpty())
        .map(p -> " (" + p.customer() + ")")
        .findFirst()
        .orElse("");
  }

  private static String crew(@Nullable LineKind kind) {
    if (kind == LineKind.ZINC) {
      return "kettle crew";
    }
    if (kind == LineKind.OUTSIDE) {
      return "dispatch";
    }
    return kind == LineKind.LIQUID ? "hangers, painter" : "hangers, sprayer, oven";
  }
}
