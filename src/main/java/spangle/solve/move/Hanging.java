package spangle.solve.move;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import spangle.fit.hang.HangItem;
import spangle.fit.hang.HangPacker;
import spangle.plan.clock.Floor;
import spangle.plan.clock.Load;
import spangle.plan.clock.LotFacts;

/** Says which lots may share a carrier, by geometry, and remembers. Not for two threads. */
public final class Hanging {
  private static final int REMEMBERED = 200_000;
  private final Floor floor;
  private final Map<Key, Optional<Load>> known = new HashMap<>();

  /** For that floor. */
  public Hanging(Floor floor) {
    this.floor = floor;
  }

  private record Key(int carrier, List<Integer> lots) {}

  /** The load of these lots on that carrier, if they may share it and hang on it. */
  public Optional<Load> load(int carrier, int[] lots) {
    List<Integer> sorted = new ArrayList<>(lots.length);
    int[] copy = lots.clone();
    Arrays.sort(copy);
    for (int lot : copy) {
      sorted.add(lot);
    }
    Key key = new Key(carrier, sorted);
    Optional<Load> found = known.get(key);
    if (found == null) {
      if (known.size() >= REMEMBERED) {
        known.clear();
      }
      found = hang(carrier, copy);
      known.put(key, found);
    }
    return found;
  }

  /** The load that results when these lots join it. */
  public Optional<Load> join(Load load, int... more) {
    for (int lot : more) {
      if (!mayMeet(load, floor.lots[lot])) {
        return Optional.empty();
      }
    }
    int[] lots = Arrays.copyOf(load.lots, load.lots.length + more.length);
    System.arraycopy(more, 0, lots, load.lots.length, more.length);
    return load(load.carrier, lots);
  }

  /** The load that stays when one of several lots leaves it. */
  public Optional<Load> leave(Load load, int lot) {
    int[] rest = new int[load.lots.length - 1];
    int n = 0;
    for (int other : load.lots) {
      if (other != lot) {
        rest[n++] = other;
      }
    }
    return load(load.carrier, rest);
  }

  /** Whether two lots may hang side by side: one finish, one kind of work, neither alone. */
  public static boolean mayShare(LotFacts one, LotFacts other) {
    return one.finish == other.finish
        && one.group == other.group
        && !one.lot.alone()
        && !other.lot.alone();
  }

  private static boolean mayMeet(Load load, LotFacts lot) {
    return load.finish == lot.finish
        && load.group == lot.group
        && !load.alone
        && !lot.lot.alone()
        && (load.machines & lot.machines) != 0
        && hangsOn(lot, load.carrier);
  }

  private static boolean hangsOn(LotFacts lot, int carrier) {
    for (int own : lot.carriers) {
      if (own == carrier) {
        return true;
      }
    }
    return false;
  }

  private Optional<Load> hang(int carrier, int[] lots) {
    for (int lot : lots) {
      if (!hangsOn(floor.lots[lot], carrier)) {
        return Optional.empty();
      }
    }
    for (int i = 1; i < lots.length; i++) {
      if (!mayShare(floor.lots[lots[0]], floor.lots[lots[i]])) {
        return Optional.empty();
      }
    }
    if (lots.length > 1) {
      double mass = 0;
      Map<String, HangItem> items = new LinkedHashMap<>();
      for (int lot : lots) {
        mass += floor.lots[lot].lot.massKg();
        HangItem item = floor.lots[lot].lot.item();
        items.merge(item.key(), item, (a, b) -> a.withPieces(a.pieces() + b.pieces()));
      }
      if (mass > floor.carriers[carrier].spec.face().maxMassKg()
          || !HangPacker.fits(floor.carriers[carrier].spec.face(), List.copyOf(items.values()))) {
        return Optional.empty();
      }
    }
    Load load = floor.load(carrier, lots);
    return runs(load) ? Optional.of(load) : Optional.empty();
  }

  private static boolean runs(Load load) {
    if (load.machines == 0) {
      return false;
    }
    for (int min : load.dwellMin) {
      if (min >= 0) {
        return true;
      }
    }
    return false;
  }
}
