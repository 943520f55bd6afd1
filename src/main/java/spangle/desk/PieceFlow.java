package spangle.desk;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import spangle.plan.Lot;
import spangle.plan.event.LotNames;

/**
 * Which pieces left their load and on which load they are now. Pieces of the same part at the same
 * step stand in for one another; those that leave in the order of time are taken first.
 */
final class PieceFlow {
  /**
   * Pieces that came onto a load or left it.
   *
   * @param work part and step, as {@link LotNames#work} names it
   * @param pieces how many
   * @param load where they were before, or are now; empty where they are on no load
   */
  record Flow(String work, int pieces, String load) {}

  private record Rest(String load, int pieces) {}

  private final Map<String, Lot> lots;
  private final Map<String, List<Flow>> came = new HashMap<>();
  private final Map<String, List<Flow>> went = new HashMap<>();
  private final Map<String, List<Rest>> leaving = new TreeMap<>();

  PieceFlow(LoadMatch match, Map<String, Lot> lots) {
    this.lots = Map.copyOf(lots);
    List<LoadMatch.Pair> pairs = new ArrayList<>(match.pairs());
    pairs.sort(
        Comparator.comparingInt((LoadMatch.Pair p) -> p.was().firstMin())
            .thenComparing(p -> p.was().id()));
    for (LoadMatch.Pair pair : pairs) {
      leave(pair.was(), less(pieces(pair.was()), pieces(pair.is())));
    }
    match.gone().forEach(was -> leave(was, pieces(was)));
    for (LoadMatch.Pair pair : pairs) {
      come(pair.is(), less(pieces(pair.is()), pieces(pair.was())));
    }
    match.added().forEach(is -> come(is, pieces(is)));
    leaving.forEach(
        (work, rests) ->
            rests.stream()
                .filter(r -> r.pieces() > 0)
                .forEach(r -> went(r.load(), new Flow(work, r.pieces(), ""))));
  }

  /** Pieces on a load by part and step. */
  private Map<String, Integer> pieces(LoadMatch.Spot spot) {
    Map<String, Integer> pieces = new LinkedHashMap<>();
    for (String id : spot.load().lotIds()) {
      Lot lot = lots.get(id);
      if (lot != null) {
        pieces.merge(LotNames.work(id), lot.pieces(), Integer::sum);
      }
    }
    return pieces;
  }

  private static Map<String, Integer> less(Map<String, Integer> from, Map<String, Integer> taken) {
    Map<String, Integer> left = new LinkedHashMap<>();
    from.forEach(
        (work, n) -> {
          int more = n - taken.getOrDefault(work, 0);
          if (more > 0) {
            left.put(work, more);
          }
        });
    return left;
  }

  private void leave(LoadMatch.Spot was, Map<String, Integer> pieces) {
    pieces.forEach(
        (work, n) ->
            leaving.computeIfAbsent(work, w -> new ArrayList<>()).add(new Rest(was.id(), n)));
  }

  private void come(LoadMatch.Spot is, Map<String, Integer> pieces) {
    pieces.forEach(
        (work, n) -> {
          int wanted = n;
          List<Rest> rests = leaving.getOrDefault(work, new ArrayList<>());
          for (int i = 0; i < rests.size() && wanted > 0; i++) {
            Rest rest = rests.get(i);
            int taken = Math.min(wanted, rest.pieces());
            if (taken > 0) {
              wanted -= taken;
              rests.set(i, new Rest(rest.load(), rest.pieces() - taken));
              came(is.id(), new Flow(work, taken, rest.load()));
              went(rest.load(), new Flow(work, taken, is.id()));
            }
          }
          if (wanted > 0) {
            came(is.id(), new Flow(work, wanted, ""));
          }
        });
  }

  private void came(String load, Flow flow) {
    came.computeIfAbsent(load, l -> new ArrayList<>()).add(flow);
  }

  private void went(String load, Flow flow) {
    went.computeIfAbsent(load, l -> new ArrayList<>()).add(flow);
  }

  /** What a load carries that it did not before. */
  List<Flow> cameOnto(String load) {
    return List.copyOf(came.getOrDefault(load, List.of()));
  }

  /** What a load of the plan before does not carry any more. */
  List<Flow> wentFrom(String load) {
    return List.copyOf(went.getOrDefault(load, List.of()));
  }
}
