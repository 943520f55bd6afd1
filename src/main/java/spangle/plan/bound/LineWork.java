package spangle.plan.bound;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.BiPredicate;
import java.util.function.Function;
import spangle.plan.Brief;
import spangle.plan.LineSpec;
import spangle.plan.Lot;
import spangle.plan.PlannedBatch;
import spangle.plan.PlannedLoad;

/** What a plan holds of one line: frozen batches as they are, and the lots that are still open. */
final class LineWork {
  final LineSpec line;
  final List<PlannedBatch> frozen;
  final List<OpenLot> open;

  /** Lots in frozen batches. */
  final List<Lot> started;

  LineWork(Brief brief, LineSpec line, Set<String> lotIds) {
    this.line = line;
    this.frozen = brief.frozen().stream().filter(b -> b.lineId().equals(line.id())).toList();
    Set<String> startedIds = new LinkedHashSet<>();
    for (PlannedBatch batch : brief.frozen()) {
      for (PlannedLoad load : batch.loads()) {
        startedIds.addAll(load.lotIds());
      }
    }
    List<Lot> all =
        brief.lots().stream()
            .filter(lot -> lot.lineId().equals(line.id()) && lotIds.contains(lot.id()))
            .toList();
    this.started = all.stream().filter(lot -> startedIds.contains(lot.id())).toList();
    this.open =
        all.stream()
            .filter(lot -> !startedIds.contains(lot.id()))
            .map(lot -> new OpenLot(lot, line, brief.carriers()))
            .toList();
  }

  int frozenLoads() {
    return frozen.stream().mapToInt(batch -> batch.loads().size()).sum();
  }

  long frozenMinutes() {
    return frozen.stream().mapToLong(PlannedBatch::dwellMin).sum();
  }

  /** Lots by a key, in order of first appearance. */
  static Map<String, List<OpenLot>> by(List<OpenLot> lots, Function<OpenLot, String> key) {
    Map<String, List<OpenLot>> groups = new LinkedHashMap<>();
    for (OpenLot lot : lots) {
      groups.computeIfAbsent(key.apply(lot), k -> new ArrayList<>()).add(lot);
    }
    return groups;
  }

  /** Falls apart into parts between which no two lots can meet. */
  static List<List<OpenLot>> apart(List<OpenLot> lots, BiPredicate<OpenLot, OpenLot> meet) {
    List<List<OpenLot>> parts = new ArrayList<>();
    List<OpenLot> waiting = new ArrayList<>(lots);
    while (!waiting.isEmpty()) {
      List<OpenLot> part = new ArrayList<>();
      part.add(waiting.remove(0));
      for (int i = 0; i < part.size() && !waiting.isEmpty(); i++) {
        OpenLot from = part.get(i);
        List<OpenLot> rest = new ArrayList<>();
        for (OpenLot lot : waiting) {
          (meet.test(from, lot) ? part : rest).add(lot);
        }
        waiting = rest;
      }
      parts.add(part);
    }
    return parts;
  }

  /** As many lots as a greedy look finds of which no two can meet, in the order they come. */
  static List<OpenLot> strangers(List<OpenLot> lots, BiPredicate<OpenLot, OpenLot> meet) {
    List<OpenLot> chosen = new ArrayList<>();
    for (OpenLot lot : lots) {
      boolean stranger = true;
      for (int i = 0; i < chosen.size() && stranger; i++) {
        stranger = !meet.test(lot, chosen.get(i));
      }
      if (stranger) {
        chosen.add(lot);
      }
    }
    return chosen;
  }
}
