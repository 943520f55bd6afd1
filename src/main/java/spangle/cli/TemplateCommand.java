package spangle.cli;

import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import spangle.desk.TemplateDesk;

/** An empty job workbook to fill in. */
@Command(
    name = "template",
    mixinStandardHelpOptions = true,
    description = "Writes an empty job workbook with choices to pick from.",
    footer = {"", "Example:", "  spangle template new-jobs.xlsx --week samples/harbour-week"})
final class TemplateCommand implements Callable<Integer> {
  @Spec
  @SuppressWarnings("NullAway.Init")
  private CommandSpec spec;

  @Parameters(paramLabel = "FILE.xlsx", description = "The workbook to write; must not be there.")
  @SuppressWarnings("NullAway.Init")
  private Path file;

  @Option(
      names = "--week",
      paramLabel = "WEEK",
      description = "Offer this week's finishes and carriers as choices.")
  private @Nullable Path week;

  @Option(names = "--json", description = "One JSON object on standard output.")
  private boolean json;

  @Override
  public Integer call() {
    if (!file.toString().toLowerCase(Locale.ROOT).endsWith(".xlsx")) {
      throw ExitException.usage("The workbook's name must end in .xlsx: " + file);
    }
    try {
      TemplateDesk.write(file, Optional.ofNullable(week))
          .ifPresent(
              p ->
                  spec.commandLine()
                      .getErr()
                      .println(
                          "No choices are offered, "
                              + week
                              + " cannot be used: "
                              + p.place().words()
                              + ": "
                              + p.why()
                              + "; see 'spangle check'"));
    } catch (FileAlreadyExistsException there) {
      throw ExitException.refused(file + " is there already; give another name.");
    } catch (IOException failed) {
      throw ExitException.refused(file + " cannot be written; check the folder.");
    }
    if (json) {
      new JsonOut().put("file", file.toString()).print(spec.commandLine().getOut());
    } else {
      spec.commandLine().getOut().println("Wrote " + file + ".");
    }
    return ExitCode.DONE;
  }
}
