package spangle.desk;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import spangle.equipment.Span;
import spangle.equipment.WorkCalendar;
import spangle.intake.week.Shop;
import spangle.plan.BathSpec;
import spangle.plan.Brief;
import spangle.plan.CarrierSpec;
import spangle.plan.LineKind;
import spangle.plan.LineSpec;
import spangle.plan.Lot;
import spangle.plan.LotChange;
import spangle.plan.MachineSpec;
import spangle.plan.SetupTable;
import spangle.plan.StationSpec;

/** What a line may hold a lot with: carriers, stations, ovens and kettles, hours, the truck. */
final class RelaxedLine {
  private final Brief brief;
  private final LineSpec line;
  private final List<Lot> legs;
  private final Set<String> ids;
  private final List<Relaxed> all = new ArrayList<>();

  /**
   * A line on which some pieces run.
   *
   * @param legs their legs, of one lot for all
   * @param ids all their lots
   */
  RelaxedLine(Brief brief, LineSpec line, List<Lot> legs, Set<String> ids) {
    this.brief = brief;
    this.line = line;
    this.legs = legs;
    this.ids = ids;
  }

  List<Relaxed> all() {
    carriers();
    List<StationSpec> stations =
        Stream.concat(line.before().stream(), line.after().stream()).toList();
    WorkCalendar usual = usual(stations);
    for (StationSpec station : stations) {
      boolean ours =
          legs.stream()
              .flatMap(l -> l.visits().stream())
              .anyMatch(v -> v.stationId().equals(station.id()));
      if (ours) {
        station(station, usual);
      }
    }
    if (line.kind() == LineKind.OUTSIDE) {
      truckDays();
    } else {
      settings();
      shortMachines(usual);
    }
    oneMore();
    hours(usual);
    return all;
  }

  /** The hours most stations of the line have: what is shut besides is somebody away or a stop. */
  private static WorkCalendar usual(List<StationSpec> stations) {
    Map<WorkCalendar, Long> counts =
        stations.stream()
            .collect(
                Collectors.groupingBy(
                    StationSpec::calendar, LinkedHashMap::new, Collectors.counting()));
    return counts.entrySet().stream()
        .max(
            Map.Entry.<WorkCalendar, Long>comparingByValue()
                .thenComparing(e -> e.getKey().minutesOpen()))
        .map(Map.Entry::getKey)
        .orElse(new WorkCalendar(List.of()));
  }

  private void carriers() {
    for (CarrierSpec carrier : brief.carriers()) {
      boolean ours =
          carrier.lineId().equals(line.id())
              && legs.stream().anyMatch(l -> l.carriers().contains(carrier.id()));
      if (ours) {
        all.add(
            new Relaxed(
                "carrier",
                Set.of("carrier " + carrier.id()),
                carrier.name() + ", of which there " + count(carrier.owned()),
                "with two more of " + carrier.name(),
                BriefChange.carriers(brief, c -> c.equals(carrier) ? c.owning(c.owned() + 2) : c)));
      }
    }
  }

  private static String count(int owned) {
    return owned == 1 ? "is 1" : "are " + owned;
  }

  private void station(StationSpec station, WorkCalendar usual) {
    String own = "station " + station.id();
    if (station.setups().states().size() > 1) {
      add(
          "colour-run",
          Set.of(own),
          "the colour changes at " + station.name(),
          "without minutes for changing colour",
          BriefChange.stations(
              brief,
              s -> s.equals(station) ? s.changing(SetupTable.none(s.setups().states())) : s));
    }
    if (!station.out().isEmpty()) {
      add(
          "places-out",
          Set.of(own),
          "places of " + station.name() + " that are out of use or not manned",
          "with all places of " + station.name() + " manned and in use",
          BriefChange.stations(brief, s -> s.equals(station) ? s.having(s.alike(), List.of()) : s));
    }
    if (isShort(station.calendar(), usual)) {
      add(
          "crew",
          Set.of(own, "hours " + line.id()),
          shortWords(station.name(), station.calendar(), usual),
          "with " + station.name() + " manned and free in all hours of its line",
          BriefChange.stations(
              brief, s -> s.equals(station) ? s.during(s.calendar().or(usual)) : s));
    }
    add(
        "station",
        Set.of(own),
        station.name() + ", which is busy",
        "with one more place at " + station.name(),
        BriefChange.stations(brief, s -> s.equals(station) ? s.having(s.alike() + 1, s.out()) : s));
  }

  private void add(String what, Set<String> groups, String words, String without, Brief other) {
    all.add(new Relaxed(what, groups, words, without, other));
  }

  /** Whether it is shut for a while in which the line works. */
  private static boolean isShort(WorkCalendar own, WorkCalendar usual) {
    return own.or(usual).minutesOpen() > own.minutesOpen();
  }

  private static String shortWords(String name, WorkCalendar own, WorkCalendar usual) {
    int missing = own.or(usual).minutesOpen() - own.minutesOpen();
    return name
        + ", shut or short of crew for "
        + DayWords.hours(missing)
        + " of the "
        + DayWords.hours(usual.minutesOpen())
        + " its line works";
  }

  private void settings() {
    if (line.settings().size() > 1) {
      add(
          "setting",
          Set.of("machine " + line.id()),
          "the oven's change to another setting",
          "without minutes for changing the oven's setting",
          BriefChange.lines(
              brief,
              l -> l.equals(line) ? l.changing(SetupTable.none(l.settingChange().states())) : l));
    }
  }

  private void shortMachines(WorkCalendar usual) {
    for (MachineSpec machine : line.machines()) {
      if (ours(machine) && isShort(machine.calendar(), usual)) {
        add(
            "crew",
            Set.of("machine " + line.id(), "hours " + line.id()),
            shortWords(machine.name(), machine.calendar(), usual),
            "with " + machine.name() + " manned and free in all hours of its line",
            BriefChange.lines(
                brief,
                l ->
                    l.equals(line)
                        ? BriefChange.line(
                            l,
                            s -> s,
                            m -> m.equals(machine) ? m.during(m.calendar().or(usual)) : m)
                        : l));
      }
    }
  }

  private boolean ours(MachineSpec machine) {
    return legs.stream()
        .anyMatch(l -> l.lineId().equals(line.id()) && l.machines().contains(machine.id()));
  }

  /** One more of every oven or kettle it may go in: the widest of them is not always among them. */
  private void oneMore() {
    List<MachineSpec> own = line.machines().stream().filter(this::ours).toList();
    if (own.isEmpty()) {
      return;
    }
    boolean away = line.kind() == LineKind.OUTSIDE;
    String words =
        away
            ? "the truck, which is full"
            : own.size() == 1 ? own.get(0).name() + ", which is busy" : "the ovens, which are busy";
    String without =
        away
            ? "with a second truck the same days"
            : "with one more of " + (own.size() == 1 ? own.get(0).name() : "each oven");
    add("machine", Set.of("machine " + line.id()), words, without, beside(own, 0, "beside"));
  }

  /** The truck on the days before those on which it comes. */
  private void truckDays() {
    List<MachineSpec> own = line.machines().stream().filter(this::ours).toList();
    if (own.isEmpty()) {
      return;
    }
    Brief daily = brief;
    for (int days = 1; days < 7; days++) {
      int back = days * Shop.DAY_MIN;
      List<MachineSpec> then =
          own.stream().filter(m -> m.calendar().open().get(0).startMin() >= back).toList();
      daily = then.isEmpty() ? daily : beside(daily, then, back, days + " days sooner");
    }
    add(
        "truck-days",
        Set.of("machine " + line.id()),
        "the days of the truck: "
            + own.stream().map(MachineSpec::name).collect(Collectors.joining("; ")),
        "with a truck every day",
        daily);
  }

  private Brief beside(List<MachineSpec> machines, int backMin, String mark) {
    return beside(brief, machines, backMin, mark);
  }

  /** The same machines once more, for our lots only, so many minutes sooner. */
  private Brief beside(Brief b, List<MachineSpec> machines, int backMin, String mark) {
    Set<String> twins = new HashSet<>();
    List<MachineSpec> more = new ArrayList<>();
    List<BathSpec> baths = new ArrayList<>(b.baths());
    for (MachineSpec m : machines) {
      String id = m.id() + " " + mark;
      twins.add(m.id());
      more.add(twin(m, id, backMin));
      b.baths().stream()
          .filter(bath -> bath.machineId().equals(m.id()))
          .map(bath -> new BathSpec(id, bath.marks(), bath.mmPerKg(), bath.needs()))
          .forEach(baths::add);
    }
    Brief wider =
        BriefChange.lines(b, l -> l.id().equals(line.id()) ? with(l, more) : l).with(baths);
    return BriefChange.lots(
        wider,
        lot -> {
          LotChange change = LotChange.of(lot);
          if (ids.contains(lot.id()) && lot.lineId().equals(line.id())) {
            lot.machines().stream()
                .filter(twins::contains)
                .forEach(id -> change.alsoIn(id + " " + mark));
          }
          return change.made();
        });
  }

  private static MachineSpec twin(MachineSpec m, String id, int backMin) {
    WorkCalendar hours =
        new WorkCalendar(
            m.calendar().open().stream()
                .map(s -> new Span(s.startMin() - backMin, s.endMin() - backMin))
                .toList());
    return new MachineSpec(
        id,
        m.name(),
        m.capacityUnits(),
        m.maxMassKg(),
        hours,
        m.initialSetting(),
        m.turnaroundMin(),
        m.kgPerHour());
  }

  private static LineSpec with(LineSpec l, List<MachineSpec> more) {
    List<MachineSpec> machines = new ArrayList<>(l.machines());
    machines.addAll(more);
    return l.with(l.before(), machines, l.after());
  }

  /** Day and night from the first hour on: nobody comes before the week begins. */
  private void hours(WorkCalendar usual) {
    int first = usual.open().isEmpty() ? 0 : usual.open().get(0).startMin();
    WorkCalendar always = new WorkCalendar(List.of(new Span(first, brief.horizonMin())));
    boolean away = line.kind() == LineKind.OUTSIDE;
    add(
        "hours",
        Set.of("hours " + line.id()),
        "the hours the " + line.name() + " is manned",
        "with people there day and night",
        BriefChange.lines(
            brief,
            l ->
                l.equals(line)
                    ? BriefChange.line(l, s -> s.during(always), m -> away ? m : m.during(always))
                    : l));
  }
}
