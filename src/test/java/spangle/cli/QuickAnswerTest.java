package spangle.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.File;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.net.MalformedURLException;
import java.net.URL;
import java.net.URLClassLoader;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A question of the phone call waits for nothing that only a week needs. */
class QuickAnswerTest {

  /** Loads the program afresh and notes every class it takes from the class path. */
  private static final class Noting extends URLClassLoader {
    final Set<String> taken = new TreeSet<>();

    Noting() {
      super(classPath(), ClassLoader.getPlatformClassLoader());
    }

    @Override
    protected Class<?> findClass(String name) throws ClassNotFoundException {
      taken.add(name);
      return super.findClass(name);
    }

    private static URL[] classPath() {
      return Arrays.stream(System.getProperty("java.class.path").split(File.pathSeparator, -1))
          .map(Noting::url)
          .toArray(URL[]::new);
    }

    private static URL url(String entry) {
      try {
        return Path.of(entry).toUri().toURL();
      } catch (MalformedURLException impossible) {
        throw new IllegalStateException(entry, impossible);
      }
    }
  }

  /** Also where a week is asked: of its files only what the one part needs is read. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "fit --kettle usable 3.7x1.1x1.9m --size 2.0x1.2x0.5m",
        "fit --kettle kettle-medium --size 2.0x1.2x0.5m --json",
        "fit --oven box-oven-large --rack flat-rack --size 1500x1200x80mm",
        "fit samples/harbour-week H-205/HC-42 --json"
      })
  void fitReadsNoMoreThanTheAnswerNeeds(String line) throws Exception {
    Set<String> taken = taken(line);
    // The plain question about a part goes past the option reader.
    boolean plain = line.startsWith("fit samples");
    assertThat(taken.contains("spangle.cli.FitCommand")).isNotEqualTo(plain);
    assertThat(taken.contains("picocli.CommandLine")).isNotEqualTo(plain);
    for (String unused :
        new String[] {
          "org.optaplanner",
          "org.apache.poi",
          "org.locationtech",
          "freemarker",
          "com.fasterxml.jackson.databind",
          "spangle.solve",
          "spangle.audit",
          "spangle.intake.drawing.Dxf",
          "spangle.intake.drawing.FlatFile",
          "spangle.intake.event",
          "spangle.plan.event.Slippage",
          "spangle.cli.PlanCommand"
        }) {
      assertThat(taken).as(unused).noneMatch(name -> name.startsWith(unused));
    }
  }

  /** Classes taken for a line that is answered. */
  private static Set<String> taken(String line) throws Exception {
    try (Noting loader = new Noting()) {
      StringWriter out = new StringWriter();
      Object code =
          loader
              .loadClass("spangle.cli.Spangle")
              .getMethod("run", PrintWriter.class, PrintWriter.class, String[].class)
              .invoke(null, new PrintWriter(out), new PrintWriter(out), line.split(" "));

      assertThat(code).as(out.toString()).isEqualTo(ExitCode.DONE);
      return loader.taken;
    }
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "calc zinc --thickness 3mm --area 2m2",
        "calc zinc --thickness 3mm --area 2m2 --json",
        "calc powder --area 2m2 --film 80um --sg 1.5 --use 0.6 --json",
        "calc liquid --area 2m2 --film 80um --solids 60 --mix 4:1 --json",
        "calc cure --steel 3mm --oven 200C --window 10@190 --json",
        "calc area --plate 500x400mm --thickness 3mm --json",
        "calc vents --tube 60x60x1200mm --thickness 3mm --json"
      })
  void loadsNoSolverAndNoSheets(String line) throws Exception {
    Set<String> taken = taken(line);
    assertThat(taken).contains("spangle.cli.Spangle", "picocli.CommandLine");
    assertThat(taken)
        .noneMatch(name -> name.startsWith("org.optaplanner"))
        .noneMatch(name -> name.startsWith("spangle.solve"))
        .noneMatch(name -> name.startsWith("spangle.desk") && !name.contains("Drawing"))
        .noneMatch(
            name -> name.startsWith("spangle.intake") && !name.startsWith("spangle.intake.drawing"))
        .noneMatch(name -> name.startsWith("org.apache.poi"))
        .noneMatch(name -> name.startsWith("freemarker"))
        .noneMatch(name -> name.startsWith("com.fasterxml.jackson.databind"));
  }
}
