package spangle.intake.brief;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import spangle.intake.event.Happened.PartKey;
import spangle.intake.event.Happened.Rework;
import spangle.intake.week.Wanted;
import spangle.plan.Lot;
import spangle.plan.Scrapped;

/**
 * What already stands when a week is prepared again in its middle.
 *
 * @param settled pieces that hang, run or are finished, with all legs of their route
 * @param open lots of the plan so far that may still be made otherwise
 * @param missing pieces that should be here and are not
 * @param cancelled parts of which nothing more is wanted
 * @param reworks pieces to be finished again
 * @param scrapped pieces beyond saving
 */
public record Standing(
    Map<PartKey, List<Chain>> settled,
    Map<PartKey, List<Chain>> open,
    Map<PartKey, Integer> missing,
    Set<PartKey> cancelled,
    List<Rework> reworks,
    List<Scrapped> scrapped) {
  /** A week that has not begun. */
  public static final Standing NOTHING =
      new Standing(Map.of(), Map.of(), Map.of(), Set.of(), List.of(), List.of());

  /** Copies the collections. */
  public Standing {
    settled = Map.copyOf(settled);
    open = Map.copyOf(open);
    missing = Map.copyOf(missing);
    cancelled = Set.copyOf(cancelled);
    reworks = List.copyOf(reworks);
    scrapped = List.copyOf(scrapped);
  }

  /**
   * The legs of the same pieces.
   *
   * @param name what all their ids begin with
   * @param number of the chain in its part; 0 for rework
   * @param lots its legs, first first
   * @param fixed ids of the legs that cannot change any more
   */
  public record Chain(String name, int number, List<Lot> lots, Set<String> fixed) {
    /** Copies the collections. */
    public Chain {
      lots = List.copyOf(lots);
      fixed = Set.copyOf(fixed);
    }

    /** Pieces that travel in it. */
    public int pieces() {
      return lots.get(0).pieces();
    }

    /** When they can be hung. */
    int readyMin() {
      return lots.get(0).readyMin();
    }

    /** Whether it is a second run of rejected pieces. */
    public boolean rework() {
      return number == 0;
    }
  }

  /** Ids of all lots that cannot change any more. */
  Set<String> fixed() {
    return settled.values().stream()
        .flatMap(List::stream)
        .flatMap(c -> c.fixed().stream())
        .collect(Collectors.toSet());
  }

  /** Maker's lots of powder the lots of the plan so far were to be sprayed from, by lot. */
  Map<String, String> powderLots() {
    return Stream.of(settled, open)
        .flatMap(m -> m.values().stream())
        .flatMap(List::stream)
        .flatMap(c -> c.lots().stream())
        .filter(l -> !l.finish().materialLot().isEmpty())
        .collect(Collectors.toMap(Lot::id, l -> l.finish().materialLot(), (a, b) -> a));
  }

  List<Chain> settled(PartKey part) {
    return settled.getOrDefault(part, List.of());
  }

  /** Settled pieces of the order, rework not counted. */
  int settledPieces(PartKey part) {
    return settled(part).stream().filter(c -> !c.rework()).mapToInt(Chain::pieces).sum();
  }

  /** Pieces of the order that never hung and never will. */
  int scrapped(PartKey part) {
    return scrapped.stream()
        .filter(s -> !s.rejected() && s.of(part.jobId(), part.partId()))
        .mapToInt(Scrapped::pieces)
        .sum();
  }

  /** Pieces nothing is to be planned for: those that hang and those that are scrapped. */
  int settledOrScrapped(PartKey part) {
    return settledPieces(part) + scrapped(part);
  }

  /** Pieces that should be here, or of which nobody says when they come, and that do not hang. */
  int missing(PartKey part, int ordered, List<Wanted.Arrival> arrivals) {
    int coming = arrivals.stream().mapToInt(Wanted.Arrival::pieces).sum();
    int hungUncounted = Math.max(0, settledOrScrapped(part) - coming);
    int notHere = Math.max(missing.getOrDefault(part, 0), ordered - coming);
    return Math.max(0, notHere - hungUncounted);
  }

  /** Arrivals of the pieces that are to be planned; what hangs or was scrapped was there first. */
  List<Wanted.Arrival> open(PartKey part, List<Wanted.Arrival> arrivals) {
    int taken = settledOrScrapped(part);
    List<Wanted.Arrival> inTime = new ArrayList<>(arrivals);
    inTime.sort(Comparator.comparingInt(Wanted.Arrival::atMin));
    List<Wanted.Arrival> open = new ArrayList<>();
    for (Wanted.Arrival arrival : inTime) {
      int here = Math.min(taken, arrival.pieces());
      taken -= here;
      if (here < arrival.pieces()) {
        open.add(new Wanted.Arrival(arrival.pieces() - here, arrival.atMin()));
      }
    }
    return asKnown(part, open).orElse(open);
  }

  /**
   * The same pieces in the lots people know, where all of those are here by the time they were
   * known for: lots of a later arrival may have hung before those of an earlier one, and what is
   * left would be counted off anew.
   */
  private Optional<List<Wanted.Arrival>> asKnown(PartKey part, List<Wanted.Arrival> pool) {
    List<Chain> known =
        open.getOrDefault(part, List.of()).stream()
            .filter(c -> !c.rework())
            .sorted(Comparator.comparingInt(Chain::readyMin).thenComparingInt(Chain::number))
            .toList();
    int here = settled(part).stream().mapToInt(Chain::readyMin).max().orElse(0);
    List<Wanted.Arrival> lots = new ArrayList<>();
    int at = 0;
    int left = pool.isEmpty() ? 0 : pool.get(0).pieces();
    for (Chain chain : known) {
      int wanted = chain.pieces();
      int ready = Integer.MIN_VALUE;
      while (wanted > 0 && at < pool.size()) {
        int taken = Math.min(wanted, left);
        ready = taken > 0 ? pool.get(at).atMin() : ready;
        wanted -= taken;
        left -= taken;
        if (left == 0) {
          at++;
          left = at < pool.size() ? pool.get(at).pieces() : 0;
        }
      }
      if (wanted > 0 || ready > Math.max(here, chain.readyMin())) {
        return Optional.empty();
      }
      lots.add(new Wanted.Arrival(chain.pieces(), ready));
    }
    return at == pool.size() ? Optional.of(lots) : Optional.empty();
  }

  /** Numbers for the lots of a part: those of the plan so far where pieces agree, then new ones. */
  LotNumbers numbers(PartKey part) {
    List<Chain> all = new ArrayList<>(settled(part));
    all.addAll(open.getOrDefault(part, List.of()));
    int last = all.stream().mapToInt(Chain::number).max().orElse(0);
    return new LotNumbers(
        open.getOrDefault(part, List.of()).stream().filter(c -> !c.rework()).toList(), last);
  }
}
