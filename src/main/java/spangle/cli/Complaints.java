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

/**
 * Turns every failure into one sentence and an exit code; no stack trace reaches the screen. Where
 * {@code --json} was asked for, standard output has the same as one object: {@code exit_code},
 * {@code error}.
 */
final class Complaints implements IParameterExceptionHandler, IExecutionExceptionHandler {

  @Override
  public int handleParseException(ParameterException wrong, String[] arguments) {
    CommandLine command = wrong.getCommandLine();
    String sentence =
        plain(oneLine(wrong.getMessage()))
            + " (see '"
            + command.getCommandSpec().qualifiedName()
            + " --help')";
    return new Screen(command.getOut(), command.getErr(), List.of(arguments))
        .end(sentence, ExitCode.USAGE);
  }

  @Override
  public int handleExecutionException(
      Exception thrown, CommandLine command, ParseResult parseResult) {
    return said(new Screen(command.getOut(), command.getErr(), parseResult.originalArgs()), thrown);
  }

  /**
   * Where a command speaks.
   *
   * @param out answers
   * @param err messages and complaints
   * @param arguments what it was called with
   */
  record Screen(PrintWriter out, PrintWriter err, List<String> arguments) {
    private int end(String sentence, int code) {
      err.println(sentence);
      err.flush();
      if (arguments.contains("--json")) {
        new JsonOut().put("exit_code", code).put("error", sentence).print(out);
      }
      return code;
    }
  }

  /** Says what went wrong with a command and gives its exit code. */
  static int said(Screen screen, Exception thrown) {
    if (thrown instanceof ExitException ending) {
      return screen.end(oneLine(thrown.getMessage()), ending.code());
    }
    if (thrown instanceof MeasureException) {
      return screen.end(oneLine(thrown.getMessage()), ExitCode.USAGE);
    }
    return fault(screen, thrown);
  }

  static int fault(Screen screen, Throwable thrown) {
    String sentence =
        FaultFile.write(
                thrown,
                screen.arguments(),
                LocalDateTime.now(ZoneId.systemDefault()),
                List.of(Path.of(""), Path.of(System.getProperty("java.io.tmpdir", "."))))
            .map(file -> "Please send the file " + file + " to whoever keeps the program.")
            .orElse("No file could be written about it.");
    return screen.end(
        "This is a fault of the program, not of your input. " + sentence, ExitCode.FAULT);
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
