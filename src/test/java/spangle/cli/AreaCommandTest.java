package spangle.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class AreaCommandTest {
  private final StringWriter out = new StringWriter();
  private final StringWriter err = new StringWriter();

  private int area(String arguments) {
    String[] words = ("calc area " + arguments).split(" ", -1);
    return Spangle.run(new PrintWriter(out), new PrintWriter(err), words);
  }

  private JsonNode json(String arguments) throws IOException {
    assertThat(area(arguments + " --json")).isEqualTo(ExitCode.DONE);
    return new ObjectMapper().readTree(out.toString());
  }

  /** Closed forms worked by hand; wall and plate 3 mm where not said. */
  @ParameterizedTest
  @CsvSource({
    "--plate 120x120mm --thickness 3mm, 0.03024, 0.33912",
    "--plate 120x120mm --thickness 3mm --no-edges, 0.0288, 0.33912",
    "--plate 1000x1000mm --thickness 2mm --no-edges --material aluminium, 2, 5.4",
    "--box 800x1000x300mm --thickness 2mm, 5.36, 42.076",
    "--box 800x1000x300mm --thickness 2mm --open front --no-edges, 3.76, 29.516",
    "--box 800x1000x300mm --thickness 2mm --open front, 3.7672, 29.516",
    "--tube 60x40x1000mm --thickness 3mm, 0.377128, 4.4274",
    "--tube 60x40x1000mm --thickness 3mm --no-edges, 0.376, 4.4274",
    "--pipe 100x1000mm --thickness 5mm --no-edges, 0.596902604, 11.714203",
    "--bar 20x1000mm --no-edges, 0.0628318531, 2.466150",
    "--plate 1000x1000mm --thickness 2mm --no-edges --density 7000, 2, 14",
    "--section CHS48.3x3.2 --length 1m --no-edges, 0.283371657, 3.5591"
  })
  void closedForms(String arguments, double areaM2, double massKg) throws IOException {
    JsonNode answer = json(arguments);
    assertThat(answer.get("area_m2").doubleValue()).isEqualTo(areaM2, within(1e-8));
    assertThat(answer.get("mass_kg").doubleValue()).isEqualTo(massKg, within(1e-4));
  }

  @Test
  void theEnvelopeIsThreeLengths() throws IOException {
    JsonNode envelope = json("--tube 60x40x1000mm --thickness 3mm").get("envelope_mm");
    assertThat(envelope).hasSize(3);
    assertThat(envelope.get(0).doubleValue()).isEqualTo(1000);
    assertThat(envelope.get(1).doubleValue()).isEqualTo(60);
    assertThat(envelope.get(2).doubleValue()).isEqualTo(40);
  }

  @Test
  void inchesInMillimetresOut() throws IOException {
    JsonNode answer = json("--plate 20x10in --thickness 0.1in --no-edges");
    assertThat(answer.get("area_m2").doubleValue()).isEqualTo(0.2580640, within(1e-9));
    assertThat(answer.get("envelope_mm").get(0).doubleValue()).isEqualTo(508);
    assertThat(answer.get("thickness_mm").doubleValue()).isEqualTo(2.54);
  }

  @Test
  void totalsWhenPiecesAreCounted() throws IOException {
    JsonNode answer = json("--plate 120x120mm --thickness 3mm --count 500");
    assertThat(answer.get("total_area_m2").doubleValue()).isEqualTo(15.12, within(1e-9));
    assertThat(answer.get("total_mass_kg").doubleValue()).isEqualTo(169.56, within(1e-9));
  }

  @Test
  void holesOfAPlate() throws IOException {
    JsonNode answer = json("--plate 200x100mm --thickness 5mm --hole 4x20mm --hole 10mm");
    double faces = 2 * (20000 - 425 * Math.PI);
    double edges = 5 * (600 + 90 * Math.PI);
    assertThat(answer.get("area_m2").doubleValue()).isEqualTo((faces + edges) / 1e6, within(1e-9));
  }

  @Test
  void aClosedBoxCarriesItsCaution() throws IOException {
    JsonNode answer = json("--box 100x100x100mm --thickness 2mm");
    assertThat(answer.get("hollow").textValue()).isEqualTo("closed");
    assertThat(answer.get("cautions").get(0).textValue()).contains("bursts in molten zinc");
    out.getBuffer().setLength(0);
    assertThat(area("--box 100x100x100mm --thickness 2mm")).isEqualTo(ExitCode.DONE);
    assertThat(out.toString()).contains("CAUTION   a closed space of 0.885 l");
  }

  @Test
  void onTheScreenBothSystemsOfUnits() {
    assertThat(area("--plate 1000x1000mm --thickness 2mm --no-edges --count 3")).isZero();
    assertThat(out.toString())
        .isEqualTo(
            """
            area      2 m2 (21.53 ft2)
            one side  1 m2 (10.76 ft2)
            mass      15.7 kg (34.61 lb)
            size      1000 x 1000 x 2 mm
            3 pieces 6 m2 (64.58 ft2), 47.1 kg (103.8 lb)
            working   two faces of 1 m2 (cut edges of 0.008 m2 left out) = 2 m2; metal 2 dm3 x 7850 kg/m3 = 15.7 kg
            source    plane geometry on outside sizes, sharp corners
            """);
    assertThat(err.toString()).isEmpty();
  }

  @ParameterizedTest
  @CsvSource({
    "L50x50x5, EN 10056-1; mass and surface of its table checked against printed ones",
    "UPN100, EN 10365; mass and surface of its table checked against printed ones",
    "SHS200x200x8, EN 10219-2; mass and surface of its table checked against printed ones",
    "CHS60.3x4, EN 10220; mass and surface of its table checked against printed ones",
    "L120x120x12, EN 10056-1 from memory; compare with the maker's table",
    "RHS120x60x4, EN 10219-2 from memory; compare with the maker's table",
    "HFSHS120x120x5, EN 10210-2 from memory; compare with the maker's table",
  })
  void sectionsSayWhereTheirTableComesFrom(String name, String words) {
    assertThat(area("--section " + name + " --length 1000mm")).isZero();
    assertThat(out.toString()).contains("source    nominal sizes of " + words);
  }

  @ParameterizedTest
  @CsvSource({
    "--plate 120x120mm, --thickness is missing",
    "--plate 120x120 --thickness 3mm, with its unit",
    "--plate 120x120mm --thickness 3, with its unit",
    "--plate 120x0mm --thickness 3mm, plate width 0",
    "--box 100x100x100mm --thickness 50mm, less than half",
    "--box 100x100x100mm --thickness 2mm --open back, only 'front'",
    "--plate 100x100mm --thickness 2mm --open front, goes with --box only",
    "--pipe 100x100mm --thickness 2mm --hole 3mm, goes with --plate only",
    "--pipe 100x100mm --thickness 2mm --length 3m, goes with --section only",
    "--bar 20x100mm --thickness 2mm, does not belong to a bar",
    "--section L50x5 --thickness 2mm, does not belong to a section",
    "--section L51x5 --length 2m, the nearest are L50x50x",
    "--section moon --length 2m, write it like L50x50x5",
    "--section L50x5, --length is missing",
    "--plate 100x100mm --thickness 2mm --material cheese, is not known",
    "--plate 100x100mm --thickness 2mm --material other, needs --density",
    "--plate 100x100mm --thickness 2mm --density 7.85, kg/m3",
    "--plate 100x100mm --thickness 2mm --count 0, 1 or more",
    "--plate 100x100mm --pipe 20x100mm --thickness 2mm, one form",
    "--thickness 2mm, one form"
  })
  void wrongUsageIsOneSentence(String arguments, String said) {
    assertThat(area(arguments)).isEqualTo(ExitCode.USAGE);
    assertThat(out.toString()).isEmpty();
    assertThat(err.toString().lines()).hasSize(1);
    assertThat(err.toString()).contains(said);
  }
}
