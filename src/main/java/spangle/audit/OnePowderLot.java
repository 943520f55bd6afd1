package spangle.audit;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import spangle.plan.Brief;
import spangle.plan.FinishKind;
import spangle.plan.Kit;
import spangle.plan.Lot;
import spangle.plan.Supply;

/** Makers' lots of one colour differ in shade; parts seen side by side must not. */
final class OnePowderLot extends Rule {
  OnePowderLot() {
    super(
        "one-powder-lot",
        "The powder-coated parts of a kit that asks for it come from one maker's lot of powder,"
            + " wherever one lot holds them in time.",
        "");
  }

  @Override
  void check(PlanView view, Findings findings) {
    Brief brief = view.brief();
    for (Kit kit : brief.kits()) {
      if (kit.oneLot()) {
        TreeMap<String, List<Lot>> byPowder = new TreeMap<>();
        for (Lot lot : brief.lots()) {
          if (seen(view, lot) && lot.kitIds().contains(kit.id())) {
            byPowder.computeIfAbsent(lot.finish().materialId(), m -> new ArrayList<>()).add(lot);
          }
        }
        byPowder.forEach((powder, lots) -> check(view, kit, powder, lots, findings));
      }
    }
  }

  /** Powder that will be seen and has not been sprayed. */
  private static boolean seen(PlanView view, Lot lot) {
    boolean begun = view.loadOf(lot.id()).map(LoadView::frozen).orElse(false);
    return lot.lastLeg() && lot.finish().kind() == FinishKind.POWDER && !begun;
  }

  private static void check(
      PlanView view, Kit kit, String powder, List<Lot> lots, Findings findings) {
    Set<String> from = new TreeSet<>();
    lots.forEach(lot -> from.add(lot.finish().materialLot()));
    String name = lots.get(0).finish().name();
    if (from.size() > 1) {
      findings.add(
          kit.id(),
          "its parts in " + name + " come from lots " + String.join(" and ", from).strip());
      return;
    }
    String lot = from.iterator().next();
    if (!lot.isEmpty()) {
      kept(view.brief(), kit, powder, lot, findings);
      return;
    }
    Set<String> joined = new HashSet<>();
    double need = need(view, kit, powder, joined);
    int byMin =
        view.brief().kits().stream()
            .filter(k -> joined.contains(k.id()))
            .mapToInt(Kit::dueMin)
            .min()
            .orElse(kit.dueMin());
    for (String box : openBoxes(view.brief(), powder)) {
      if (need > 0 && holds(view.brief(), powder, box, byMin) >= need - 1e-3) {
        findings.add(
            kit.id(), "its parts in " + name + " may come from any lot; " + box + " holds them");
        return;
      }
    }
  }

  /** Nothing but that lot may be in what is kept under its name. */
  private static void kept(Brief brief, Kit kit, String powder, String lot, Findings findings) {
    boolean sound =
        brief.supplies().stream()
            .filter(s -> s.materialId().equals(powder) && s.keptLot().equals(lot))
            .flatMap(s -> s.arrivals().stream())
            .allMatch(a -> a.lot().equals(lot));
    boolean any =
        brief.supplies().stream()
            .anyMatch(s -> s.materialId().equals(powder) && s.keptLot().equals(lot));
    if (!sound || !any) {
      findings.add(kit.id(), "is to come from lot " + lot + ", which is not kept for it");
    }
  }

  /** What all kits take that share parts with this one, for they share the lot as well. */
  private static double need(PlanView view, Kit kit, String powder, Set<String> joined) {
    joined.add(kit.id());
    Set<String> asking = new HashSet<>();
    view.brief().kits().stream().filter(Kit::oneLot).forEach(k -> asking.add(k.id()));
    Set<Lot> ours = new HashSet<>();
    boolean grown = true;
    while (grown) {
      grown = false;
      for (Lot lot : view.brief().lots()) {
        if (seen(view, lot)
            && lot.finish().materialId().equals(powder)
            && lot.kitIds().stream().anyMatch(joined::contains)
            && ours.add(lot)) {
          lot.kitIds().stream().filter(asking::contains).forEach(joined::add);
          grown = true;
        }
      }
    }
    return ours.stream().mapToDouble(Lot::materialKg).sum();
  }

  /** Numbered lots anything may draw on; none where there is but one and nothing to choose. */
  private static Set<String> openBoxes(Brief brief, String powder) {
    Set<String> all = new TreeSet<>();
    Set<String> open = new TreeSet<>();
    for (Supply supply : brief.supplies()) {
      if (supply.materialId().equals(powder)) {
        for (Supply.Arrival arrival : supply.arrivals()) {
          all.add(arrival.lot());
          if (supply.keptLot().isEmpty() && !arrival.lot().isEmpty()) {
            open.add(arrival.lot());
          }
        }
      }
    }
    return all.size() > 1 ? open : Set.of();
  }

  private static double holds(Brief brief, String powder, String box, int byMin) {
    return brief.supplies().stream()
        .filter(s -> s.materialId().equals(powder) && s.keptLot().isEmpty())
        .flatMap(s -> s.arrivals().stream())
        .filter(a -> a.lot().equals(box) && a.atMin() <= byMin)
        .mapToDouble(Supply.Arrival::amount)
        .sum();
  }
}
