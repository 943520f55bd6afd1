package spangle.desk;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import spangle.plan.Brief;
import spangle.plan.CarrierSpec;
import spangle.plan.LineSpec;
import spangle.plan.Lot;
import spangle.plan.event.LotNames;

/** What a change list says of a load: when it hangs, where it goes, what is on it. */
final class ChangeWords {
  private final Map<String, Lot> lots;
  private final Brief brief;
  private final Map<String, String> carriers = new HashMap<>();
  private final Map<String, List<String>> settings = new HashMap<>();
  private final Map<String, Lot> byWork = new HashMap<>();

  ChangeWords(Brief brief, Map<String, Lot> lots) {
    this.brief = brief;
    this.lots = Map.copyOf(lots);
    for (LineSpec line : brief.lines()) {
      settings.put(line.id(), line.settings().stream().map(s -> s.name()).toList());
    }
    for (CarrierSpec carrier : brief.carriers()) {
      carriers.put(carrier.id(), carrier.name());
    }
    lots.values().forEach(l -> byWork.putIfAbsent(LotNames.work(l.id()), l));
  }

  /** A lot of that part and step. */
  Lot lot(String work) {
    Lot lot = byWork.get(work);
    if (lot == null) {
      throw new IllegalArgumentException("no lot of " + work);
    }
    return lot;
  }

  /** When it hangs and when it is in its machine. */
  String place(LoadMatch.Spot spot) {
    return "hang "
        + DayWords.of(spot.firstMin())
        + ", "
        + brief.placeName(spot.batch().machineId())
        + " "
        + DayWords.of(spot.batch().startMin());
  }

  /** The same, with the number, the carrier, the setting and the dwell where the other's differ. */
  String place(LoadMatch.Spot spot, LoadMatch.Spot other) {
    return (spot.id().equals(other.id()) ? "" : spot.id() + " ")
        + place(spot)
        + details(spot, other);
  }

  /** Carrier, setting and dwell where they differ from the other's; empty where none does. */
  String details(LoadMatch.Spot spot, LoadMatch.Spot other) {
    StringBuilder words = new StringBuilder();
    String carrier = spot.load().carrierId();
    if (!carrier.equals(other.load().carrierId())) {
      words.append(", on ").append(carriers.getOrDefault(carrier, carrier));
    }
    if (!setting(spot).equals(setting(other))) {
      words.append(", ").append(setting(spot));
    }
    if (spot.batch().dwellMin() != other.batch().dwellMin()) {
      words.append(", ").append(spot.batch().dwellMin()).append(" min in it");
    }
    return words.toString();
  }

  /** Whether only those at the oven or kettle have to know of a difference. */
  static boolean sameCarrier(LoadMatch.Spot one, LoadMatch.Spot other) {
    return one.load().carrierId().equals(other.load().carrierId());
  }

  private String setting(LoadMatch.Spot spot) {
    List<String> names = settings.getOrDefault(spot.batch().lineId(), List.of());
    int setting = spot.batch().setting();
    return setting >= 0 && setting < names.size() ? names.get(setting) : "";
  }

  /** Pieces of lots, by part. */
  String pieces(List<String> ids) {
    Map<String, Integer> pieces = new LinkedHashMap<>();
    Set<String> jobs = new LinkedHashSet<>();
    for (String id : ids) {
      Lot lot = lots.get(id);
      if (lot != null) {
        pieces.merge(lot.label(), lot.pieces(), Integer::sum);
        jobs.add(lot.jobId());
      }
    }
    List<String> what = new ArrayList<>();
    pieces.forEach((label, n) -> what.add(count(n, label)));
    return String.join(", ", what) + " (" + String.join(" ", jobs) + ")";
  }

  /** Pieces of one part. */
  String pieces(String work, int pieces) {
    Lot lot = lot(work);
    return count(pieces, lot.label()) + " (" + lot.jobId() + ")";
  }

  private static String count(int pieces, String label) {
    return String.format(Locale.ROOT, "%d x %s", pieces, label);
  }
}
