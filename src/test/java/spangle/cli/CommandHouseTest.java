package spangle.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.NotDirectoryException;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import spangle.measure.Interval;
import spangle.measure.LowLikelyHigh;
import spangle.measure.MeasureException;

class CommandHouseTest {

  @Command(name = "try")
  private static final class Failing implements Runnable {
    private final RuntimeException failure;

    Failing(RuntimeException failure) {
      this.failure = failure;
    }

    @Override
    public void run() {
      throw failure;
    }
  }

  private static final class Screen {
    final StringWriter out = new StringWriter();
    final StringWriter err = new StringWriter();

    int spangle(String... arguments) {
      return Spangle.run(new PrintWriter(out), new PrintWriter(err), arguments);
    }

    int fail(RuntimeException failure) {
      Complaints complaints = new Complaints();
      return new CommandLine(new Failing(failure))
          .setOut(new PrintWriter(out))
          .setErr(new PrintWriter(err))
          .setExecutionExceptionHandler(complaints)
          .execute();
    }
  }

  @Test
  void noCommandIsWrongUsageInOneLine() {
    Screen screen = new Screen();
    assertThat(screen.spangle()).isEqualTo(ExitCode.USAGE);
    assertThat(screen.out.toString()).isEmpty();
    assertThat(screen.err.toString().lines()).hasSize(1);
    assertThat(screen.err.toString()).contains("spangle --help");
  }

  @Test
  void anUnknownCommandIsWrongUsage() {
    Screen screen = new Screen();
    assertThat(screen.spangle("gild", "everything")).isEqualTo(ExitCode.USAGE);
    assertThat(screen.err.toString().lines()).hasSize(1);
    assertThat(screen.err.toString()).contains("gild");
  }

  @Test
  void helpAndVersionAreDone() {
    assertThat(new Screen().spangle("--help")).isEqualTo(ExitCode.DONE);
    Screen screen = new Screen();
    assertThat(screen.spangle("--version")).isEqualTo(ExitCode.DONE);
    assertThat(screen.out.toString()).startsWith("spangle " + Spangle.VERSION);
  }

  @Test
  void aCommandEndsWithItsCodeAndOneSentence() {
    Screen usage = new Screen();
    assertThat(usage.fail(ExitException.usage("these two\n  contradict"))).isEqualTo(2);
    assertThat(usage.err.toString().strip()).isEqualTo("these two contradict");
    assertThat(new Screen().fail(ExitException.refused("shop.yaml is missing"))).isEqualTo(3);
    Screen measure = new Screen();
    assertThat(measure.fail(new MeasureException("12", "a length", "add mm"))).isEqualTo(2);
    assertThat(measure.err.toString().strip()).isEqualTo("'12' is not a length: add mm");
  }

  @Test
  void whereJsonWasAskedForARefusalIsOneObjectToo() throws IOException {
    for (String line :
        List.of(
            "gild --json",
            "plan --json nowhere",
            "order nowhere --json",
            "promise nowhere --job pom.xml --json",
            "audit nowhere --json",
            "audit pom.xml --week nowhere --json",
            "fit nowhere P --json",
            "fit --kettle none --size 1x1x1m --json",
            "calc zinc --thickness 3mm --json")) {
      Screen screen = new Screen();

      int code = screen.spangle(line.split(" "));

      JsonNode said = new ObjectMapper().readTree(screen.out.toString());
      assertThat(code).as(line).isIn(ExitCode.USAGE, ExitCode.REFUSED);
      assertThat(said.path("exit_code").asInt()).as(line).isEqualTo(code);
      assertThat(screen.err.toString()).as(line).startsWith(said.path("error").asText());
    }
  }

  @Test
  void whatADiskHasAgainstAFileIsSaidInWords() {
    assertThat(DiskWords.of(new NoSuchFileException("a")))
        .isEqualTo("a is not there; look at the path");
    assertThat(DiskWords.of(new AccessDeniedException("a"))).startsWith("a may not be opened");
    assertThat(DiskWords.of(new NotDirectoryException("a")))
        .startsWith("a is a file where a folder");
    assertThat(DiskWords.of(new FileAlreadyExistsException("a"))).startsWith("a is a file where");
    assertThat(DiskWords.of(new FileSystemException("a")))
        .startsWith("a cannot be opened or written;");
    assertThat(DiskWords.of(new FileSystemException("a", null, "disk full")))
        .startsWith("a cannot be opened or written (disk full)");
    assertThat(DiskWords.of(new IOException("in words"))).isEqualTo("in words");
  }

  @Test
  void aFaultNamesAFileAndShowsNoTrace() throws IOException {
    Screen screen = new Screen();
    assertThat(screen.fail(new IllegalStateException("boom"))).isEqualTo(ExitCode.FAULT);
    String said = screen.err.toString();
    assertThat(said).contains("fault of the program").doesNotContain("IllegalState", "\tat ");
    Path file = Path.of(said.substring(said.indexOf("file ") + 5, said.indexOf(".txt") + 4));
    assertThat(file).content().contains("IllegalStateException: boom");
    Files.delete(file);
  }

  @Test
  void theFaultFileGoesWhereItCanBeWritten(@TempDir Path directory) {
    LocalDateTime now = LocalDateTime.of(2026, 11, 2, 7, 5, 9);
    Optional<Path> file =
        FaultFile.write(
            new IllegalStateException("boom"),
            List.of("plan", "week"),
            now,
            List.of(directory.resolve("missing"), directory));
    assertThat(file)
        .contains(directory.resolve("spangle-fault-20261102-070509.txt").toAbsolutePath());
    assertThat(file.orElseThrow()).content().contains("spangle plan week", Spangle.VERSION, "boom");
    assertThat(
            FaultFile.write(
                new IllegalStateException(), List.of(), now, List.of(directory.resolve("missing"))))
        .isEmpty();
  }

  @Test
  void jsonKeepsOrderAndHidesBinaryDust() {
    String text =
        new JsonOut()
            .put("b", 0.1 + 0.2)
            .put("a", 3)
            .put("nothing", null)
            .put("infinite", Double.POSITIVE_INFINITY)
            .put("yes", true)
            .put("words", "1\" plate")
            .put("list", List.of(1, 2.5))
            .put("range", new Interval(1, 2))
            .put("guess", new LowLikelyHigh(1, 2, 3))
            .put("inner", new JsonOut().put("x", 1))
            .text()
            .replaceAll("\\s+", "");
    assertThat(text)
        .isEqualTo(
            "{\"b\":0.3,\"a\":3,\"nothing\":null,\"infinite\":null,\"yes\":true,"
                + "\"words\":\"1\\\"plate\",\"list\":[1,2.5],\"range\":{\"min\":1,\"max\":2},"
                + "\"guess\":{\"low\":1,\"likely\":2,\"high\":3},\"inner\":{\"x\":1}}");
  }
}
