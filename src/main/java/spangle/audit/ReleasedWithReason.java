package spangle.audit;

import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import spangle.plan.Plan;
import spangle.plan.PlannedBatch;
import spangle.plan.PlannedLoad;
import spangle.plan.event.Event;
import spangle.plan.event.EventKind;

/** A sheet that was out stays as it is, or is called back with a reason and a new letter. */
final class ReleasedWithReason implements LogRule {
  /** A start so little apart needs no new sheet: less than a break (common practice). */
  private static final int SAME_TIME_MIN = 15;

  @Override
  public String name() {
    return "released-with-reason";
  }

  @Override
  public String words() {
    return "A load whose sheet is out changes only with a reason and under a new letter.";
  }

  private record Place(PlannedBatch batch, PlannedLoad load) {
    boolean sameWork(Place other) {
      return batch.machineId().equals(other.batch.machineId())
          && batch.setting() == other.batch.setting()
          && load.lotIds().equals(other.load.lotIds())
          && load.carrierId().equals(other.load.carrierId())
          && load.carrierNumber() == other.load.carrierNumber()
          && load.pattern().equals(other.load.pattern());
    }

    boolean sameTime(Place other) {
      return Math.abs(batch.startMin() - other.batch.startMin()) <= SAME_TIME_MIN;
    }
  }

  @Override
  public void check(LogAudit.Case found, Findings findings) {
    Map<String, Place> now = places(found.plan());
    LogAudit.Sheets sheets = found.sheets();
    released(found)
        .forEach(
            (id, was) -> {
              Place is = now.get(id);
              if (is != null && was.sameWork(is) && was.sameTime(is)) {
                return;
              }
              if (sheets.recalled().getOrDefault(id, "").isBlank()) {
                findings.add(id, "has its sheet out and has been changed without a reason");
              }
              if (sheets.now().equals(sheets.before())) {
                findings.add(
                    id, "has its sheet out and has been changed under the letter " + sheets.now());
              }
            });
  }

  private static Map<String, Place> places(Plan plan) {
    Map<String, Place> places = new TreeMap<>();
    for (PlannedBatch batch : plan.batches()) {
      batch.loads().forEach(load -> places.put(load.id(), new Place(batch, load)));
    }
    return places;
  }

  /** Loads whose sheet is out and that surely do not hang yet. */
  private static Map<String, Place> released(LogAudit.Case found) {
    Set<String> before = new HashSet<>();
    found.keptBrief().frozen().forEach(b -> b.loads().forEach(l -> before.add(l.id())));
    Map<String, Place> places = places(found.kept());
    Map<String, Place> released = new TreeMap<>();
    Set<String> mayHang = new HashSet<>();
    for (Event event : found.events()) {
      places.forEach(
          (id, place) -> {
            if (event.number() <= found.keptKnows() && !before.contains(id)) {
              return;
            }
            boolean named = event.load().equals(id) || event.load().equals(place.batch().id());
            if (named && event.kind() == EventKind.RELEASED) {
              released.put(id, place);
            } else if (named && event.kind() == EventKind.WITHDRAWN) {
              released.remove(id);
            } else if ((named && event.kind() != EventKind.INSPECTED)
                || (event.kind() == EventKind.AS_PLANNED
                    && Reported.firstMin(place.batch(), place.load()) < event.atMin())) {
              mayHang.add(id);
            }
          });
    }
    released.keySet().removeAll(mayHang);
    return released;
  }
}
