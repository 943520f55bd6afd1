package spangle.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.List;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine;
import picocli.CommandLine.IExecutionExceptionHandler;
import picocli.CommandLine.IParameterExceptionHandler;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.ParseResult;
import spangle.measure.MeasureException;

/** Turns every failure into one sentence and an exit code; no stack trace reaches the screen. */
final class Complaints implements IParameterExceptionHandler, IExecutionExceptionHandler {

  @Override
  public int handleParseException(ParameterException wrong, String[] arguments) {
    CommandLine command = wrong.getCommandLine();
    command
        .getErr()
        .println(
            plain(oneLine(wrong.getMessage()))
                + " (see '"
                + command.getCommandSpec().qualifiedName()
                + " --help')");
    command.getErr().flush();
    return ExitCode.USAGE;
  }

  @Override
  public int handleExecutionException(
      Exception thrown, CommandLine command, ParseResult parseResult) {
    return said(command.getErr(), thrown, parseResult.originalArgs());
  }

  /** Says what went wrong with a command and gives its exit code. */
  static int said(PrintWriter err, Exception thrown, List<String> arguments) {
    if (thrown instanceof ExitException ending) {
      return said(err, thrown, ending.code());
    }
    if (thrown instanceof MeasureException) {
      return said(err, thrown, ExitCode.USAGE);
    }
    return fault(err, thrown, arguments);
  }

  private static int said(PrintWriter err, Exception thrown, int code) {
    err.println(oneLine(thrown.getMessage()));
    err.flush();
    return code;
  }

  static int fault(PrintWriter err, Throwable thrown, List<String> arguments) {
    String sentence =
        FaultFile.write(
                thrown,
                arguments,
                LocalDateTime.now(ZoneId.systemDefault()),
                List.of(Path.of(""), Path.of(System.getProperty("java.io.tmpdir", "."))))
            .map(file -> "Please send the file " + file + " to whoever keeps the program.")
            .orElse("No file could be written about it.");
    err.println("This is a fault of the program, not of your input. " + sentence);
    err.flush();
    return ExitCode.FAULT;
  }

  /** Kinds of numbers as people call them. */
  private static String plain(String sentence) {
    return sentence
        .replaceFirst("' is not an? double$", "' is not a plain number, like 0.6")
        .replaceFirst("' is not an? (int|long)$", "' is not a whole number");
  }

  private static String oneLine(@Nullable String text) {
    return text == null ? "wrong usage" : text.strip().replaceAll("\\s*[\\r\\n]+\\s*", " ");
  }
}
