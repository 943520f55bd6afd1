package spangle.intake.brief;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import spangle.intake.week.Catalogue;
import spangle.intake.week.KitOrder;
import spangle.intake.week.Powder;
import spangle.plan.FinishKind;
import spangle.plan.Lot;
import spangle.plan.Supply;

/**
 * Keeps for every kit that asks for it one maker's lot of powder: makers' lots differ in shade. The
 * kit due first chooses first, among the lots that hold all its visible parts take and are there
 * before it is due: the lot it had in the plan so far, then what is in the store, the oldest first.
 * What is kept is a supply of its own, so that nothing else is planned on it. A kit no lot suffices
 * for takes what comes; a delivery without a number is no lot anybody can rely on.
 */
final class PowderLots {
  private static final double NOTHING = 1e-6;

  private final List<KitOrder> kits;
  private final Map<String, String> before;
  private final Set<String> fixed;
  private final List<Lot> lots;
  private final List<Supply> supplies = new ArrayList<>();

  private PowderLots(List<Lot> lots, List<KitOrder> kits, Standing standing) {
    this.lots = new ArrayList<>(lots);
    this.kits =
        kits.stream()
            .filter(KitOrder::oneLot)
            .sorted(Comparator.comparingInt(KitOrder::dueMin).thenComparing(KitOrder::id))
            .toList();
    this.before = standing.powderLots();
    this.fixed = standing.fixed();
  }

  /** Lots as they are to be sprayed, and what they may draw on. */
  record Kept(List<Lot> lots, List<Supply> supplies) {}

  static Kept keep(List<Lot> lots, List<KitOrder> kits, Catalogue catalogue, Standing standing) {
    PowderLots keeper = new PowderLots(lots, kits, standing);
    for (Supply supply : SupplyMaker.supplies(catalogue)) {
      Optional<Powder> powder =
          catalogue
              .coating(supply.materialId())
              .filter(Powder.class::isInstance)
              .map(Powder.class::cast);
      if (powder.isPresent()) {
        keeper.powder(powder.get(), supply);
      } else {
        keeper.supplies.add(supply);
      }
    }
    return new Kept(keeper.lots, keeper.supplies);
  }

  private void powder(Powder powder, Supply supply) {
    PowderBoxes boxes = new PowderBoxes(powder, supply);
    Map<String, Double> kept = new HashMap<>();
    for (Lot lot : lots) {
      String own = lot.finish().materialLot();
      if (fixed.contains(lot.id()) && draws(lot, powder) && !own.isEmpty()) {
        kept.merge(own, boxes.take(own, lot.materialKg()), Double::sum);
      }
    }
    if (boxes.several()) {
      Set<String> done = new HashSet<>();
      for (KitOrder kit : kits) {
        if (done.add(kit.id())) {
          choose(kit, done, powder, boxes, kept);
        }
      }
    }
    supplies.add(supply.with(boxes.left()));
    for (String lot : new TreeSet<>(kept.keySet())) {
      supplies.add(new Supply(powder.id(), powder.name() + " lot " + lot, lot, boxes.taken(lot)));
    }
  }

  /** Kits that share a part share its lot. */
  private void choose(
      KitOrder kit, Set<String> done, Powder powder, PowderBoxes boxes, Map<String, Double> kept) {
    Set<String> group = new HashSet<>(Set.of(kit.id()));
    List<Lot> ours = visible(group, powder);
    int dueMin = kit.dueMin();
    for (int known = 0; known < ours.size(); ours = visible(group, powder)) {
      known = ours.size();
      ours.forEach(l -> group.addAll(asking(l)));
      for (KitOrder other : kits) {
        dueMin = group.contains(other.id()) ? Math.min(dueMin, other.dueMin()) : dueMin;
      }
    }
    done.addAll(group);
    double need = ours.stream().mapToDouble(Lot::materialKg).sum();
    Set<String> had = new HashSet<>();
    lots.stream()
        .filter(l -> draws(l, powder) && asking(l).stream().anyMatch(group::contains))
        .forEach(l -> had.add(before.getOrDefault(l.id(), "")));
    Optional<String> lot = need < NOTHING ? Optional.empty() : boxes.best(need, dueMin, had);
    if (lot.isEmpty()) {
      return;
    }
    kept.merge(lot.get(), boxes.take(lot.get(), need), Double::sum);
    Set<String> ids = new HashSet<>();
    ours.forEach(l -> ids.add(l.id()));
    lots.replaceAll(l -> ids.contains(l.id()) ? l.with(l.finish().fromLot(lot.get())) : l);
  }

  /** What is still to be sprayed with the powder for one of these kits and will be seen. */
  private List<Lot> visible(Set<String> group, Powder powder) {
    return lots.stream()
        .filter(l -> draws(l, powder) && !fixed.contains(l.id()))
        .filter(l -> asking(l).stream().anyMatch(group::contains))
        .toList();
  }

  private static boolean draws(Lot lot, Powder powder) {
    return lot.lastLeg()
        && lot.finish().kind() == FinishKind.POWDER
        && lot.finish().materialId().equals(powder.id());
  }

  private List<String> asking(Lot lot) {
    return kits.stream().map(KitOrder::id).filter(lot.kitIds()::contains).toList();
  }
}
