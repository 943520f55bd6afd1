package spangle.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import spangle.desk.FitPlace;
import spangle.desk.FitSheets;
import spangle.fit.FitAnswer;
import spangle.fit.FitRequest;
import spangle.fit.KettleFit;
import spangle.fit.Verdict;

/** Does a part go into the kettle, an oven, a booth or onto a carrier, and how. */
@Command(
    name = "fit",
    mixinStandardHelpOptions = true,
    addMethodSubcommands = false,
    description = {
      "Does it go in: straight, tilted, in two dips, or not.",
      "With a week and a part, every station of its route, the crane and the gates count.",
      "Exit code: 0 answered; 1 a part of a week does not go in or a gate is shut; 2 wrong usage;",
      "3 the week cannot be used or the sheet not written."
    },
    footer = {
      "",
      "Examples:",
      "  spangle fit samples/harbour-week H-205/HC-42 --out cabinet.html",
      "  spangle fit --kettle usable 3.7x1.1x1.9m --size 2000x1200x500mm --mass 240kg",
      "  spangle fit --kettle kettle-medium --size 4250x700x400mm --level-drop 60mm",
      "  spangle fit --oven box-oven-large --rack flat-rack --size 1500x1200x80mm"
    })
final class FitCommand implements Callable<Integer> {
  @Spec
  @SuppressWarnings("NullAway.Init")
  private CommandSpec spec;

  @Parameters(
      arity = "0..2",
      paramLabel = "[WEEK [PART]]",
      description = "A week folder, and a part of it: PART, JOB or JOB/PART.")
  private List<String> weekAndPart = new ArrayList<>();

  @Option(
      names = "--kettle",
      arity = "1..2",
      paramLabel = "(PROFILE | usable LxWxDmm)",
      description = "A kettle profile, the week's own or built in; or what the kettle takes.")
  private List<String> kettle = new ArrayList<>();

  @Mixin private final FitRooms rooms = new FitRooms();

  @Mixin private final FitSubject subject = new FitSubject();

  @Option(
      names = "--overlap",
      paramLabel = "300mm",
      description = "How far two dips overlap along the part.")
  private @Nullable String overlap;

  @Option(
      names = "--rim",
      paramLabel = "150mm",
      description = "From the zinc's surface to the top edge of the kettle.")
  private @Nullable String rim;

  @Option(
      names = "--level-drop",
      paramLabel = "MM",
      description = "How far the bath stands below its mark that day.")
  private @Nullable String levelDrop;

  @Option(
      names = "--dross",
      paramLabel = "MM",
      description = "Dross above the layer the usable depth already allows for.")
  private @Nullable String dross;

  @Option(
      names = "--until",
      paramLabel = "DATE",
      description = "Day the answer is valid to, printed on the sheet.")
  private @Nullable String until;

  @Option(
      names = "--out",
      paramLabel = "FILE",
      description = "Write the answer as one page with its drawing: .html, or .svg alone.")
  private @Nullable Path out;

  @Option(names = "--json", description = "One JSON object on standard output.")
  private boolean json;

  @Override
  public Integer call() {
    if (kettle.size() == 2 && !kettle.get(0).equals("usable")) {
      weekAndPart.add(0, kettle.remove(1));
    }
    return weekAndPart.size() == 2 ? ofWeek() : bare();
  }

  private int ofWeek() {
    if (!kettle.isEmpty() || rooms.any() || subject.any() || bathGiven() || until != null) {
      throw ExitException.usage(
          "A part of a week brings its own size and stations: leave out --kettle, --size and the"
              + " like; the day's bath stands in shop.yaml");
    }
    return PartQuestion.answer(
        Path.of(weekAndPart.get(0)),
        weekAndPart.get(1),
        Optional.ofNullable(out),
        json,
        spec.commandLine().getOut(),
        spec.commandLine().getErr());
  }

  private int bare() {
    FitDay day = FitDay.of(overlap, rim, levelDrop, dross);
    List<FitPlace> places = new ArrayList<>();
    Optional<Path> week =
        weekAndPart.isEmpty() ? Optional.empty() : Optional.of(Path.of(weekAndPart.get(0)));
    if (!kettle.isEmpty()) {
      places.add(day.in(FitRooms.place(week, String.join(" ", kettle).strip(), "--kettle")));
    }
    if (kettle.isEmpty() && bathGiven()) {
      throw ExitException.usage(
          "--overlap, --rim, --level-drop and --dross go with --kettle only: leave them out");
    }
    if (!kettle.isEmpty() && rooms.any()) {
      throw ExitException.usage("Ask for the kettle and for rooms or carriers one after the other");
    }
    places.addAll(rooms.places(week));
    if (places.isEmpty()) {
      throw ExitException.usage(
          week.isPresent()
              ? "Say which part of " + week.get() + " is meant, or give --kettle and --size"
              : "Say where it is to go in: WEEK PART, or --kettle usable 3.7x1.1x1.9m --size"
                  + " 2000x1200x500mm");
    }
    FitRequest request = subject.request(places.get(0).rules());
    FitRequest asked = kettle.isEmpty() ? request : request.withRules(day.in(request.rules()));
    FitAnswer answer = KettleFit.answer(asked, FitRooms.way(places));
    if (answer.verdict() == Verdict.NO && !kettle.isEmpty()) {
      answer = KettleFit.answer(asked, FitRooms.way(places), FitPlace.otherKettles(places.get(0)));
    }
    String validity =
        (until == null ? "" : "Valid to " + FitDay.date(until) + ". ")
            + (kettle.isEmpty() ? FitAnswer.ROOM_VALIDITY : FitAnswer.VALIDITY);
    if (out != null) {
      Optional<FitPlace> drawn = kettle.isEmpty() ? Optional.empty() : Optional.of(places.get(0));
      FitAnswer told = answer;
      PartQuestion.write(
          out,
          () -> FitSheets.page(subject.words(), told, drawn, validity),
          () -> FitSheets.drawing(told, drawn),
          spec.commandLine().getErr());
    }
    PrintWriter screen = spec.commandLine().getOut();
    if (json) {
      FitWords.json(answer).put("validity", validity).print(screen);
    } else {
      FitWords.print(answer, screen, validity);
    }
    return ExitCode.DONE;
  }

  private boolean bathGiven() {
    return overlap != null || rim != null || levelDrop != null || dross != null;
  }
}
