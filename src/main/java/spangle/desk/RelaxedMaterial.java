package spangle.desk;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import spangle.plan.Brief;
import spangle.plan.Finish;
import spangle.plan.Lot;
import spangle.plan.Supply;

/** What the store may hold a lot with: too little, the wrong maker's lot, kept for a kit. */
final class RelaxedMaterial {
  /** More kilograms or litres than any week draws. */
  private static final double PLENTY = 1e6;

  private final Brief brief;
  private final Set<String> ids;
  private final List<Relaxed> all = new ArrayList<>();

  private RelaxedMaterial(Brief brief, Set<String> ids) {
    this.brief = brief;
    this.ids = ids;
  }

  /**
   * All of it.
   *
   * @param legs legs of one lot, which stands for all
   * @param ids all lots asked about
   */
  static List<Relaxed> all(Brief brief, List<Lot> legs, Set<String> ids) {
    RelaxedMaterial material = new RelaxedMaterial(brief, ids);
    Set<Supply> drawn = new HashSet<>();
    for (Lot leg : legs) {
      Optional<Supply> supply = brief.supplyOf(leg.finish());
      if (supply.isPresent() && drawn.add(supply.get())) {
        material.tied(leg, supply.get());
        material.kept(supply.get());
        material.enough(supply.get());
      }
    }
    return material.all;
  }

  private static Set<String> group(Supply supply) {
    return Set.of("material " + supply.materialId());
  }

  /** A kit's visible parts come from one maker's lot: what if any would do. */
  private void tied(Lot leg, Supply supply) {
    String lot = leg.finish().materialLot();
    if (lot.isEmpty()) {
      return;
    }
    Brief untied =
        BriefChange.lots(
            pooled(supply.materialId()),
            l -> ids.contains(l.id()) ? l.with(anyLot(l.finish())) : l);
    all.add(
        new Relaxed(
            "powder-lot",
            group(supply),
            "the lot of powder its kit is tied to, " + lot + ": " + stock(supply),
            "if any lot of it would do",
            untied));
  }

  private static Finish anyLot(Finish f) {
    String key = f.key().replace("|lot " + f.materialLot(), "");
    return new Finish(f.index(), key, f.name(), f.kind(), f.materialId());
  }

  /** What is short goes to kits first: what if it did not. */
  private void kept(Supply supply) {
    List<Supply> others =
        brief.supplies().stream()
            .filter(s -> s.materialId().equals(supply.materialId()) && !s.keptLot().isEmpty())
            .toList();
    if (!supply.keptLot().isEmpty() || others.isEmpty()) {
      return;
    }
    Supply together = supply.with(others.stream().flatMap(s -> s.arrivals().stream()).toList());
    all.add(
        new Relaxed(
            "kept-for-kit",
            group(supply),
            supply.name() + ", of which the store keeps some for kits: " + stock(together),
            "if kits did not come first",
            pooled(supply.materialId())));
  }

  /** One heap of a material for everybody. */
  private Brief pooled(String materialId) {
    List<Supply.Arrival> arrivals = new ArrayList<>();
    List<Supply> rest = new ArrayList<>();
    String name = "";
    for (Supply s : brief.supplies()) {
      if (s.materialId().equals(materialId)) {
        arrivals.addAll(s.arrivals());
        name = name.isEmpty() || s.keptLot().isEmpty() ? s.name() : name;
      } else {
        rest.add(s);
      }
    }
    arrivals.sort(Comparator.comparingInt(Supply.Arrival::atMin));
    rest.add(new Supply(materialId, name, arrivals));
    return BriefChange.supplies(brief, rest);
  }

  private void enough(Supply supply) {
    all.add(
        new Relaxed(
            "material",
            group(supply),
            supply.name() + ": " + stock(supply),
            "with enough " + supply.name() + " in the store",
            BriefChange.supplies(
                brief,
                s -> s.equals(supply) ? s.with(List.of(new Supply.Arrival(0, PLENTY, ""))) : s)));
  }

  private String stock(Supply supply) {
    String unit = new Conditions(brief).unit(supply.materialId());
    Map<Integer, Double> amounts = new TreeMap<>();
    supply.arrivals().forEach(a -> amounts.merge(Math.max(0, a.atMin()), a.amount(), Double::sum));
    List<String> words = new ArrayList<>();
    amounts.forEach(
        (atMin, amount) ->
            words.add(
                String.format(Locale.ROOT, "%.1f %s ", amount, unit)
                    + (atMin == 0 ? "in the store" : "come " + DayWords.of(atMin))));
    return words.isEmpty() ? "none in the store, none on order" : String.join(", ", words);
  }
}
