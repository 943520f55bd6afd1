package spangle.cli;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.OutputStreamWriter;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.concurrent.Callable;
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
  private static final List<Class<?>> COMMANDS =
      List.of(
          AuditCommand.class,
          BackCommand.class,
          CalcCommand.class,
          CheckCommand.class,
          CompareCommand.class,
          EventCommand.class,
          FitCommand.class,
          OrderCommand.class,
          PlanCommand.class,
          PromiseCommand.class,
          ReplanCommand.class,
          TemplateCommand.class,
          WhyCommand.class);

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
    Complaints complaints = new Complaints();
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
