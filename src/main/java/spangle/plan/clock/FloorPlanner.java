package spangle.plan.clock;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import spangle.plan.Brief;
import spangle.plan.CarrierSpec;
import spangle.plan.Dwell;
import spangle.plan.LineSpec;
import spangle.plan.Lot;
import spangle.plan.PlannedBatch;
import spangle.plan.PlannedLoad;
import spangle.plan.Supply;
import spangle.plan.Visit;

/** Turns the names of a brief into places in arrays. */
final class FloorPlanner {
  final Brief brief;
  final LineFacts[] lines;
  final CarrierFacts[] carriers;
  final LotFacts[] lots;
  final SupplyFacts[] supplies;
  final int[] numbers;
  private final Map<String, Integer> lineIndex = new HashMap<>();
  private final Map<String, Integer> carrierIndex = new HashMap<>();
  private final Map<String, Integer> lotIndex = new HashMap<>();
  private final Map<String, Integer> kitIndex = new HashMap<>();
  private final Map<Supply, Integer> supplyIndex = new HashMap<>();
  private final Map<String, Integer> groupIndex = new HashMap<>();
  private final Map<List<String>, Integer> finishIndex = new HashMap<>();

  FloorPlanner(Brief brief) {
    this.brief = brief;
    lines = new LineFacts[brief.lines().size()];
    for (LineSpec line : brief.lines()) {
      int index = lineIndex.size();
      lines[index] = new LineFacts(index, line, brief.horizonMin());
      lineIndex.put(line.id(), index);
    }
    brief.kits().forEach(kit -> kitIndex.put(kit.id(), kitIndex.size()));
    supplies = new SupplyFacts[brief.supplies().size()];
    for (Supply supply : brief.supplies()) {
      supplies[supplyIndex.size()] = new SupplyFacts(supply);
      supplyIndex.put(supply, supplyIndex.size());
    }
    brief.lots().forEach(lot -> lotIndex.put(lot.id(), lotIndex.size()));
    numbers = new int[lines.length];
    carriers = carriers();
    lots = new LotFacts[brief.lots().size()];
    for (int i = 0; i < lots.length; i++) {
      lots[i] = facts(i, brief.lots().get(i));
    }
    for (LineFacts line : lines) {
      for (MachineFacts machine : line.machines) {
        brief.baths().stream()
            .filter(bath -> bath.machineId().equals(machine.spec.id()))
            .forEach(bath -> machine.bath = new BathFacts(bath, lots));
      }
    }
  }

  private CarrierFacts[] carriers() {
    Map<String, Integer> users = new HashMap<>();
    for (Lot lot : brief.lots()) {
      lot.carriers().forEach(id -> users.merge(id, 1, Integer::sum));
    }
    List<CarrierFacts> facts = new ArrayList<>();
    for (CarrierSpec carrier : brief.carriers()) {
      boolean few = carrier.owned() < users.getOrDefault(carrier.id(), 0);
      boolean counted = few || (carrier.stripAfterCycles() > 0 && users.containsKey(carrier.id()));
      int line = place(lineIndex, carrier.lineId(), "carrier " + carrier.id(), "line");
      facts.add(new CarrierFacts(facts.size(), carrier, counted, numbers[line]));
      if (counted) {
        numbers[line] += carrier.owned();
      }
      carrierIndex.put(carrier.id(), carrierIndex.size());
    }
    return facts.toArray(CarrierFacts[]::new);
  }

  private LotFacts facts(int index, Lot lot) {
    String who = "lot " + lot.id();
    LineFacts line = lines[place(lineIndex, lot.lineId(), who, "line")];
    int[][] dwells = new int[2][line.settings];
    Arrays.fill(dwells[0], -1);
    for (Dwell dwell : lot.dwells()) {
      if (dwell.setting() < 0 || dwell.setting() >= line.settings) {
        throw unknown(who, "setting", Integer.toString(dwell.setting()));
      }
      if (dwell.minMin() <= dwell.maxMin()) {
        dwells[0][dwell.setting()] = dwell.minMin();
        dwells[1][dwell.setting()] = dwell.maxMin();
      }
    }
    int stations = line.stations.length;
    int[] fixed = new int[stations];
    double[] variable = new double[stations];
    for (Visit visit : lot.visits()) {
      int s = station(line, visit.stationId(), who);
      fixed[s] = Math.max(fixed[s], visit.fixedMin());
      variable[s] += visit.variableMin();
    }
    return new LotFacts(
        index,
        lot,
        line.index,
        dense(finishIndex, List.of(lot.lineId(), lot.finish().key())),
        dense(groupIndex, lot.batchGroup()),
        dwells,
        machines(lot, line),
        lot.carriers().stream().mapToInt(id -> place(carrierIndex, id, who, "carrier")).toArray(),
        lot.after().map(chain -> lotIndex.getOrDefault(chain.lotId(), -1)).orElse(-1),
        lot.kitIds().stream().filter(kitIndex::containsKey).mapToInt(kitIndex::get).toArray(),
        brief.supplyOf(lot.finish()).map(supplyIndex::get).orElse(-1),
        fixed,
        variable);
  }

  private static long machines(Lot lot, LineFacts line) {
    long bits = 0;
    for (MachineFacts machine : line.machines) {
      if (lot.machines().contains(machine.spec.id())) {
        bits |= 1L << machine.index;
      }
    }
    return bits;
  }

  private static int station(LineFacts line, String id, String who) {
    for (int s = 0; s < line.stations.length; s++) {
      if (line.stations[s].spec.id().equals(id)) {
        return s;
      }
    }
    throw unknown(who, "station", id);
  }

  private static int place(Map<String, Integer> names, String id, String who, String what) {
    Integer index = names.get(id);
    if (index == null) {
      throw unknown(who, what, id);
    }
    return index;
  }

  private static <K> int dense(Map<K, Integer> numbers, K key) {
    Integer number = numbers.putIfAbsent(key, numbers.size());
    return number == null ? numbers.size() - 1 : number;
  }

  private static IllegalArgumentException unknown(String who, String what, String id) {
    return new IllegalArgumentException(
        who + " names the " + what + " " + id + ", which the brief does not know");
  }

  Announced announced() {
    if (brief.announced().isEmpty()) {
      return new Announced();
    }
    Map<String, Integer> machines = new HashMap<>();
    for (LineFacts line : lines) {
      for (MachineFacts machine : line.machines) {
        machines.put(machine.spec.id(), machine.index);
      }
    }
    Map<String, Lot> byId = new HashMap<>();
    brief.lots().forEach(lot -> byId.put(lot.id(), lot));
    Map<String, Integer> kinds = new HashMap<>();
    for (CarrierFacts carrier : carriers) {
      kinds.put(carrier.spec.id(), carrier.index);
    }
    return new Announced(brief.announced(), byId, machines, kinds);
  }

  /** A line is coupled when anything but its machines ties its batches together. */
  boolean[] coupled() {
    boolean[] tied = new boolean[lines.length];
    for (LineFacts line : lines) {
      tied[line.index] = line.stations.length > 0 || numbers[line.index] > 0 || line.hasBath();
    }
    Set<List<String>> wanted = new HashSet<>();
    brief.kits().stream()
        .flatMap(kit -> kit.lines().stream())
        .forEach(line -> wanted.add(List.of(line.jobId(), line.partId())));
    for (LotFacts lot : lots) {
      if (lot.after >= 0) {
        tied[lot.line] = true;
        tied[lots[lot.after].line] = true;
      }
      boolean inKit = wanted.contains(List.of(lot.lot.jobId(), lot.lot.partId()));
      if (lot.lot.after().isPresent() || inKit || lot.supply >= 0) {
        tied[lot.line] = true;
      }
    }
    return tied;
  }

  /** Lines whose legs come first, first; as in the brief where legs go round in a circle. */
  int[] lineOrder() {
    List<Set<Integer>> before = new ArrayList<>();
    for (int i = 0; i < lines.length; i++) {
      before.add(new HashSet<>());
    }
    for (LotFacts lot : lots) {
      if (lot.after >= 0 && lots[lot.after].line != lot.line) {
        before.get(lot.line).add(lots[lot.after].line);
      }
    }
    List<Integer> order = new ArrayList<>();
    while (order.size() < lines.length) {
      int next = -1;
      for (int i = 0; i < lines.length; i++) {
        if (!order.contains(i) && (next < 0 || !order.containsAll(before.get(next)))) {
          if (next < 0 || order.containsAll(before.get(i))) {
            next = i;
          }
        }
      }
      order.add(next);
    }
    return order.stream().mapToInt(Integer::intValue).toArray();
  }

  Batch[][][] frozen(Floor floor) {
    Batch[][][] rows = new Batch[lines.length][][];
    for (LineFacts line : lines) {
      rows[line.index] = new Batch[line.machines.length][];
      for (MachineFacts machine : line.machines) {
        rows[line.index][machine.index] =
            brief.frozen().stream()
                .filter(b -> b.lineId().equals(line.spec.id()))
                .filter(b -> b.machineId().equals(machine.spec.id()))
                .map(b -> frozen(floor, b))
                .flatMap(Optional::stream)
                .sorted(Floor.byFrozenStart())
                .toArray(Batch[]::new);
      }
    }
    return rows;
  }

  private Optional<Batch> frozen(Floor floor, PlannedBatch batch) {
    List<Load> loads = new ArrayList<>();
    for (PlannedLoad load : batch.loads()) {
      int[] known =
          load.lotIds().stream().filter(lotIndex::containsKey).mapToInt(lotIndex::get).toArray();
      if (known.length > 0) {
        CarrierFacts carrier =
            carriers[place(carrierIndex, load.carrierId(), "load " + load.id(), "carrier")];
        loads.add(new Load(new LoadSum(floor, carrier, known, Optional.of(load))));
      }
    }
    return loads.isEmpty()
        ? Optional.empty()
        : Optional.of(
            Batch.frozen(batch, brief.isBeyond(batch.startMin()), loads.toArray(Load[]::new)));
  }
}
