package spangle.desk;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalInt;
import spangle.plan.Lot;
import spangle.report.Danger;
import spangle.report.HeldPart;
import spangle.report.LoadNote;

/**
 * A load that does not go on before a person has decided.
 *
 * @param load its number
 * @param kind what it waits for
 * @param why what stands in its way
 * @param who decides
 * @param look what they look at and do
 * @param lots what hangs on it
 */
record HeldLoad(String load, Kind kind, String why, String who, String look, List<Lot> lots) {
  /** What it waits for. */
  enum Kind {
    /** It was in a machine that broke down. */
    SUSPECT("is held until inspected", "HELD", "Look at: "),
    /** It hangs and the week has no time for what is to come. */
    WAITS("hangs and waits", "WAITS", "Do: ");

    private final String words;
    private final String mark;
    private final String ask;

    Kind(String words, String mark, String ask) {
      this.words = words;
      this.mark = mark;
      this.ask = ask;
    }
  }

  HeldLoad {
    lots = List.copyOf(lots);
  }

  /** The line of the change list. */
  String words() {
    return load + " " + kind.words + ": " + why + ". " + who + " decides: " + look;
  }

  /** Their lines; loads that wait for the same thing share one. */
  static List<String> lines(List<HeldLoad> held) {
    Map<String, List<String>> byWords = new LinkedHashMap<>();
    for (HeldLoad each : held) {
      byWords
          .computeIfAbsent(each.words().substring(each.load().length()), w -> new ArrayList<>())
          .add(each.load());
    }
    List<String> lines = new ArrayList<>();
    byWords.forEach(
        (words, loads) ->
            lines.add(
                String.join(", ", loads)
                    + (loads.size() > 1
                        ? words.replace("hangs and waits", "hang and wait")
                        : words)));
    return lines;
  }

  /** The notes of loads, those that are held with a line that says so first. */
  static List<LoadNote> marked(List<LoadNote> notes, List<HeldLoad> held) {
    return notes.stream()
        .map(
            note ->
                held.stream()
                    .filter(s -> s.load().equals(note.loadId()))
                    .findFirst()
                    .map(s -> marked(note, s))
                    .orElse(note))
        .toList();
  }

  private static LoadNote marked(LoadNote note, HeldLoad held) {
    List<String> cautions = new ArrayList<>();
    cautions.add(
        held.kind.mark + ": " + held.why() + ". " + held.who() + " decides: " + held.look());
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
  static List<HeldPart> rows(List<HeldLoad> held) {
    List<HeldPart> rows = new ArrayList<>();
    for (HeldLoad each : held) {
      Map<String, HeldPart> byPart = new LinkedHashMap<>();
      for (Lot lot : each.lots()) {
        byPart.merge(
            WeekIndex.key(lot.jobId(), lot.partId()),
            new HeldPart(
                lot.jobId(),
                lot.partId(),
                lot.label() + " on " + each.load(),
                lot.pieces(),
                each.kind.name().toLowerCase(Locale.ROOT),
                each.why() + ". " + each.kind.ask + each.look(),
                each.who().replace("The ", ""),
                Danger.WORK,
                OptionalInt.of(lot.dueMin())),
            HeldLoad::plus);
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
