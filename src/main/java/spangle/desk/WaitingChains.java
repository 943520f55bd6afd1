package spangle.desk;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import spangle.plan.Chain;
import spangle.plan.Lot;

/** Lots a plan leaves out, each with those of its later legs that are left out too. */
final class WaitingChains {
  private WaitingChains() {}

  /**
   * The chains in the order they are due.
   *
   * @param lots all lots of a week
   * @param left ids of those left out
   */
  static List<List<String>> of(List<Lot> lots, Set<String> left) {
    List<Lot> waiting =
        lots.stream()
            .filter(l -> left.contains(l.id()))
            .sorted(
                Comparator.comparingInt(Lot::dueMin)
                    .thenComparing(Lot::jobId)
                    .thenComparing(Lot::id))
            .toList();
    Map<String, String> next = new HashMap<>();
    for (Lot lot : waiting) {
      lot.after().map(Chain::lotId).ifPresent(before -> next.putIfAbsent(before, lot.id()));
    }
    List<List<String>> chains = new ArrayList<>();
    for (Lot lot : waiting) {
      if (lot.after().filter(c -> left.contains(c.lotId())).isEmpty()) {
        List<String> chain = new ArrayList<>();
        for (String id = lot.id(); id != null; id = next.get(id)) {
          chain.add(id);
        }
        chains.add(chain);
      }
    }
    return chains;
  }
}
