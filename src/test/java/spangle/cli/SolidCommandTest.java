package spangle.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import spangle.intake.drawing.StlText;

class SolidCommandTest {
  private final StringWriter out = new StringWriter();
  private final StringWriter err = new StringWriter();

  @TempDir private Path folder;

  private int area(byte[] bytes, String arguments) throws IOException {
    Path file = folder.resolve("body.stl");
    Files.write(file, bytes);
    List<String> words = new ArrayList<>(List.of("calc", "area", "--solid", file.toString()));
    words.addAll(List.of(arguments.split(" ", -1)));
    return Spangle.run(new PrintWriter(out), new PrintWriter(err), words.toArray(String[]::new));
  }

  private JsonNode json() throws IOException {
    return new ObjectMapper().readTree(out.toString());
  }

  @Test
  void figuresOfABody() throws IOException {
    byte[] box = new StlText().box(0, 0, 0, 10, 5, 2, true).binary();
    assertThat(area(box, "--unit in --json")).isEqualTo(ExitCode.DONE);
    assertThat(json().get("area_m2").doubleValue()).isEqualTo(160 * 645.16e-6, within(1e-9));
    assertThat(json().get("mass_kg").doubleValue())
        .isEqualTo(100 * 16387.064e-9 * 7850, within(1e-8));
    assertThat(json().get("watertight").booleanValue()).isTrue();
    assertThat(json().get("envelope_mm").get(0).doubleValue()).isEqualTo(254, within(1e-9));
  }

  @Test
  void aClosedHollowWaitsAndCarriesItsCaution() throws IOException {
    byte[] hollow =
        new StlText().box(0, 0, 0, 100, 100, 100, true).box(10, 10, 10, 80, 80, 80, false).ascii();
    assertThat(area(hollow, "--unit mm")).isEqualTo(ExitCode.WAITS);
    assertThat(out.toString()).contains("DANGER", "bursts in molten zinc");
  }

  @Test
  void anOpenSurfaceHasNoMass() throws IOException {
    byte[] open = new StlText().box(0, 0, 0, 100, 100, 100, true).without(0).ascii();
    assertThat(area(open, "--unit mm --json")).isEqualTo(ExitCode.WAITS);
    assertThat(json().get("mass_kg").isNull()).isTrue();
    assertThat(json().get("area_m2").doubleValue()).isEqualTo(0.055, within(1e-9));
    assertThat(json().get("watertight").booleanValue()).isFalse();
  }

  @Test
  void wrongUsage() throws IOException {
    byte[] box = new StlText().box(0, 0, 0, 10, 5, 2, true).binary();
    assertThat(area(box, "--thickness 3mm")).isEqualTo(ExitCode.USAGE);
    assertThat(err.toString()).contains("--thickness does not belong to a body");
    assertThat(area(box, "--folded 1x1x1mm")).isEqualTo(ExitCode.USAGE);
    assertThat(area(new byte[3], "--unit mm")).isEqualTo(ExitCode.REFUSED);
    assertThat(err.toString()).contains("too short");
  }
}
