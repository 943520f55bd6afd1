package spangle;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The build runs classes named ...Test and ...Properties: a test under another name never runs. */
class TestNamesTest {
  private static final Pattern TEST =
      Pattern.compile(
          "^ +@(Test|Property|ParameterizedTest|TestFactory|ArchTest)\\b", Pattern.MULTILINE);

  @Test
  void everyClassWithTestsHasANameTheBuildRuns() throws IOException {
    try (Stream<Path> files = Files.walk(Path.of("src/test/java"))) {
      List<Path> tests =
          files.filter(f -> f.toString().endsWith(".java")).filter(TestNamesTest::tests).toList();

      assertThat(tests).hasSizeGreaterThan(40);
      assertThat(tests)
          .allSatisfy(
              f -> assertThat(f.getFileName().toString()).matches(".*(Test|Properties)\\.java"));
    }
  }

  private static boolean tests(Path file) {
    try {
      return TEST.matcher(Files.readString(file)).find();
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
  }
}
