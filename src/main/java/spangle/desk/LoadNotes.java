package spangle.desk;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import spangle.estimate.LotSharing;
import spangle.estimate.Purchase;
import spangle.intake.brief.Draws;
import spangle.intake.brief.PreparedWeek;
import spangle.intake.week.Hauling;
import spangle.intake.week.Paint;
import spangle.intake.week.ShopLine;
import spangle.plan.CarrierRun;
import spangle.plan.Finish;
import spangle.plan.FinishKind;
import spangle.plan.Lot;
import spangle.plan.Plan;
import spangle.plan.PlannedBatch;
import spangle.plan.PlannedLoad;
import spangle.report.LoadNote;

/** What the floor draws for each load, from which lot, how it is mixed, and what to mind. */
final class LoadNotes {
  private final PreparedWeek week;
  private final WeekIndex index;
  private final List<Purchase> purchases;

  LoadNotes(PreparedWeek week, List<Purchase> purchases) {
    this.week = week;
    this.index = new WeekIndex(week.brief(), week.parts());
    this.purchases = purchases;
  }

  List<LoadNote> of(Plan plan) {
    List<LoadNote> notes = new ArrayList<>();
    LevelWords levels = new LevelWords(week, plan);
    NextSteps next = new NextSteps(week.brief(), plan);
    Map<String, String> strip = new HashMap<>();
    CarrierRun.of(week.brief(), plan).stream()
        .filter(CarrierRun::stripped)
        .forEach(run -> strip.put(run.loadId(), toStrip(run)));
    Map<String, List<String>> halves = new HashMap<>();
    HalfRoute.of(week.brief(), plan)
        .values()
        .forEach(
            half ->
                halves.computeIfAbsent(half.loadId(), id -> new ArrayList<>()).add(half.caution()));
    for (PlannedBatch batch : plan.batches()) {
      for (PlannedLoad load : batch.loads()) {
        List<String> then = new ArrayList<>(next.words(batch, load));
        Optional.ofNullable(strip.get(load.id())).ifPresent(then::add);
        then.addAll(halves.getOrDefault(load.id(), List.of()));
        notes.add(note(batch, load, levels, then));
      }
    }
    return notes;
  }

  private static String toStrip(CarrierRun run) {
    return String.format(
        Locale.ROOT,
        "After this load %s, number %d goes to be stripped: cycle %d; back %s.",
        run.carrier().name(),
        run.number(),
        run.cycle(),
        DayWords.of(run.backMin()));
  }

  private LoadNote note(
      PlannedBatch batch, PlannedLoad load, LevelWords levels, List<String> then) {
    Lot first = index.first(load);
    FinishKind kind = first.finish().kind();
    double amount = load.lotIds().stream().map(index::lot).mapToDouble(Lot::materialKg).sum();
    List<String> cautions = new ArrayList<>(cautions(batch, load, first));
    cautions.addAll(then);
    return switch (kind) {
      case POWDER -> new LoadNote(load.id(), amount, "kg", lots(load), "", cautions);
      case LIQUID -> new LoadNote(load.id(), amount, "l", mix(first, amount), "", cautions);
      case DEGAS -> new LoadNote(load.id(), 0, "kg", "", "", cautions);
      case ZINC -> new LoadNote(load.id(), 0, "kg", "", levels.of(batch, load), cautions);
    };
  }

  private List<String> cautions(PlannedBatch batch, PlannedLoad load, Lot first) {
    FinishKind kind = first.finish().kind();
    Optional<Hauling> hauling = week.input().shop().line(batch.lineId()).flatMap(ShopLine::hauling);
    List<String> all = new ArrayList<>();
    if (hauling.isPresent()) {
      double kg = load.lotIds().stream().map(index::lot).mapToDouble(Lot::massKg).sum();
      all.addAll(SentOut.words(hauling.get(), batch, kg, first));
    } else {
      all.addAll(LoadCautions.of(kind));
    }
    if (kind == FinishKind.ZINC) {
      inspected(load).forEach(all::add);
    }
    all.addAll(new ReworkNotes(week.input()).of(load.lotIds().stream().map(index::lot).toList()));
    return all;
  }

  private List<String> inspected(PlannedLoad load) {
    Draws draws = new Draws(week.input());
    return load.lotIds().stream()
        .map(index::lot)
        .map(index::part)
        .map(part -> InspectionWords.of(draws, part))
        .distinct()
        .toList();
  }

  private String mix(Lot first, double litres) {
    return week.input()
        .catalogue()
        .coating(first.finish().materialId())
        .filter(Paint.class::isInstance)
        .map(Paint.class::cast)
        .map(paint -> MixWords.of(paint, litres))
        .orElse("");
  }

  /** Lots of powder to open for the jobs of a load. */
  private String lots(PlannedLoad load) {
    Finish finish = index.first(load).finish();
    if (!finish.materialLot().isEmpty()) {
      return "from lot " + finish.materialLot() + " and no other: a kit's parts must match";
    }
    String powder = finish.materialId();
    Set<String> names = new LinkedHashSet<>();
    for (String id : load.lotIds()) {
      String job = index.lot(id).jobId();
      purchases.stream()
          .filter(p -> p.item().id().equals(powder))
          .flatMap(p -> p.shares().stream())
          .filter(share -> share.jobId().equals(job))
          .flatMap(share -> share.draws().stream())
          .map(LotSharing.Draw::lot)
          .filter(name -> !name.isEmpty())
          .forEach(names::add);
    }
    return names.isEmpty() ? "" : "from lot " + String.join(" or ", names);
  }
}
