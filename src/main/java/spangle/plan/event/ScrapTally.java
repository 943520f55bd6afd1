package spangle.plan.event;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import spangle.plan.Brief;
import spangle.plan.Scrapped;

/** Which reports of scrapped pieces count: none of more pieces than there are. */
final class ScrapTally {
  private final Brief brief;
  private final List<Scrapped> counted = new ArrayList<>();

  /** By part: pieces scrapped that still stand in the lots of the brief. */
  private final Map<String, Integer> stillInLots = new HashMap<>();

  ScrapTally(Brief brief) {
    this.brief = brief;
  }

  /**
   * Takes one report, later ones after earlier ones.
   *
   * @param notHung pieces of the order in lots of which nothing hangs
   * @param rejected rejected pieces of which no second round hangs or is done
   * @return why it cannot be; empty where it counts
   */
  Optional<String> take(Event event, int notHung, int rejected) {
    int pieces = event.figures().count().orElse(0);
    boolean second = ScrapOf.REJECTED.in(event);
    Scrapped own =
        new Scrapped(event.job(), event.part(), event.number(), event.atMin(), pieces, second);
    if (second) {
      int there = Math.max(0, rejected - pieces(event.job(), event.part(), true));
      if (pieces > there) {
        return Optional.of(
            pieces
                + " rejected pieces scrapped, "
                + there
                + " rejected ones wait: those that hang again or are good again are not among them");
      }
    } else if (!brief.scrapped().contains(own)) {
      String key = event.job() + '\n' + event.part();
      int there = Math.max(0, notHung - stillInLots.getOrDefault(key, 0));
      if (pieces > there) {
        return Optional.of(
            pieces
                + " waiting pieces scrapped, "
                + there
                + " of the plan's loads and lots do not hang yet: what is finished is rejected"
                + " first, what a gate holds or has not come is in no lot");
      }
      stillInLots.merge(key, pieces, Integer::sum);
    }
    counted.add(own);
    return Optional.empty();
  }

  /** Pieces of a part that count as scrapped. */
  int pieces(String job, String part) {
    return pieces(job, part, true) + pieces(job, part, false);
  }

  private int pieces(String job, String part, boolean rejected) {
    return counted.stream()
        .filter(s -> s.rejected() == rejected && s.of(job, part))
        .mapToInt(Scrapped::pieces)
        .sum();
  }

  /** All that count. */
  List<Scrapped> counted() {
    return List.copyOf(counted);
  }
}
