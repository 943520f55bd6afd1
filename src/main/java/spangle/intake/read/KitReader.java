package spangle.intake.read;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeSet;
import spangle.intake.problem.Place;
import spangle.intake.problem.Problem;
import spangle.intake.problem.ProblemCode;
import spangle.intake.source.Datum;
import spangle.intake.source.Near;
import spangle.intake.week.Job;
import spangle.intake.week.KitOrder;
import spangle.intake.week.PartLine;

/** Reads kits and holds their bills against the jobs. */
final class KitReader {
  private final Times times;
  private final List<Job> jobs;
  private final Map<String, Integer> needed = new LinkedHashMap<>();
  private final Set<String> ids = new TreeSet<>();

  private KitReader(Times times, List<Job> jobs) {
    this.times = times;
    this.jobs = jobs;
  }

  static List<KitOrder> read(Datum.Group group, Times times, List<Job> jobs, Notes notes) {
    Fields fields = new Fields(group, notes);
    KitReader reader = new KitReader(times, jobs);
    List<KitOrder> kits = new ArrayList<>();
    for (Datum item : fields.items("kits")) {
      if (item instanceof Datum.Group kit) {
        reader.kit(new Fields(kit, notes.forRow())).ifPresent(kits::add);
      } else {
        notes.add(
            ProblemCode.WRONG_SHAPE,
            item.place(),
            "kits",
            "",
            "a list of groups",
            "each kit is a group of named values",
            "start it with '- id: ...'");
      }
    }
    fields.finish();
    return kits;
  }

  private Optional<KitOrder> kit(Fields f) {
    Optional<String> id = f.nameOnce("id", ids, "two kits bear the id", "give each kit its own id");
    OptionalInt sets = f.whole("sets", 1, 100_000);
    if (sets.isEmpty() && !f.has("sets")) {
      f.missing("sets");
    }
    Optional<Datum.Scalar> due = f.needed("due");
    OptionalInt dueMin =
        due.isEmpty()
            ? OptionalInt.empty()
            : times.minute("due", due.get(), Times.Edge.END, f.notes());
    int weight = f.wholeOr("priority", 1, 9, 1);
    boolean oneLot = f.told("one_lot").yes();
    String name = f.text("name");
    List<KitOrder.Line> lines = lines(f, sets.orElse(0));
    f.finish();
    if (f.notes().refused() || id.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
        new KitOrder(
            id.get(),
            name.isEmpty() ? id.get() : name,
            sets.orElse(1),
            dueMin.orElse(0),
            weight,
            oneLot,
            lines));
  }

  private List<KitOrder.Line> lines(Fields kit, int sets) {
    List<KitOrder.Line> lines = new ArrayList<>();
    List<Fields> rows = kit.groups("lines");
    if (rows.isEmpty()) {
      kit.missing("lines");
    }
    for (Fields row : rows) {
      Optional<String> part = row.name("part");
      OptionalInt perSet = row.whole("per_set", 1, 10_000);
      if (perSet.isEmpty() && !row.has("per_set")) {
        row.missing("per_set");
      }
      int onHand = row.wholeOr("on_hand", 0, 10_000_000, 0);
      String named = row.text("job");
      row.finish();
      if (part.isPresent() && perSet.isPresent()) {
        KitOrder.Line line =
            new KitOrder.Line(part.get(), jobOf(row, part.get(), named), perSet.getAsInt(), onHand);
        check(row, line, sets);
        lines.add(line);
      }
    }
    checkOddOne(rows, lines);
    return lines;
  }

  /** The job a part's pieces come from; empty where no job of the week has it. */
  private String jobOf(Fields row, String part, String named) {
    if (!named.isEmpty()) {
      return named;
    }
    List<String> having =
        jobs.stream()
            .filter(j -> j.parts().stream().anyMatch(p -> p.id().equals(part)))
            .map(Job::id)
            .toList();
    if (having.size() > 1) {
      row.notes()
          .add(
              ProblemCode.KIT_PART_MISSING,
              row.valuePlace("part"),
              "job",
              part,
              String.join(", ", having),
              "several jobs make the part '" + part + "'; the first is taken",
              "name the job in the kit's line");
    }
    return having.isEmpty() ? "" : having.get(0);
  }

  /** A question about the pieces of a kit's line, so that who answers hears of which part. */
  private static Problem asked(
      ProblemCode code,
      KitOrder.Line line,
      int dueMin,
      Place place,
      String field,
      String value,
      String limit,
      String why,
      String remedy) {
    return new Problem(
            code, code.severity(), place, field, value, limit, why, remedy, code.meanwhile())
        .of(line.jobId(), line.partId(), dueMin);
  }

  private Optional<PartLine> part(KitOrder.Line line) {
    return jobs.stream()
        .filter(j -> j.id().equals(line.jobId()))
        .flatMap(j -> j.parts().stream())
        .filter(p -> p.id().equals(line.partId()))
        .findFirst();
  }

  private void check(Fields row, KitOrder.Line line, int sets) {
    long wanted = (long) sets * line.perSet() - line.onHand();
    Optional<PartLine> part = part(line);
    if (part.isEmpty()) {
      if (wanted > 0) {
        List<String> known =
            jobs.stream().flatMap(j -> j.parts().stream()).map(PartLine::id).toList();
        row.notes()
            .add(
                asked(
                    ProblemCode.KIT_PART_MISSING,
                    line,
                    Problem.NO_DUE,
                    row.valuePlace("part"),
                    "part",
                    line.partId(),
                    "",
                    "no accepted job makes the part"
                        + (line.jobId().isEmpty() ? "" : " in job '" + line.jobId() + "'")
                        + Near.hint(line.partId(), known)
                        + "; the kit cannot be complete",
                    "correct the part, order it, or count what is in the store"));
      }
      return;
    }
    String key = line.jobId() + "/" + line.partId();
    long all = needed.merge(key, (int) Math.max(0, Math.min(wanted, 100_000_000)), Integer::sum);
    if (all > part.get().qty()) {
      row.notes()
          .add(
              asked(
                  ProblemCode.KIT_SHORT,
                  line,
                  part.get().wanted().dueMin(),
                  row.valuePlace("per_set"),
                  "per_set",
                  Long.toString(all),
                  part.get().qty() + " pieces ordered",
                  "the kits need "
                      + all
                      + " pieces of '"
                      + line.partId()
                      + "' beyond the store, ordered are "
                      + part.get().qty(),
                  "order more, make fewer sets, or count the store again"));
    }
  }

  /** Corners come in pairs: one uneven number among even ones is asked about. */
  private static void checkOddOne(List<Fields> rows, List<KitOrder.Line> lines) {
    List<KitOrder.Line> odd =
        lines.stream().filter(l -> l.perSet() >= 5 && l.perSet() % 2 == 1).toList();
    long even = lines.stream().filter(l -> l.perSet() % 2 == 0).count();
    if (odd.size() == 1 && even >= 1 && even == lines.size() - 1L) {
      int at = lines.indexOf(odd.get(0));
      Fields row = rows.get(Math.min(at, rows.size() - 1));
      row.notes()
          .add(
              ProblemCode.KIT_ODD,
              row.valuePlace("per_set"),
              "per_set",
              Integer.toString(odd.get(0).perSet()),
              "",
              odd.get(0).perSet() + " per set stands alone among even numbers",
              "look at the assembly's bill");
    }
  }
}
