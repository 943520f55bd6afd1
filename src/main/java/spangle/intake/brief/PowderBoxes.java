package spangle.intake.brief;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import spangle.intake.week.Powder;
import spangle.intake.week.Stock;
import spangle.plan.Supply;

/** What is left of one powder, box by box, while makers' lots of it are kept for kits. */
final class PowderBoxes {
  private static final double NOTHING = 1e-6;

  private final List<Supply.Arrival> left;
  private final Map<String, List<Supply.Arrival>> taken = new HashMap<>();
  private final Map<String, LocalDate> made = new HashMap<>();

  /** All boxes, in the order in which they come. */
  PowderBoxes(Powder powder, Supply supply) {
    left = new ArrayList<>(supply.arrivals());
    for (Stock.StockLot lot : powder.stock().lots()) {
      lot.made().ifPresent(date -> made.put(lot.lot(), date));
    }
  }

  /** Whether more than one maker's lot could be opened. */
  boolean several() {
    return left.stream().map(Supply.Arrival::lot).distinct().count() > 1;
  }

  /** Numbered lots that hold so much by that minute, best first; those it had before go first. */
  Optional<String> best(double amount, int byMin, Set<String> had) {
    Set<String> names = new LinkedHashSet<>();
    left.stream().map(Supply.Arrival::lot).filter(n -> !n.isEmpty()).forEach(names::add);
    return names.stream()
        .filter(name -> there(name, amount).orElse(Integer.MAX_VALUE) <= byMin)
        .min(
            Comparator.comparing((String name) -> !had.contains(name))
                .thenComparing(name -> there(name, amount).orElseThrow())
                .thenComparing(name -> made.getOrDefault(name, LocalDate.MAX)));
  }

  /** The minute at which so much of a lot is there; empty where it never is. */
  private OptionalInt there(String lot, double amount) {
    double sum = 0;
    for (Supply.Arrival arrival : left) {
      sum += arrival.lot().equals(lot) ? arrival.amount() : 0;
      if (sum >= amount - NOTHING) {
        return OptionalInt.of(arrival.atMin());
      }
    }
    return OptionalInt.empty();
  }

  /** Sets so much of a lot aside, or what there is of it; says how much that was. */
  double take(String lot, double amount) {
    double open = amount;
    for (int i = 0; i < left.size(); i++) {
      Supply.Arrival box = left.get(i);
      if (box.lot().equals(lot) && open > 0) {
        double from = Math.min(open, box.amount());
        open -= from;
        left.set(i, new Supply.Arrival(box.atMin(), box.amount() - from, lot));
        taken
            .computeIfAbsent(lot, l -> new ArrayList<>())
            .add(new Supply.Arrival(box.atMin(), from, lot));
      }
    }
    return amount - open;
  }

  /** What was set aside of a lot, in time order. */
  List<Supply.Arrival> taken(String lot) {
    return taken.getOrDefault(lot, List.of()).stream()
        .sorted(Comparator.comparingInt(Supply.Arrival::atMin))
        .toList();
  }

  /** What anything may draw on, in time order. */
  List<Supply.Arrival> left() {
    return left.stream().filter(a -> taken.isEmpty() || a.amount() > NOTHING).toList();
  }
}
