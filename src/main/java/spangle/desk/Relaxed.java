package spangle.desk;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import spangle.plan.BathSpec;
import spangle.plan.Brief;
import spangle.plan.Chain;
import spangle.plan.LineSpec;
import spangle.plan.Lot;
import spangle.plan.LotChange;

/**
 * A brief in which one thing that may hold a lot is out of the way.
 *
 * @param what stable name of the thing
 * @param groups what it is a part of: where it explains as much as something wider of the same
 *     group, the wider thing is not said beside it
 * @param words the thing, as the end of "held by"
 * @param without what it would take, as the beginning of a sentence about the sooner end
 * @param brief the brief without it
 */
record Relaxed(String what, Set<String> groups, String words, String without, Brief brief) {
  Relaxed {
    groups = Set.copyOf(groups);
  }

  /**
   * Everything that may hold these pieces, one at a time, in the order of a load's way; of what
   * overlaps the narrower first.
   *
   * @param chains lots of one part, a list of legs for each
   */
  static List<Relaxed> all(Brief brief, List<List<Lot>> chains) {
    List<Relaxed> all = new ArrayList<>();
    Set<String> ids =
        chains.stream().flatMap(List::stream).map(Lot::id).collect(Collectors.toSet());
    List<Lot> legs = chains.get(0);
    ready(brief, chains, ids, all);
    all.addAll(RelaxedMaterial.all(brief, legs, ids));
    zincLevel(brief, ids, all);
    windows(brief, ids, all);
    legBefore(brief, legs, ids, all);
    for (LineSpec line : brief.lines()) {
      if (legs.stream().anyMatch(l -> l.lineId().equals(line.id()))) {
        all.addAll(new RelaxedLine(brief, line, legs, ids).all());
      }
    }
    kits(brief, legs, all);
    return all;
  }

  private static void ready(
      Brief brief, List<List<Lot>> chains, Set<String> ids, List<Relaxed> all) {
    Lot first =
        chains.stream()
            .map(chain -> chain.get(0))
            .max(Comparator.comparingInt(Lot::readyMin))
            .orElseThrow();
    if (first.readyMin() > opens(brief, first)) {
      all.add(
          new Relaxed(
              "ready",
              Set.of("ready"),
              "its parts, which are ready only " + DayWords.of(first.readyMin()),
              "with the parts here when the week begins",
              BriefChange.lots(
                  brief, l -> ids.contains(l.id()) ? LotChange.of(l).ready(0).made() : l)));
    }
  }

  /** The first minute anybody could begin with it. */
  private static int opens(Brief brief, Lot lot) {
    return brief.lines().stream()
        .filter(line -> line.id().equals(lot.lineId()) && !line.before().isEmpty())
        .map(line -> line.before().get(0).calendar())
        .filter(hours -> !hours.open().isEmpty())
        .mapToInt(hours -> hours.open().get(0).startMin())
        .findFirst()
        .orElse(0);
  }

  private static void zincLevel(Brief brief, Set<String> ids, List<Relaxed> all) {
    for (BathSpec bath : brief.baths()) {
      Optional<BathSpec.Need> need =
          bath.needs().stream().filter(n -> ids.contains(n.lotId())).findFirst();
      if (need.isEmpty()) {
        continue;
      }
      List<BathSpec.Need> others =
          bath.needs().stream().filter(n -> !ids.contains(n.lotId())).toList();
      BathSpec full = new BathSpec(bath.machineId(), bath.marks(), bath.mmPerKg(), others);
      all.add(
          new Relaxed(
              "zinc-level",
              Set.of("zinc-level"),
              ZincWords.of(bath, need.get().spareMm()),
              "with the bath at its mark",
              brief.with(brief.baths().stream().map(b -> b.equals(bath) ? full : b).toList())));
    }
  }

  private static void legBefore(Brief brief, List<Lot> legs, Set<String> ids, List<Relaxed> all) {
    if (legs.size() > 1) {
      Lot before = legs.get(legs.size() - 2);
      all.add(
          new Relaxed(
              "leg-before",
              Set.of("leg-before"),
              "the step before it, " + before.finish().name(),
              "if it did not have to wait for " + before.finish().name(),
              BriefChange.lots(
                  brief,
                  l ->
                      ids.contains(l.id()) && l.lastLeg()
                          ? LotChange.of(l).after(Optional.empty()).made()
                          : l)));
    }
  }

  private static void windows(Brief brief, Set<String> ids, List<Relaxed> all) {
    boolean limited =
        brief.lots().stream()
                .filter(l -> ids.contains(l.id()))
                .anyMatch(
                    l -> l.after().filter(c -> c.maxGapMin() != Integer.MAX_VALUE).isPresent())
            || brief.lines().stream()
                .flatMap(l -> l.before().stream())
                .anyMatch(s -> s.longestWaitAfterMin() != Integer.MAX_VALUE);
    if (!limited) {
      return;
    }
    Brief patient = BriefChange.stations(brief, s -> s.waiting(Integer.MAX_VALUE));
    all.add(
        new Relaxed(
            "window",
            Set.of("leg-before"),
            "the longest waits: washed, pickled, fluxed or fresh from the step before it must go on"
                + " in time",
            "if work could wait as long as it likes between steps",
            BriefChange.lots(patient, l -> ids.contains(l.id()) ? unhurried(l) : l)));
  }

  private static Lot unhurried(Lot lot) {
    Optional<Chain> patient =
        lot.after().map(c -> new Chain(c.lotId(), c.minGapMin(), Integer.MAX_VALUE));
    return LotChange.of(lot).after(patient).made();
  }

  private static void kits(Brief brief, List<Lot> legs, List<Relaxed> all) {
    List<String> own = legs.get(legs.size() - 1).kitIds();
    if (brief.kits().stream().allMatch(k -> own.contains(k.id()))) {
      return;
    }
    all.add(
        new Relaxed(
            "kit",
            Set.of("dates"),
            "the dates of kits",
            "if they may be whole later",
            BriefChange.kits(brief, k -> own.contains(k.id()) ? k : k.due(brief.horizonMin()))));
  }
}
