package spangle.plan;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * All a solver may know of a week.
 *
 * @param name the week's name
 * @param monday date of minute zero
 * @param horizonMin batches and visits end by then; what hangs and has no time in the week stands
 *     behind it, with the stays it still has to come
 * @param lines the shop's lines
 * @param carriers racks, carts, beams, baskets
 * @param lots what is to be planned
 * @param kits what assembly waits for
 * @param supplies what is limited and when it comes
 * @param goals what is wanted
 * @param frozen batches that have started or been released: kept first in their machine's row, as
 *     they are
 * @param announced an earlier plan that should change little; empty where there is none
 * @param baths kettles whose zinc does not always stand high enough for every lot
 * @param scrapped pieces that are beyond saving, of which no lot is made any more
 * @param caged rejected pieces that wait in the cage, of which no lot is made yet
 * @param retired numbers of loads that hung and were taken down: no load bears them again
 */
public record Brief(
    String name,
    LocalDate monday,
    int horizonMin,
    List<LineSpec> lines,
    List<CarrierSpec> carriers,
    List<Lot> lots,
    List<Kit> kits,
    List<Supply> supplies,
    Goals goals,
    List<PlannedBatch> frozen,
    List<PlannedBatch> announced,
    List<BathSpec> baths,
    List<Scrapped> scrapped,
    List<Caged> caged,
    List<String> retired) {
  /** Minutes of a day of the week, from midnight to midnight. */
  public static final int DAY_MIN = 24 * 60;

  /** Copies the lists. */
  public Brief {
    lines = List.copyOf(lines);
    carriers = List.copyOf(carriers);
    lots = List.copyOf(lots);
    kits = List.copyOf(kits);
    supplies = List.copyOf(supplies);
    frozen = List.copyOf(frozen);
    announced = List.copyOf(announced);
    baths = List.copyOf(baths);
    scrapped = List.copyOf(scrapped);
    caged = List.copyOf(caged);
    retired = List.copyOf(retired);
  }

  /** A week in which nothing has been scrapped, rejected or taken down. */
  public Brief(
      String name,
      LocalDate monday,
      int horizonMin,
      List<LineSpec> lines,
      List<CarrierSpec> carriers,
      List<Lot> lots,
      List<Kit> kits,
      List<Supply> supplies,
      Goals goals,
      List<PlannedBatch> frozen,
      List<PlannedBatch> announced,
      List<BathSpec> baths) {
    this(
        name,
        monday,
        horizonMin,
        lines,
        carriers,
        lots,
        kits,
        supplies,
        goals,
        frozen,
        announced,
        baths,
        List.of(),
        List.of(),
        List.of());
  }

  /** Whether a stay that begins then is not in this week: what hangs and has no time in it. */
  public boolean isBeyond(int startMin) {
    return startMin >= horizonMin;
  }

  /** When each lot ends if what hangs and what was announced runs as it stands here, by lot. */
  public Map<String, Integer> announcedEnds() {
    List<PlannedBatch> batches = new ArrayList<>(frozen);
    batches.addAll(announced);
    return LoadTimes.lotEnds(batches);
  }

  /** The same brief with what its baths must cover. */
  public Brief with(List<BathSpec> others) {
    return new Brief(
        name,
        monday,
        horizonMin,
        lines,
        carriers,
        lots,
        kits,
        supplies,
        goals,
        frozen,
        announced,
        others,
        scrapped,
        caged,
        retired);
  }

  /** Batches of the shop's own ovens and kettles, without the trips to another firm. */
  public List<PlannedBatch> inTheHouse(List<PlannedBatch> batches) {
    return batches.stream().filter(b -> !outside(b.lineId())).toList();
  }

  /**
   * Finished pieces of a part that did not pass and are in no lot: scrapped since, or in the cage.
   */
  public int rejectedWithoutLot(String job, String part) {
    return scrapped.stream()
            .filter(s -> s.rejected() && s.of(job, part))
            .mapToInt(Scrapped::pieces)
            .sum()
        + caged.stream()
            .filter(c -> c.jobId().equals(job) && c.partId().equals(part))
            .mapToInt(Caged::pieces)
            .sum();
  }

  /** Name of a station, oven or kettle; its id where no line has it. */
  public String placeName(String id) {
    for (LineSpec line : lines) {
      for (MachineSpec machine : line.machines()) {
        if (machine.id().equals(id)) {
          return machine.name();
        }
      }
      for (List<StationSpec> stations : List.of(line.before(), line.after())) {
        for (StationSpec station : stations) {
          if (station.id().equals(id)) {
            return station.name();
          }
        }
      }
    }
    return id;
  }

  /** Whether a line is another firm's. */
  public boolean outside(String lineId) {
    return lines.stream().anyMatch(l -> l.id().equals(lineId) && l.kind() == LineKind.OUTSIDE);
  }

  /**
   * What a finish draws on: the supply kept from its maker's lot where there is one, else what
   * anything may draw on; empty where its material is not limited.
   */
  public Optional<Supply> supplyOf(Finish finish) {
    return supplies.stream()
        .filter(s -> s.materialId().equals(finish.materialId()))
        .filter(s -> s.keptLot().isEmpty() || s.keptLot().equals(finish.materialLot()))
        .max(Comparator.comparing((Supply s) -> !s.keptLot().isEmpty()));
  }
}
