package spangle.desk;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import spangle.equipment.WorkCalendar;
import spangle.plan.Brief;
import spangle.plan.CarrierSpec;
import spangle.plan.Chain;
import spangle.plan.LineKind;
import spangle.plan.LineSpec;
import spangle.plan.Lot;
import spangle.plan.MachineSpec;
import spangle.plan.SetupTable;
import spangle.plan.StationSpec;
import spangle.plan.Supply;

/**
 * A brief in which one thing that may hold a lot is out of the way.
 *
 * @param what stable name of the thing
 * @param words the thing, as the end of "held by"
 * @param without what it would take, as the beginning of a sentence about the sooner end
 * @param brief the brief without it
 */
record Relaxed(String what, String words, String without, Brief brief) {
  private static final double PLENTY = 1e6;

  /** Everything that may hold these legs, one at a time, in the order of a load's way. */
  static List<Relaxed> all(Brief brief, List<Lot> legs) {
    List<Relaxed> all = new ArrayList<>();
    Set<String> ids = Set.copyOf(legs.stream().map(Lot::id).toList());
    ready(brief, legs, ids, all);
    material(brief, legs, all);
    legsBefore(brief, legs, ids, all);
    for (LineSpec line : brief.lines()) {
      if (legs.stream().anyMatch(l -> l.lineId().equals(line.id()))) {
        carriers(brief, line, legs, all);
        stations(brief, line, legs, all);
        machines(brief, line, ids, all);
        hours(brief, line, all);
      }
    }
    windows(brief, ids, all);
    return all;
  }

  private static void ready(Brief brief, List<Lot> legs, Set<String> ids, List<Relaxed> all) {
    int ready = legs.get(0).readyMin();
    if (ready > 0) {
      all.add(
          new Relaxed(
              "ready",
              "its parts, which are ready only " + DayWords.of(ready),
              "with the parts here on Monday",
              BriefChange.lots(brief, l -> ids.contains(l.id()) ? early(l) : l)));
    }
  }

  private static Lot early(Lot lot) {
    return LotChange.of(lot).ready(0).made();
  }

  private static void material(Brief brief, List<Lot> legs, List<Relaxed> all) {
    for (Supply supply : brief.supplies()) {
      boolean ours =
          legs.stream().anyMatch(l -> brief.supplyOf(l.finish()).equals(Optional.of(supply)));
      if (ours) {
        all.add(
            new Relaxed(
                "material",
                supply.name() + ": " + stock(brief, supply),
                "with enough " + supply.name() + " in the store",
                BriefChange.supplies(brief, s -> s.equals(supply) ? plenty(s) : s)));
      }
    }
  }

  private static String stock(Brief brief, Supply supply) {
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

  private static Supply plenty(Supply s) {
    return s.with(List.of(new Supply.Arrival(0, PLENTY, "")));
  }

  private static void legsBefore(Brief brief, List<Lot> legs, Set<String> ids, List<Relaxed> all) {
    if (legs.size() > 1) {
      Lot before = legs.get(legs.size() - 2);
      Lot last = legs.get(legs.size() - 1);
      all.add(
          new Relaxed(
              "leg-before",
              "the step before it, " + before.finish().name(),
              "if it did not have to wait for " + before.finish().name(),
              BriefChange.lots(
                  brief,
                  l ->
                      l.id().equals(last.id()) && ids.contains(l.id())
                          ? LotChange.of(l).after(Optional.empty()).made()
                          : l)));
    }
  }

  private static void carriers(Brief brief, LineSpec line, List<Lot> legs, List<Relaxed> all) {
    for (CarrierSpec carrier : brief.carriers()) {
      boolean ours =
          carrier.lineId().equals(line.id())
              && legs.stream().anyMatch(l -> l.carriers().contains(carrier.id()));
      if (ours) {
        all.add(
            new Relaxed(
                "carrier",
                carrier.name() + ", of which there are " + carrier.owned(),
                "with two more of " + carrier.name(),
                BriefChange.carriers(brief, c -> c.equals(carrier) ? two(c) : c)));
      }
    }
  }

  private static CarrierSpec two(CarrierSpec c) {
    return new CarrierSpec(
        c.id(),
        c.name(),
        c.lineId(),
        c.face(),
        c.owned() + 2,
        c.floorUnits(),
        c.ownMassKg(),
        c.stripAfterCycles(),
        c.stripMin());
  }

  private static void stations(Brief brief, LineSpec line, List<Lot> legs, List<Relaxed> all) {
    List<StationSpec> beside = new ArrayList<>(line.before());
    beside.addAll(line.after());
    for (StationSpec station : beside) {
      boolean ours =
          legs.stream()
              .flatMap(l -> l.visits().stream())
              .anyMatch(v -> v.stationId().equals(station.id()));
      if (!ours) {
        continue;
      }
      if (station.setups().states().size() > 1) {
        all.add(
            new Relaxed(
                "colour-run",
                "the colour changes at " + station.name(),
                "without minutes for changing colour",
                BriefChange.stations(brief, s -> s.equals(station) ? quick(s) : s)));
      }
      all.add(
          new Relaxed(
              "station",
              station.name() + ", which is busy",
              "with one more place at " + station.name(),
              BriefChange.stations(brief, s -> s.equals(station) ? more(s) : s)));
    }
  }

  private static StationSpec quick(StationSpec s) {
    return new StationSpec(
        s.id(),
        s.name(),
        s.alike(),
        s.calendar(),
        SetupTable.none(s.setups().states()),
        s.initialState(),
        s.longestWaitAfterMin(),
        s.out());
  }

  private static StationSpec more(StationSpec s) {
    return new StationSpec(
        s.id(),
        s.name(),
        s.alike() + 1,
        s.calendar(),
        s.setups(),
        s.initialState(),
        s.longestWaitAfterMin(),
        s.out());
  }

  private static void machines(Brief brief, LineSpec line, Set<String> ids, List<Relaxed> all) {
    if (line.settings().size() > 1) {
      all.add(
          new Relaxed(
              "setting",
              "the oven's change to another setting",
              "without minutes for changing the oven's setting",
              BriefChange.lines(brief, l -> l.equals(line) ? sameSetting(l) : l)));
    }
    MachineSpec largest = line.machines().get(0);
    String words =
        line.kind() == LineKind.OUTSIDE
            ? "the places and the days of the truck"
            : line.machines().size() == 1
                ? largest.name() + ", which is busy"
                : "the ovens, which are busy";
    String spare = largest.id() + " (one more)";
    Brief one = BriefChange.lines(brief, l -> l.equals(line) ? oneMore(l, largest, spare) : l);
    all.add(
        new Relaxed(
            "machine",
            words,
            "with one more of " + largest.name(),
            BriefChange.lots(
                one,
                l ->
                    ids.contains(l.id()) && l.machines().contains(largest.id())
                        ? LotChange.of(l).alsoIn(spare).made()
                        : l)));
  }

  private static LineSpec sameSetting(LineSpec l) {
    return new LineSpec(
        l.id(),
        l.name(),
        l.kind(),
        l.before(),
        l.machines(),
        l.after(),
        l.settings(),
        SetupTable.none(l.settingChange().states()));
  }

  private static LineSpec oneMore(LineSpec l, MachineSpec m, String id) {
    List<MachineSpec> machines = new ArrayList<>(l.machines());
    machines.add(
        new MachineSpec(
            id,
            m.name(),
            m.capacityUnits(),
            m.maxMassKg(),
            m.calendar(),
            m.initialSetting(),
            m.turnaroundMin(),
            m.kgPerHour()));
    return new LineSpec(
        l.id(),
        l.name(),
        l.kind(),
        l.before(),
        machines,
        l.after(),
        l.settings(),
        l.settingChange());
  }

  private static void hours(Brief brief, LineSpec line, List<Relaxed> all) {
    WorkCalendar always = WorkCalendar.always(brief.horizonMin());
    all.add(
        new Relaxed(
            "hours",
            "the hours the " + line.name() + " is manned",
            "with people there day and night",
            BriefChange.lines(
                brief,
                l ->
                    l.equals(line)
                        ? BriefChange.line(l, s -> s.during(always), m -> m.during(always))
                        : l)));
  }

  private static void windows(Brief brief, Set<String> ids, List<Relaxed> all) {
    Brief patient =
        BriefChange.stations(
            brief,
            s ->
                new StationSpec(
                    s.id(),
                    s.name(),
                    s.alike(),
                    s.calendar(),
                    s.setups(),
                    s.initialState(),
                    Integer.MAX_VALUE,
                    s.out()));
    all.add(
        new Relaxed(
            "window",
            "the longest waits: washed, fluxed or fresh from the zinc it must go on in time",
            "if it could wait as long as it likes between steps",
            BriefChange.lots(
                patient,
                l ->
                    ids.contains(l.id()) && l.after().isPresent()
                        ? LotChange.of(l)
                            .after(
                                l.after()
                                    .map(
                                        c ->
                                            new Chain(c.lotId(), c.minGapMin(), Integer.MAX_VALUE)))
                            .made()
                        : l)));
  }
}
