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
import spangle.intake.drawing.DxfText;

class FlatCommandTest {
  private final StringWriter out = new StringWriter();
  private final StringWriter err = new StringWriter();

  @TempDir private Path folder;

  private int area(DxfText text, String arguments) throws IOException {
    Path file = folder.resolve("part.dxf");
    Files.write(file, text.bytes());
    List<String> words = new ArrayList<>(List.of("calc", "area", "--flat", file.toString()));
    words.addAll(List.of(arguments.split(" ", -1)));
    return Spangle.run(new PrintWriter(out), new PrintWriter(err), words.toArray(String[]::new));
  }

  private JsonNode json() throws IOException {
    return new ObjectMapper().readTree(out.toString());
  }

  @Test
  void figuresOfAFlatPattern() throws IOException {
    DxfText text = DxfText.mm().rectangle(0, 0, 160, 120).circle(30, 30, 5.5);
    assertThat(area(text, "--thickness 2mm --json")).isEqualTo(ExitCode.DONE);
    JsonNode answer = json();
    double net = 19200 - 30.25 * Math.PI;
    double edge = 560 + 11 * Math.PI;
    assertThat(answer.get("area_m2").doubleValue())
        .isEqualTo((2 * net + 2 * edge) / 1e6, within(1e-9));
    assertThat(answer.get("mass_kg").doubleValue()).isEqualTo(net * 2 * 7850e-9, within(1e-9));
    assertThat(answer.get("cut_edge_m").doubleValue()).isEqualTo(edge / 1000, within(1e-9));
    assertThat(answer.get("envelope_mm").get(0).doubleValue()).isEqualTo(160, within(1e-9));
    assertThat(answer.get("envelope_mm").get(2).doubleValue()).isEqualTo(2);
    assertThat(answer.get("contours").intValue()).isEqualTo(2);
    assertThat(answer.get("holes").intValue()).isEqualTo(1);
    assertThat(answer.get("problems")).isEmpty();
  }

  @Test
  void withoutEdgesAndInAluminium() throws IOException {
    DxfText text = DxfText.mm().rectangle(0, 0, 1000, 1000);
    assertThat(area(text, "--thickness 2mm --no-edges --material aluminium --json")).isZero();
    assertThat(json().get("area_m2").doubleValue()).isEqualTo(2);
    assertThat(json().get("mass_kg").doubleValue()).isEqualTo(5.4, within(1e-9));
  }

  @Test
  void aDoubtWaitsForAPersonAndIsDrawn() throws IOException {
    Path picture = folder.resolve("part.svg");
    DxfText text = DxfText.withoutUnit().rectangle(0, 0, 50, 30).line(5, 5, 9, 9);
    assertThat(area(text, "--thickness 2mm --picture " + picture)).isEqualTo(ExitCode.WAITS);
    assertThat(out.toString()).contains("1270 x 762", "in the picture");
    assertThat(Files.readString(picture)).startsWith("<svg").contains("stroke-dasharray");
  }

  @Test
  void aPictureThatCannotBeWrittenIsNoFault() throws IOException {
    DxfText text = DxfText.mm().rectangle(0, 0, 160, 120);
    assertThat(area(text, "--thickness 2mm --picture " + folder.resolve("part.png")))
        .isEqualTo(ExitCode.USAGE);
    assertThat(folder.resolve("part.png")).doesNotExist();
    assertThat(area(text, "--thickness 2mm --picture " + folder.resolve("no/where.svg")))
        .isEqualTo(ExitCode.REFUSED);
    assertThat(err.toString()).contains("cannot be written");
  }

  @Test
  void theUnitSettlesIt() throws IOException {
    DxfText text = DxfText.withoutUnit().rectangle(0, 0, 50, 30);
    assertThat(area(text, "--thickness 2mm --unit mm --json")).isZero();
    assertThat(json().get("unit").textValue()).isEqualTo("mm");
  }

  @Test
  void aMassThatDisagreesIsShownWithBothReadings() throws IOException {
    DxfText text = DxfText.mm().rectangle(0, 0, 10, 8);
    assertThat(area(text, "--thickness 2mm --mass 0.81kg --json")).isEqualTo(ExitCode.WAITS);
    assertThat(out.toString()).contains("the lengths are in inches", "area-mass-clash");
  }

  @Test
  void bentPartsAreAskedForTheirSize() throws IOException {
    DxfText text = DxfText.mm().rectangle(0, 0, 80, 40).on("BEND").line(30, 0, 30, 40);
    assertThat(area(text, "--thickness 2mm --json")).isEqualTo(ExitCode.WAITS);
    assertThat(json().get("envelope_mm").isNull()).isTrue();
    out.getBuffer().setLength(0);
    assertThat(area(text, "--thickness 2mm --json --folded 50x40x30mm")).isZero();
    assertThat(json().get("envelope_mm").get(0).doubleValue()).isEqualTo(50);
    out.getBuffer().setLength(0);
    assertThat(area(text, "--thickness 2mm --json --bend-angle 90")).isZero();
    assertThat(json().get("envelope_mm").get(0).doubleValue()).isEqualTo(40, within(1e-6));
  }

  @Test
  void aFileThatCannotBeReadIsRefused() throws IOException {
    assertThat(area(DxfText.mm().line(0, 0, 1, 1), "--thickness 2mm")).isEqualTo(ExitCode.REFUSED);
    assertThat(out.toString()).isEmpty();
    assertThat(err.toString()).contains("no closed outline");
  }

  @Test
  void aMissingFileIsRefusedInOneJsonObject() throws IOException {
    int code =
        Spangle.run(
            new PrintWriter(out),
            new PrintWriter(err),
            "calc",
            "area",
            "--flat",
            "nowhere.dxf",
            "--thickness",
            "2mm",
            "--json");
    assertThat(code).isEqualTo(ExitCode.REFUSED);
    assertThat(json().get("area_m2").isNull()).isTrue();
    assertThat(json().get("problems").get(0).get("why").textValue()).contains("no such file");
  }

  @Test
  void wrongUsage() throws IOException {
    DxfText text = DxfText.mm().rectangle(0, 0, 10, 8);
    assertThat(area(text, "--thickness 2mm --unit furlong")).isEqualTo(ExitCode.USAGE);
    assertThat(err.toString()).contains("--unit 'furlong' is not known");
    assertThat(area(text, "--thickness 2mm --bend-angle 200")).isEqualTo(ExitCode.USAGE);
    assertThat(area(text, "--thickness 0mm")).isEqualTo(ExitCode.USAGE);
    assertThat(area(text, "--json")).isEqualTo(ExitCode.USAGE);
    int stray =
        Spangle.run(
            new PrintWriter(out),
            new PrintWriter(err),
            "calc",
            "area",
            "--plate",
            "10x10mm",
            "--thickness",
            "1mm",
            "--mass",
            "1kg");
    assertThat(stray).isEqualTo(ExitCode.USAGE);
    assertThat(err.toString()).contains("--mass goes with a drawing only");
  }
}
