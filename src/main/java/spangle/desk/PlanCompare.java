package spangle.desk;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import java.util.TreeSet;
import spangle.plan.Brief;
import spangle.plan.LeftOut;
import spangle.plan.Lot;
import spangle.plan.Plan;
import spangle.plan.PlannedBatch;
import spangle.plan.PlannedLoad;
import spangle.plan.json.OverlayDigest;
import spangle.plan.json.PlanFile;
import spangle.report.Change;
import spangle.report.week.KitStatus;

/** What moved between two plans of the same shop, lot by lot, in words. */
public final class PlanCompare {
  private PlanCompare() {}

  /**
   * The difference.
   *
   * @param made what the two plans were made from that is not the same, in words
   * @param balance what both come to
   * @param parts what it means for the jobs, worst first
   * @param kits what it means for assembly, in words
   * @param changes one per lot that is elsewhere, new or dropped
   * @param loadsMoved loads of the new plan with a lot that moved
   * @param minutesMoved minutes all moved lots are shifted by, taken together
   */
  public record Difference(
      List<String> made,
      List<Balance> balance,
      List<PartChange> parts,
      List<String> kits,
      List<Change> changes,
      int loadsMoved,
      long minutesMoved) {
    /** Copies the lists. */
    public Difference {
      made = List.copyOf(made);
      balance = List.copyOf(balance);
      parts = List.copyOf(parts);
      kits = List.copyOf(kits);
      changes = List.copyOf(changes);
    }
  }

  private record Spot(String machine, int startMin, int endMin, String load) {
    String words() {
      return machine + " " + DayWords.of(startMin) + " to " + DayWords.of(endMin);
    }
  }

  /** Compares an old plan with a new one. */
  public static Difference of(PlanFile before, PlanFile after) {
    Map<String, Spot> old = spots(before.plan());
    Map<String, Spot> now = spots(after.plan());
    Map<String, Lot> lots = new TreeMap<>();
    before.brief().lots().forEach(l -> lots.put(l.id(), l));
    after.brief().lots().forEach(l -> lots.put(l.id(), l));
    List<Change> changes = new ArrayList<>();
    TreeMap<String, Boolean> moved = new TreeMap<>();
    long minutes = 0;
    for (Lot lot : lots.values()) {
      Spot was = old.get(lot.id());
      Spot is = now.get(lot.id());
      if (was == null && is == null) {
        continue;
      }
      if (was == null || is == null) {
        boolean added = is != null;
        String there = is != null ? is.words() : was != null ? was.words() : "";
        changes.add(
            new Change(
                added ? "new" : "dropped",
                lot.id(),
                added ? missing(before, lot) : there,
                added ? there : missing(after, lot),
                tell(lot)));
      } else if (!was.machine().equals(is.machine()) || was.startMin() != is.startMin()) {
        minutes += Math.abs(is.startMin() - was.startMin());
        moved.put(is.load(), true);
        changes.add(new Change("moved", lot.id(), was.words(), is.words(), tell(lot)));
      }
    }
    Map<String, PartFate> fatesBefore = PartFate.of(before);
    Map<String, PartFate> fatesAfter = PartFate.of(after);
    return new Difference(
        made(before, after),
        Balance.of(before, after, fatesBefore, fatesAfter),
        PartChange.of(fatesBefore, fatesAfter),
        kits(before, after),
        changes,
        moved.size(),
        minutes);
  }

  private static List<String> made(PlanFile before, PlanFile after) {
    List<String> words = new ArrayList<>();
    before.overlay().ifPresent(o -> words.add("the first plan is a what-if: " + o.title()));
    after.overlay().ifPresent(o -> words.add("the second plan is a what-if: " + o.title()));
    after
        .overlay()
        .flatMap(OverlayDigest::startedFrom)
        .ifPresent(
            start ->
                words.add(
                    start.same()
                        ? "the overlay changes nothing a plan depends on: the second plan is plan "
                            + start.version()
                            + " of the week"
                        : "the search of the second plan started from plan "
                            + start.version()
                            + " of the week and went on: it may be better for that alone"));
    Map<String, String> old = digests(before);
    Map<String, String> now = digests(after);
    TreeSet<String> files = new TreeSet<>(old.keySet());
    files.addAll(now.keySet());
    for (String file : files) {
      if (!Objects.equals(old.get(file), now.get(file))) {
        String how =
            !old.containsKey(file)
                ? " was not there for the first plan"
                : !now.containsKey(file)
                    ? " was not there for the second plan"
                    : " was changed between the two";
        words.add(file + how);
      }
    }
    if (!before.brief().monday().equals(after.brief().monday())) {
      words.add(
          "they are plans of two weeks: "
              + before.brief().monday()
              + " and "
              + after.brief().monday());
    }
    return words;
  }

  private static Map<String, String> digests(PlanFile file) {
    Map<String, String> digests = new TreeMap<>();
    file.inputs().forEach(input -> digests.put(input.file(), input.sha256()));
    return digests;
  }

  private static List<String> kits(PlanFile before, PlanFile after) {
    Map<String, KitStatus> old = new TreeMap<>();
    Balance.kits(before).forEach(k -> old.put(k.kit().id(), k));
    List<String> words = new ArrayList<>();
    for (KitStatus now : Balance.kits(after)) {
      KitStatus was = old.get(now.kit().id());
      String said = kitWords(now);
      if (was != null && !kitWords(was).equals(said)) {
        words.add(now.kit().name() + ": " + said + "; before: " + kitWords(was));
      } else if (was == null) {
        words.add(now.kit().name() + ": " + said + "; new");
      }
    }
    return words;
  }

  private static String kitWords(KitStatus kit) {
    String sets = kit.setsPlanned() + " of " + kit.kit().sets() + " sets";
    return kit.completeMin().isPresent()
        ? "all "
            + kit.kit().sets()
            + " sets "
            + DayWords.of(kit.completeMin().getAsInt())
            + (kit.completeMin().getAsInt() > kit.kit().dueMin() ? " (late)" : "")
        : sets;
  }

  private static String missing(PlanFile file, Lot lot) {
    Brief brief = file.brief();
    if (brief.lots().stream().noneMatch(l -> l.id().equals(lot.id()))) {
      return "not in the week";
    }
    return file.plan().leftOut().stream()
        .filter(l -> l.lotId().equals(lot.id()))
        .map(LeftOut::reason)
        .findFirst()
        .orElse("not planned");
  }

  private static String tell(Lot lot) {
    return lot.kitIds().isEmpty()
        ? "hangers"
        : "hangers, assembly " + String.join(" ", lot.kitIds());
  }

  private static Map<String, Spot> spots(Plan plan) {
    Map<String, Spot> spots = new TreeMap<>();
    for (PlannedBatch batch : plan.batches()) {
      for (PlannedLoad load : batch.loads()) {
        Spot spot = new Spot(batch.machineId(), batch.startMin(), batch.endMin(), load.id());
        load.lotIds().forEach(id -> spots.put(id, spot));
      }
    }
    return spots;
  }
}
