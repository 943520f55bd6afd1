package spangle.intake.read;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import spangle.intake.problem.ProblemCode;
import spangle.intake.source.Datum;
import spangle.intake.week.GateRecord;
import spangle.intake.week.Job;

/** Reads the gates people have opened. A record that does not count opens nothing. */
final class GateReader {
  private static final int LOOKERS = 2;

  private GateReader() {}

  static List<GateRecord> read(Datum.Group group, List<Job> jobs, Notes notes) {
    Fields fields = new Fields(group, notes);
    List<GateRecord> gates = new ArrayList<>();
    for (Fields entry : fields.groups("gates")) {
      gate(entry, jobs).ifPresent(gates::add);
    }
    fields.finish();
    return gates;
  }

  private static Optional<GateRecord> gate(Fields f, List<Job> jobs) {
    Optional<Datum.Scalar> word = f.needed("gate");
    Optional<GateRecord.Gate> gate = word.flatMap(w -> gate(f, w));
    Optional<String> part = f.name("part");
    String job = f.text("job");
    List<String> by = f.texts("opened_by", "[,;]").stream().map(Datum.Scalar::text).toList();
    String at = f.text("at");
    String note = f.text("note");
    f.finish();
    if (gate.isEmpty() || part.isEmpty()) {
      return Optional.empty();
    }
    List<String> having =
        jobs.stream()
            .filter(j -> job.isEmpty() || j.id().equals(job))
            .filter(j -> j.parts().stream().anyMatch(p -> p.id().equals(part.get())))
            .map(Job::id)
            .toList();
    if (having.size() != 1) {
      bad(
          f,
          "part",
          part.get(),
          having.isEmpty()
              ? "no accepted job has this part"
              : "several jobs have this part: " + String.join(", ", having),
          "name job and part as in the job file");
      return Optional.empty();
    }
    long people = by.stream().map(GateReader::person).distinct().count();
    int wanted = gate.get() == GateRecord.Gate.VENTS ? LOOKERS : 1;
    if (people < wanted) {
      bad(
          f,
          "opened_by",
          String.join(", ", by),
          wanted == LOOKERS
              ? "holes are looked through by two people, each signs"
              : "nobody has signed",
          "let " + wanted + " sign, in opened_by");
      return Optional.empty();
    }
    if (at.isBlank() || note.isBlank()) {
      bad(
          f,
          at.isBlank() ? "at" : "note",
          "",
          "a record that does not say who, when and what was seen opens nothing",
          "add at: the day and time, and note: what was seen");
      return Optional.empty();
    }
    return Optional.of(new GateRecord(gate.get(), having.get(0), part.get(), by, at, note));
  }

  private static Optional<GateRecord.Gate> gate(Fields f, Datum.Scalar word) {
    String text = word.text().toLowerCase(Locale.ROOT).replace('_', '-').replace(' ', '-');
    if (text.equals("material") || text.equals("fit") || text.equals("soldered")) {
      bad(
          f,
          "gate",
          word.text(),
          "this gate is never opened by a signature: " + text,
          text.equals("fit")
              ? "change the part, or send it where the kettle is larger"
              : "take another route");
      return Optional.empty();
    }
    return f.word("gate", Fields.words(GateRecord.Gate.values(), GateRecord.Gate::word));
  }

  private static void bad(Fields f, String key, String value, String why, String remedy) {
    f.notes().add(ProblemCode.GATE_RECORD_BAD, f.valuePlace(key), key, value, "", why, remedy);
  }

  /** One person, however the name is spaced or capitalized. */
  private static String person(String name) {
    return name.replaceAll("(?U)\\s+", " ").strip().toLowerCase(Locale.ROOT);
  }
}
