package spangle.cli;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.OutputStreamWriter;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.OptionalInt;
import java.util.concurrent.Callable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;
import spangle.desk.HeadStart;

/** Entry point: reads the command line, calls the desk, prints. */
@Command(
    name = Spangle.NAME,
    mixinStandardHelpOptions = true,
    version = "spangle " + Spangle.VERSION,
    description = "Plans a metal shop's finishing week: paint racks, oven batches, kettle loads.")
public final class Spangle implements Callable<Integer> {
  static final String NAME = "spangle";

  static final String VERSION = "0.1.0";

  /** All commands, by name. */
  static final List<String> COMMANDS =
      List.of(
          "audit",
          "back",
          "calc",
          "check",
          "compare",
          "event",
          "fit",
          "order",
          "plan",
          "promise",
          "replan",
          "template",
          "why");

  static Class<?> command(String name) {
    return switch (name) {
      case "audit" -> AuditCommand.class;
      case "back" -> BackCommand.class;
      case "calc" -> CalcCommand.class;
      case "check" -> CheckCommand.class;
      case "compare" -> CompareCommand.class;
      case "event" -> EventCommand.class;
      case "fit" -> FitCommand.class;
      case "order" -> OrderCommand.class;
      case "plan" -> PlanCommand.class;
      case "promise" -> PromiseCommand.class;
      case "replan" -> ReplanCommand.class;
      case "template" -> TemplateCommand.class;
      case "why" -> WhyCommand.class;
      default -> throw new IllegalArgumentException(name);
    };
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
    if (args.length > 1 && args[0].equals("fit")) {
      HeadStart.begin();
    }
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
    // No argument is a date or a database thing: looking for their classes costs a quick answer.
    System.setProperty("picocli.converters.excludes", "java\\.(time|sql)\\..*");
    try {
      OptionalInt plain = PartQuestion.plain(out, err, args);
      if (plain.isPresent()) {
        return plain.getAsInt();
      }
      Complaints complaints = new Complaints();
      CommandLine line = Subcommands.root(COMMANDS, args, Spangle::new);
      Subcommands.add(line, COMMANDS, Spangle::command, args, 0);
      return line.setOut(out)
          .setErr(err)
          .setParameterExceptionHandler(complaints)
          .setExecutionExceptionHandler(complaints)
          .execute(args);
    } catch (StackOverflowError | OutOfMemoryError | LinkageError beyondAnyCommand) {
      return Complaints.fault(new Complaints.Screen(out, err, List.of(args)), beyondAnyCommand);
    }
  }

  private static PrintWriter utf8(FileDescriptor descriptor) {
    return new PrintWriter(
        new OutputStreamWriter(new FileOutputStream(descriptor), StandardCharsets.UTF_8), true);
  }
}
