package spangle.intake.read;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.stream.Collectors;
import spangle.intake.problem.Problem;
import spangle.intake.problem.ProblemCode;
import spangle.intake.problem.Problems;
import spangle.intake.problem.Severity;
import spangle.intake.source.Datum;
import spangle.intake.source.Near;
import spangle.intake.week.Body;
import spangle.intake.week.CarrierUse;
import spangle.intake.week.Handling;
import spangle.intake.week.Heat;
import spangle.intake.week.Hollows;
import spangle.intake.week.Metal;
import spangle.intake.week.PartLine;
import spangle.intake.week.Told;
import spangle.intake.week.Wanted;
import spangle.measure.QuantityKind;
import spangle.part.Material;

/** Reads one part of one job, whatever file it came from. */
final class PartRow {
  private static final int MANY_MISSING = 3;

  /**
   * What became of a row.
   *
   * @param jobId the job; empty where it could not be read
   * @param customer who wants it
   * @param part the part; empty when the row is refused
   * @param problems its problems, with job, part and due
   */
  record Reading(String jobId, String customer, Optional<PartLine> part, List<Problem> problems) {}

  private final Fields fields;
  private final JobContext context;

  private PartRow(Fields fields, JobContext context) {
    this.fields = fields;
    this.context = context;
  }

  static Reading read(Datum.Group group, JobContext context) {
    Problems problems = new Problems();
    Fields fields = new Fields(group, new Notes(problems, false));
    return new PartRow(fields, context).reading(problems);
  }

  private Reading reading(Problems problems) {
    Optional<String> job = fields.name("job");
    String customer = fields.text("customer");
    Optional<String> id = fields.name("part");
    boolean whole = !refuseExtraCells();
    // With a cell too many, every later cell stands in the wrong column: one complaint says it all.
    Optional<PartLine> part = whole ? part(id.orElse("?")) : Optional.empty();
    if (whole) {
      fields.finish();
    }
    String jobId = job.orElseGet(() -> fields.text("job"));
    String partId = id.orElseGet(() -> fields.text("part"));
    boolean dueRead = fields.has("due") && problems.list().stream().noneMatch(PartRow::refusesDue);
    int due = dueRead && part.isPresent() ? part.get().wanted().dueMin() : Problem.NO_DUE;
    boolean named = job.isPresent() && id.isPresent();
    List<Problem> of =
        together(problems.list()).stream()
            .map(p -> named ? asked(p, jobId, partId) : p)
            .map(p -> p.of(jobId, partId, due))
            .toList();
    boolean refused = fields.notes().refused() || job.isEmpty() || id.isEmpty();
    return new Reading(jobId, customer, refused ? Optional.empty() : part, of);
  }

  private static boolean refusesDue(Problem problem) {
    return problem.severity() == Severity.REFUSED && problem.field().equals("due");
  }

  /** A row that lacks several values is said once: most often the table has no such columns. */
  private List<Problem> together(List<Problem> problems) {
    List<Problem> missing = problems.stream().filter(this::nowhere).toList();
    if (missing.size() < MANY_MISSING) {
      return problems;
    }
    Problem first = missing.get(0);
    List<Problem> together = new ArrayList<>(problems);
    together.removeAll(missing);
    together.add(
        new Problem(
            first.code(),
            first.severity(),
            first.place(),
            "",
            "",
            "",
            "missing: " + missing.stream().map(Problem::field).collect(Collectors.joining(", ")),
            "give them; nothing is assumed. If the columns are there under other names, see the"
                + " columns that were not known",
            first.meanwhile()));
    return together;
  }

  private boolean nowhere(Problem problem) {
    return problem.code() == ProblemCode.VALUE_MISSING && problem.place().equals(fields.place());
  }

  private static Problem asked(Problem problem, String job, String part) {
    boolean answerable =
        problem.severity() == Severity.ASK || problem.severity() == Severity.REFUSED;
    return answerable && problem.ask().isEmpty() && !problem.field().isEmpty()
        ? problem.asking(AnswerBook.ask(job, part, JobColumns.stem(problem.field())))
        : problem;
  }

  private boolean refuseExtraCells() {
    boolean found = false;
    for (String name : fields.names()) {
      if (name.startsWith(TableRows.EXTRA)) {
        found = true;
        fields
            .notes()
            .add(
                ProblemCode.CELL_WITHOUT_COLUMN,
                fields.valuePlace(name),
                "",
                fields.text(name),
                "as many cells as headings",
                "the row has more cells than there are headings, so no cell can be trusted",
                "look for a decimal comma or a comma in a text; put such a cell in quotes");
      }
    }
    return found;
  }

  private Optional<PartLine> part(String id) {
    WantedReader wantedReader = new WantedReader(fields, context);
    OptionalInt qty = wantedReader.quantity();
    Metal metal = new MetalReader(fields, context).read();
    Body body = new BodyReader(fields, context).read(metal);
    Wanted wanted = wantedReader.read(qty);
    Hollows hollows = new HollowReader(fields).read();
    if (!fields.notes().refused()) {
      int pieces = Math.max(1, qty.orElse(1));
      FigureDoubts.note(fields, metal, body, pieces, hollows.welded().yes());
      FigureDoubts.noteTiny(fields, metal, body);
    }
    if (wanted.route().zinc() && metal.material() == Material.STEEL) {
      SteelDoubts.note(fields, metal);
    }
    return Optional.of(
        new PartLine(
            id,
            fields.text("description"),
            fields.text("revision"),
            qty.orElse(0),
            metal,
            body,
            wanted,
            hollows,
            heat(),
            handling(),
            fields.text("note"),
            fields.place()));
  }

  private Heat heat() {
    OptionalDouble limit =
        fields.quantity("heat_limit", QuantityKind.TEMPERATURE, Range.of(30, 600));
    String words = fields.text("heat_sensitive");
    Optional<Told> told = words.isEmpty() ? Optional.of(Told.NOTHING) : Fields.toldOf(words);
    Told sensitive = told.orElse(Told.YES);
    if (sensitive == Told.NOTHING && limit.isPresent()) {
      sensitive = Told.YES;
    }
    return new Heat(sensitive, told.isPresent() ? "" : words, limit);
  }

  private Handling handling() {
    return new Handling(
        fields.whole("hooks", 1, 100),
        fields.text("show_face"),
        fields.texts("masking", ";").stream().map(Datum.Scalar::text).toList(),
        fields.told("spin"),
        carriers(),
        fields.told("moving_parts"),
        fields.told("may_turn"));
  }

  private List<String> carriers() {
    List<String> known =
        context.shop().lines().stream()
            .flatMap(l -> l.carriers().stream())
            .map(CarrierUse::id)
            .toList();
    List<Datum.Scalar> named = fields.texts("carriers", "[,;]");
    for (Datum.Scalar carrier : named) {
      if (!known.contains(carrier.text())) {
        fields
            .notes()
            .add(
                ProblemCode.UNKNOWN_NAME,
                carrier.place(),
                "carriers",
                carrier.text(),
                String.join(", ", known),
                "the shop has no carrier '"
                    + carrier.text()
                    + "'"
                    + Near.hint(carrier.text(), known),
                "use ids of carriers in shop.yaml, or leave it empty");
      }
    }
    return named.stream().map(Datum.Scalar::text).toList();
  }
}
