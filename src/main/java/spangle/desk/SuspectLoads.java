package spangle.desk;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import spangle.plan.Brief;
import spangle.plan.FinishKind;
import spangle.plan.Lot;
import spangle.plan.Plan;
import spangle.plan.PlannedBatch;
import spangle.plan.PlannedLoad;
import spangle.plan.event.LoadState;
import spangle.plan.event.WeekState;
import spangle.report.Danger;
import spangle.report.HeldPart;
import spangle.report.LoadNote;

/**
 * Loads that were in a machine when it broke down: who decides about them and what they look at. It
 * is common practice to hold them, to prove the cure on the part that heats up last, and to count
 * them as good only then.
 */
final class SuspectLoads {
  /** One load, why it is held, who decides, what they look at. */
  record Suspect(String load, String why, String who, String look, List<Lot> lots) {
    Suspect {
      lots = List.copyOf(lots);
    }

    /** The line of the change list. */
    String words() {
      return load + " is held until inspected: " + why + ". " + who + " decides: " + look;
    }
  }

  private SuspectLoads() {}

  /** All of them, in the order of their numbers. */
  static List<Suspect> of(WeekState state, Brief brief, Plan plan) {
    Map<String, Lot> lots = new HashMap<>();
    brief.lots().forEach(l -> lots.put(l.id(), l));
    Map<String, PlannedLoad> loads = new HashMap<>();
    for (PlannedBatch batch : plan.batches()) {
      batch.loads().forEach(l -> loads.put(l.id(), l));
    }
    List<Suspect> suspects = new ArrayList<>();
    for (LoadState each : state.loads().values()) {
      PlannedLoad load = loads.get(each.load());
      if (!each.suspect().isEmpty()) {
        List<Lot> on =
            load == null
                ? List.of()
                : load.lotIds().stream().filter(lots::containsKey).map(lots::get).toList();
        FinishKind kind = on.isEmpty() ? FinishKind.POWDER : on.get(0).finish().kind();
        suspects.add(new Suspect(each.load(), each.suspect(), who(kind), look(kind, each, on), on));
      }
    }
    return suspects;
  }

  private static String who(FinishKind kind) {
    return kind == FinishKind.ZINC ? "The kettle lead" : "The inspector";
  }

  /** Only finished pieces can be rejected; before that they are put right, or they stay. */
  private static String look(FinishKind kind, LoadState state, List<Lot> lots) {
    boolean finished = lots.stream().allMatch(Lot::lastLeg);
    String then =
        "; good: inspected load="
            + state.load()
            + (finished
                ? ", not good: the same, then rejected with a count"
                : ", not good: it stays held and its next step waits until it is put right");
    return switch (kind) {
          case POWDER ->
              "how hot the parts were and for how long (probe or oven recorder), solvent rub on the"
                  + " heaviest part, colour and gloss beside the first-off piece";
          case LIQUID ->
              "through-dry and solvent rub on the heaviest part, runs, dirt and marks in the film";
          case DEGAS ->
              "how long the parts stood at the bake's temperature; short of it they are baked anew"
                  + " before powder, and never outside their window after zinc";
          case ZINC ->
              "nobody near until the kettle is safe by the local code; then bare spots, ash in the"
                  + " coating, thickness in five places";
        }
        + then;
  }

  /** The notes of loads, those that are held with a line that says so first. */
  static List<LoadNote> marked(List<LoadNote> notes, List<Suspect> suspects) {
    return notes.stream()
        .map(
            note ->
                suspects.stream()
                    .filter(s -> s.load().equals(note.loadId()))
                    .findFirst()
                    .map(s -> marked(note, s))
                    .orElse(note))
        .toList();
  }

  private static LoadNote marked(LoadNote note, Suspect suspect) {
    List<String> cautions = new ArrayList<>();
    cautions.add("HELD: " + suspect.why() + ". " + suspect.who() + " decides: " + suspect.look());
    cautions.addAll(note.cautions());
    return new LoadNote(
        note.loadId(),
        note.drawAmount(),
        note.drawUnit(),
        note.drawWords(),
        note.level(),
        cautions);
  }

  /** As rows of the list of what waits for a person. */
  static List<HeldPart> held(List<Suspect> suspects) {
    List<HeldPart> rows = new ArrayList<>();
    for (Suspect suspect : suspects) {
      Map<String, HeldPart> byPart = new LinkedHashMap<>();
      for (Lot lot : suspect.lots()) {
        byPart.merge(
            WeekIndex.key(lot.jobId(), lot.partId()),
            new HeldPart(
                lot.jobId(),
                lot.partId(),
                lot.label() + " on " + suspect.load(),
                lot.pieces(),
                "suspect",
                suspect.why() + ". Look at: " + suspect.look(),
                suspect.who().replace("The ", ""),
                Danger.WORK,
                OptionalInt.of(lot.dueMin())),
            SuspectLoads::plus);
      }
      rows.addAll(byPart.values());
    }
    return rows;
  }

  private static HeldPart plus(HeldPart a, HeldPart b) {
    return new HeldPart(
        a.jobId(),
        a.partId(),
        a.partName(),
        a.pieces() + b.pieces(),
        a.gate(),
        a.words(),
        a.whoAnswers(),
        a.danger(),
        OptionalInt.of(Math.min(a.dueMin().orElse(0), b.dueMin().orElse(0))));
  }
}
