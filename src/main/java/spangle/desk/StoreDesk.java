package spangle.desk;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import spangle.coating.powder.PowderNeed;
import spangle.coating.zinc.ZincBudget;
import spangle.estimate.Purchase;
import spangle.estimate.Purchases;
import spangle.estimate.StoreItem;
import spangle.estimate.Use;
import spangle.intake.brief.Draws;
import spangle.intake.brief.PreparedWeek;
import spangle.intake.week.Coating;
import spangle.intake.week.Paint;
import spangle.intake.week.Powder;
import spangle.intake.week.Stock;
import spangle.intake.week.Zinc;
import spangle.measure.LowLikelyHigh;
import spangle.plan.BathSpec;
import spangle.plan.FinishKind;
import spangle.plan.Kit;
import spangle.plan.Lot;
import spangle.plan.PartFacts;
import spangle.plan.Plan;
import spangle.plan.PlannedBatch;
import spangle.plan.PlannedLoad;

/** What a planned week draws on the stores, and what is to be bought. */
final class StoreDesk {
  private final PreparedWeek week;
  private final Plan plan;
  private final OptionalInt now;
  private final WeekIndex index;
  private final Draws draws;

  StoreDesk(PreparedWeek week, Plan plan) {
    this(week, plan, OptionalInt.empty());
  }

  /**
   * The stores of a week that has begun.
   *
   * @param now what was to come up to that minute has come; empty where nothing is known yet
   */
  StoreDesk(PreparedWeek week, Plan plan, OptionalInt now) {
    this.week = week;
    this.plan = plan;
    this.now = now;
    this.draws = new Draws(week.input());
    this.index = new WeekIndex(week.brief(), week.parts());
  }

  /** Items that are needed or short, in the order of the coatings file, zinc last. */
  List<Purchase> purchases() {
    Map<String, List<Use>> uses = uses();
    List<Purchase> purchases = new ArrayList<>();
    for (Coating coating : week.input().catalogue().coatings().toList()) {
      List<Use> own = uses.getOrDefault(coating.id(), List.of());
      if (!own.isEmpty()) {
        String unit = coating instanceof Paint ? "l" : "kg";
        purchases.add(purchase(coating.id(), coating.name(), unit, coating.stock(), own));
      }
    }
    week.input()
        .catalogue()
        .zinc()
        .ifPresent(
            z -> {
              List<Use> own = uses.getOrDefault(z.id(), List.of());
              if (!own.isEmpty()) {
                purchases.add(purchase(z.id(), z.name(), "kg", z.stock(), own));
              }
            });
    return purchases;
  }

  private Purchase purchase(String id, String name, String unit, Stock stock, List<Use> uses) {
    LocalDate monday = week.brief().monday();
    List<StoreItem.StoredLot> stored =
        stock.lots().stream()
            .map(
                l ->
                    new StoreItem.StoredLot(
                        l.lot(), l.amount(), ageDays(l, monday), oldDays(l, stock, monday)))
            .toList();
    List<StoreItem.Coming> coming =
        stock.deliveries().stream()
            .map(d -> new StoreItem.Coming(d.lot(), d.amount(), d.arriveMin(), came(d)))
            .toList();
    StoreItem item = new StoreItem(id, name, unit, stock.pack(), stock.lead(), stored, coming);
    return Purchases.of(item, uses, monday, week.input().shop().horizonDays());
  }

  private boolean came(Stock.Delivery delivery) {
    return now.isPresent() && delivery.arriveMin() <= now.getAsInt();
  }

  private static OptionalInt ageDays(Stock.StockLot lot, LocalDate monday) {
    return lot.made()
        .map(made -> OptionalInt.of((int) ChronoUnit.DAYS.between(made, monday)))
        .orElseGet(OptionalInt::empty);
  }

  private static OptionalInt oldDays(Stock.StockLot lot, Stock stock, LocalDate monday) {
    return lot.made()
        .map(
            m ->
                OptionalInt.of(
                    (int) ChronoUnit.DAYS.between(m.plusMonths(stock.shelfMonths()), monday)))
        .orElseGet(OptionalInt::empty);
  }

  private Map<String, List<Use>> uses() {
    Map<String, List<Use>> uses = new LinkedHashMap<>();
    Map<String, String> lastColour = new HashMap<>();
    List<PlannedBatch> inOrder = new ArrayList<>(plan.batches());
    inOrder.sort(Comparator.comparingInt(StoreDesk::firstMinute));
    for (PlannedBatch batch : inOrder) {
      for (PlannedLoad load : batch.loads()) {
        String colour = index.first(load).finish().materialId();
        int at = firstMinute(batch);
        if (!colour.isEmpty() && !colour.equals(lastColour.put(batch.lineId(), colour))) {
          colourLoss(colour, at, uses);
        }
        load.lotIds().forEach(id -> add(index.lot(id), at, true, uses));
      }
    }
    plan.leftOut()
        .forEach(l -> add(index.lot(l.lotId()), week.brief().horizonMin() - 1, false, uses));
    week.input().catalogue().zinc().ifPresent(zinc -> bathLevels(zinc, uses));
    allowances(uses);
    return uses;
  }

  /** What is kept ready for rejects: for each coat of a part, when its last lot has passed. */
  private void allowances(Map<String, List<Use>> uses) {
    Map<String, Integer> left = RejectAllowance.left(week);
    Map<String, Integer> passed = new HashMap<>();
    for (PlannedBatch batch : plan.batches()) {
      batch.loads().stream()
          .flatMap(l -> l.lotIds().stream())
          .forEach(id -> passed.put(id, batch.endMin()));
    }
    Map<String, List<Lot>> coats = new LinkedHashMap<>();
    for (Lot lot : week.brief().lots()) {
      boolean nothing = lot.finish().materialId().isEmpty() || lot.pieces() == 0;
      if (!nothing && left.getOrDefault(WeekIndex.key(lot.jobId(), lot.partId()), 0) > 0) {
        coats
            .computeIfAbsent(
                WeekIndex.key(lot.jobId(), lot.partId()) + "\n" + lot.leg(),
                leg -> new ArrayList<>())
            .add(lot);
      }
    }
    for (List<Lot> coat : coats.values()) {
      Lot lot = coat.get(0);
      int pieces = left.getOrDefault(WeekIndex.key(lot.jobId(), lot.partId()), 0);
      int at =
          coat.stream()
              .mapToInt(l -> passed.getOrDefault(l.id(), week.brief().horizonMin() - 1))
              .max()
              .orElse(0);
      uses.computeIfAbsent(lot.finish().materialId(), c -> new ArrayList<>())
          .add(new Use(Use.ALLOWANCE, at, amount(lot).times((double) pieces / lot.pieces()), true));
    }
  }

  /** What a bath read too low takes beyond what the dips before took out of it. */
  private void bathLevels(Zinc zinc, Map<String, List<Use>> uses) {
    for (BathSpec bath : week.brief().baths()) {
      BathSpec.Mark before = new BathSpec.Mark(0, 0, true);
      for (BathSpec.Mark mark : bath.marks()) {
        double known = before.downMm() + bath.mmPerKg() * dippedKg(bath, before, mark);
        if (!mark.filled() && mark.downMm() > known) {
          OptionalInt fill =
              bath.marks().stream()
                  .filter(m -> m.filled() && m.atMin() >= mark.atMin())
                  .mapToInt(BathSpec.Mark::atMin)
                  .findFirst();
          double kg = (mark.downMm() - known) / bath.mmPerKg() / zinc.yield();
          uses.computeIfAbsent(zinc.id(), z -> new ArrayList<>())
              .add(
                  new Use(
                      Use.BATH_LEVEL,
                      fill.orElse(week.brief().horizonMin() - 1),
                      LowLikelyHigh.exactly(kg),
                      fill.isPresent()));
        }
        before = mark;
      }
    }
  }

  private double dippedKg(BathSpec bath, BathSpec.Mark from, BathSpec.Mark to) {
    return plan.batches().stream()
        .filter(b -> b.machineId().equals(bath.machineId()))
        .filter(b -> b.startMin() >= from.atMin() && b.startMin() < to.atMin())
        .flatMap(b -> b.loads().stream())
        .flatMap(l -> l.lotIds().stream())
        .mapToDouble(id -> index.lot(id).materialKg())
        .sum();
  }

  private static int firstMinute(PlannedBatch batch) {
    return batch.loads().stream()
        .flatMap(l -> l.visits().stream())
        .mapToInt(PlannedLoad.PlannedVisit::startMin)
        .min()
        .orElse(batch.startMin());
  }

  private void colourLoss(String colour, int at, Map<String, List<Use>> uses) {
    week.input()
        .catalogue()
        .coating(colour)
        .filter(Powder.class::isInstance)
        .map(Powder.class::cast)
        .ifPresent(
            p ->
                uses.computeIfAbsent(colour, c -> new ArrayList<>())
                    .add(
                        new Use(
                            Use.COLOUR_LOSS, at, LowLikelyHigh.exactly(p.colourLossKg()), true)));
  }

  private void add(Lot lot, int at, boolean planned, Map<String, List<Use>> uses) {
    if (lot.finish().materialId().isEmpty()) {
      return;
    }
    uses.computeIfAbsent(lot.finish().materialId(), c -> new ArrayList<>())
        .add(new Use(lot.jobId(), at, amount(lot), planned, claim(lot)));
  }

  /**
   * The kit that is due first speaks for a lot; a lot no kit waits for has only its own due time.
   */
  private Use.Claim claim(Lot lot) {
    Optional<Kit> kit =
        week.brief().kits().stream()
            .filter(k -> lot.kitIds().contains(k.id()))
            .min(Comparator.comparingInt(Kit::dueMin).thenComparing(Kit::id));
    if (kit.isEmpty()) {
      return new Use.Claim(lot.dueMin(), "", false);
    }
    String id = kit.get().id();
    boolean oneLot =
        lot.finish().kind() == FinishKind.POWDER
            && week.input().kits().stream().anyMatch(k -> k.id().equals(id) && k.oneLot());
    return new Use.Claim(kit.get().dueMin(), id, oneLot, lot.finish().materialLot());
  }

  /** Sprayed powder or mixed paint; zinc bought, which is zinc on the work over the yield. */
  private LowLikelyHigh amount(Lot lot) {
    if (lot.finish().kind() != FinishKind.ZINC) {
      return PowderNeed.SPREAD.times(lot.materialKg());
    }
    PartFacts part = index.part(lot);
    LowLikelyHigh growth = draws.steel(part).steelClass().growth();
    double minimum = lot.pieces() * draws.minimumKg(part);
    double yield = week.input().catalogue().zinc().map(Zinc::yield).orElse(ZincBudget.USUAL_YIELD);
    return ZincBudget.toBuyKg(minimum, growth, yield);
  }
}
