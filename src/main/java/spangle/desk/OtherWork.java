package spangle.desk;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import spangle.plan.Brief;
import spangle.plan.Lot;
import spangle.plan.Visit;

/** What is different about a lot that no longer needs the work it was planned for. */
final class OtherWork {
  private final Brief brief;

  OtherWork(Brief brief) {
    this.brief = brief;
  }

  /** In words; the two differ in finish or stays. */
  String words(Lot was, Lot is) {
    if (was.finish().equals(is.finish()) && !was.visits().equals(is.visits())) {
      List<String> said = stays(was, is);
      return said.isEmpty() ? "it goes through other stations now" : String.join(", ", said);
    }
    return was.finish().name().equals(is.finish().name())
        ? "its pieces need other work now"
        : "its pieces need other work now: " + is.finish().name();
  }

  private List<String> stays(Lot was, Lot is) {
    Map<String, Long> before = minutes(was);
    List<String> said = new ArrayList<>();
    minutes(is)
        .forEach(
            (station, now) -> {
              long then = before.getOrDefault(station, 0L);
              if (now != then) {
                said.add(
                    brief.placeName(station)
                        + (now > then ? " takes longer now (" : " takes less time now (")
                        + now
                        + " min for it, "
                        + then
                        + " before)");
              }
            });
    return said;
  }

  private static Map<String, Long> minutes(Lot lot) {
    Map<String, Long> minutes = new LinkedHashMap<>();
    for (Visit visit : lot.visits()) {
      minutes.merge(
          visit.stationId(), Math.round(visit.fixedMin() + visit.variableMin()), Long::sum);
    }
    return minutes;
  }
}
