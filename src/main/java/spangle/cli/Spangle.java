package spangle.cli;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.OutputStreamWriter;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import java.util.function.Supplier;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** Entry point: reads the command line, calls the desk, prints. */
@Command(
    name = "spangle",
    mixinStandardHelpOptions = true,
    version = "spangle " + Spangle.VERSION,
    description = "Plans a metal shop's finishing week: paint racks, oven batches, kettle loads.")
public final class Spangle implements Callable<Integer> {
  static final String VERSION = "0.1.0";

  /** All commands, by name. */
  static final Map<String, Supplier<Class<?>>> COMMANDS = commands();

  private static Map<String, Supplier<Class<?>>> commands() {
    Map<String, Supplier<Class<?>>> commands = new LinkedHashMap<>();
    commands.put("audit", () -> AuditCommand.class);
    commands.put("back", () -> BackCommand.class);
    commands.put("calc", () -> CalcCommand.class);
    commands.put("check", () -> CheckCommand.class);
    commands.put("compare", () -> CompareCommand.class);
    commands.put("event", () -> EventCommand.class);
    commands.put("fit", () -> FitCommand.class);
    commands.put("order", () -> OrderCommand.class);
    commands.put("plan", () -> PlanCommand.class);
    commands.put("promise", () -> PromiseCommand.class);
    commands.put("replan", () -> ReplanCommand.class);
    commands.put("template", () -> TemplateCommand.class);
    commands.put("why", () -> WhyCommand.class);
    return Collections.unmodifiableMap(commands);
  }

  @Spec
  @SuppressWarnings("NullAway.Init")
  private CommandSpec spec;

  private Spangle() {}

  @Override
  public Integer call() {
    throw new ParameterException(spec.commandLine(), "No command was given");
  }

  /** Runs one command and ends with its exit code. */
  public static void main(String[] args) {
    PrintWriter out = utf8(FileDescriptor.out);
    PrintWriter err = utf8(FileDescriptor.err);
    int code = run(out, err, args);
    out.flush();
    err.flush();
    System.exit(code);
  }

  /**
   * Runs one command.
   *
   * @param out where answers go
   * @param err where progress, messages and complaints go
   * @return the exit code, one of {@link ExitCode}
   */
  public static int run(PrintWriter out, PrintWriter err, String... args) {
    return runPlain(
        new PrintWriter(new PlainWriter(out), true),
        new PrintWriter(new PlainWriter(err), true),
        args);
  }

  private static int runPlain(PrintWriter out, PrintWriter err, String... args) {
    // Help in colours would be made of what is left out on the way to the screen.
    System.setProperty("picocli.ansi", "false");
    Complaints complaints = new Complaints();
    // No argument is a date or a database thing: looking for their classes costs a quick answer.
    System.setProperty("picocli.converters.excludes", "java\\.(time|sql)\\..*");
    try {
      CommandLine line = new CommandLine(new Spangle());
      Subcommands.add(line, COMMANDS, args, 0);
      return line.setOut(out)
          .setErr(err)
          .setParameterExceptionHandler(complaints)
          .setExecutionExceptionHandler(complaints)
          .execute(args);
    } catch (StackOverflowError | OutOfMemoryError | LinkageError beyondAnyCommand) {
      return Complaints.fault(err, beyondAnyCommand, List.of(args));
    }
  }

  private static PrintWriter utf8(FileDescriptor descriptor) {
    return new PrintWriter(
        new OutputStreamWriter(new FileOutputStream(descriptor), StandardCharsets.UTF_8), true);
  }
}
