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
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** {@code calc vents} as somebody types it. */
class VentsCommandTest {
  private final StringWriter out = new StringWriter();
  private final StringWriter err = new StringWriter();

  private int vents(String arguments) {
    List<String> all = new ArrayList<>(List.of("calc", "vents"));
    all.addAll(List.of(arguments.strip().split(" ")));
    return Spangle.run(new PrintWriter(out), new PrintWriter(err), all.toArray(String[]::new));
  }

  private JsonNode json(String arguments) throws IOException {
    out.getBuffer().setLength(0);
    assertThat(vents(arguments + " --json")).isEqualTo(ExitCode.DONE);
    return new ObjectMapper().readTree(out.toString());
  }

  @ParameterizedTest
  @CsvSource({
    "--tube 1e300x60x1200mm --thickness 3mm",
    "--tube 60x60x61m --thickness 3mm",
    "--box 99999x99999x99999mm --thickness 3mm",
    "--vessel 1e300l",
    "--plates 61x1m",
    "--overlap 101m2 --sheets 8+10mm"
  })
  void aSizeNoKettleTakesIsASlipOfTheUnit(String hollow) {
    assertThat(vents(hollow)).isEqualTo(ExitCode.USAGE);
    assertThat(out.toString()).isEmpty();
    assertThat(err.toString()).contains("look at the unit");
  }

  @ParameterizedTest
  @CsvSource({"--tube 60x60x60000mm --thickness 3mm", "--overlap 100m2 --sheets 8+10mm"})
  void aSizeAtTheLimitIsAnswered(String hollow) {
    assertThat(vents(hollow)).isEqualTo(ExitCode.DONE);
  }

  /** Trade design guides: 25 % of the bore diagonal; bore 44 x 44 asks 15.56 mm, drill 16 mm. */
  @Test
  void squareTubeShowsEveryRuleAndNamesTheLargest() throws IOException {
    JsonNode answer = json("--tube 50x50x1000mm --thickness 3mm");
    assertThat(answer.get("vent").get("drill_mm").asDouble()).isEqualTo(16);
    JsonNode quarter = rule(answer, "quarter of the bore diagonal");
    assertThat(quarter.get("each_mm").asDouble()).isCloseTo(15.556, within(0.001));
    assertThat(answer.get("rules").findValuesAsText("rule"))
        .contains("table by inside size", "least hole: 10 mm or the steel's thickness");
    assertThat(answer.get("rules").findValues("wins").stream().filter(JsonNode::asBoolean))
        .hasSize(2);
  }

  /** Three published vessel rules that disagree, 1.2 m3: the 120 mm hole wins by area. */
  @Test
  void closedVesselIsRuledByTheLargestArea() throws IOException {
    JsonNode answer = json("--vessel 1200l");
    assertThat(answer.get("vent").get("exact_mm").asDouble()).isEqualTo(120);
    assertThat(answer.get("vent").get("area_mm2").asDouble()).isCloseTo(11310, within(1.0));
    JsonNode fifty = rule(answer, "one of 50 mm for every 0.5 m3");
    assertThat(fifty.get("holes").asInt()).isEqualTo(3);
    assertThat(fifty.get("area_mm2").asDouble()).isCloseTo(5890, within(1.0));
    JsonNode older = rule(answer, "1250 mm2 of vent for every m3");
    assertThat(older.get("area_mm2").asDouble()).isCloseTo(1500, within(0.5));
    assertThat(rule(answer, "the same read as area").get("counted").asBoolean()).isFalse();
  }

  @Test
  void outsideSizesLoseTheirWalls() throws IOException {
    // 1010 x 1010 x 1210 outside with 5 mm walls holds 1000 x 1000 x 1200 mm = 1.2 m3.
    JsonNode answer = json("--box 1010x1010x1210mm --thickness 5mm");
    assertThat(answer.get("vent").get("exact_mm").asDouble()).isCloseTo(120, within(1e-6));
  }

  @Test
  void holesStandHighAndLowForTheTilt() throws IOException {
    JsonNode tilted = json("--pipe 60x1200mm --thickness 3mm --tilt 20");
    assertThat(tilted.get("places")).hasSize(2);
    assertThat(tilted.get("places").toString())
        .contains("lowest corner at 20 degrees", "highest corner at 20 degrees");
    JsonNode level = json("--pipe 60x1200mm --thickness 3mm --tilt 0");
    assertThat(level.get("places")).hasSize(4);
    JsonNode swung = json("--pipe 60x1200mm --thickness 3mm --second-dip end-for-end");
    assertThat(swung.get("places")).hasSize(4);
  }

  @Test
  void overlapsPlatesAndPocketsHaveRulesOfTheirOwn() throws IOException {
    JsonNode small = json("--overlap 100cm2 --sheets 3+8mm");
    assertThat(small.get("vent").isNull()).isTrue();
    JsonNode large = json("--overlap 480cm2 --sheets 8+10mm --length 6.5m");
    assertThat(large.get("vent").get("count").asInt()).isEqualTo(7);
    assertThat(large.get("vent").get("drill_mm").asDouble()).isEqualTo(18);
    JsonNode plates = json("--plates 400x300mm");
    assertThat(plates.get("vent").get("rule").asText()).isNotEmpty();
    assertThat(json("--pockets 4 --thickness 2mm").get("drain").get("drill_mm").asDouble())
        .isEqualTo(13);
  }

  /** Inside 296 deep, lip 23: at 45 degrees (23 x 1.414)2 = 1058 mm2 x 296 = 0.313 l. */
  @Test
  void anOpenFrontSaysItsCornersAndWhatStaysThere() throws IOException {
    String front = "--box 1200x800x300mm --open front --return 25mm --thickness 2mm";
    JsonNode answer = json(front + " --tilt 45");
    assertThat(answer.get("drain").get("drill_mm").asDouble()).isEqualTo(13);
    assertThat(answer.get("trapped_l").asDouble()).isCloseTo(0.3132, within(0.0001));
    assertThat(answer.get("trapped_zinc_kg").asDouble()).isCloseTo(2.054, within(0.001));
    assertThat(answer.get("tilt_deg").asDouble()).isEqualTo(45);
    assertThat(answer.get("places")).hasSize(2);
    out.getBuffer().setLength(0);
    assertThat(vents(front)).isEqualTo(ExitCode.DONE);
    assertThat(out.toString())
        .contains("1 x 13 mm", "where the returns meet", "common practice", "written release");
  }

  @Test
  void wordsNameTheWinnerTheDangerAndWhoDecides() {
    assertThat(vents("--tube 60x60x1200mm --thickness 3mm")).isEqualTo(ExitCode.DONE);
    assertThat(out.toString()).contains("WINS", "1 x 20 mm", "bursts the part", "written release");
  }

  @Test
  void sketchIsWritten(@TempDir Path folder) throws IOException {
    Path file = folder.resolve("holes.svg");
    assertThat(vents("--tube 60x60x1200mm --thickness 3mm --out " + file)).isEqualTo(ExitCode.DONE);
    assertThat(Files.readString(file)).contains("vent", "drain", "20\u00b0").endsWith("</svg>");
    assertThat(vents("--tube 60x60x1200mm --thickness 3mm --out " + folder.resolve("no/x.svg")))
        .isEqualTo(ExitCode.REFUSED);
  }

  @Test
  void aSketchIsCalledWhatItIs(@TempDir Path folder) {
    Path file = folder.resolve("holes.txt");
    assertThat(vents("--tube 60x60x1200mm --thickness 3mm --out " + file))
        .isEqualTo(ExitCode.USAGE);
    assertThat(file).doesNotExist();
    assertThat(err.toString().strip().lines()).hasSize(1);
    assertThat(err.toString()).contains("must end in .svg");
    assertThat(out.toString()).isEmpty();
    assertThat(vents("--tube 60x60x1200mm --thickness 3mm --out " + folder.resolve("A.SVG")))
        .isEqualTo(ExitCode.DONE);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "--tilt 20 | Say one hollow",
        "--tube 60x60mm --pipe 60mm --thickness 3mm | Say one hollow",
        "--tube 60x60mm | --thickness is missing",
        "--tube 60x60mm --thickness 30mm | no space inside",
        "--tube 60x60mm --thickness 3mm --tilt 91 | 0 to 90",
        "--tube 60x60mm --thickness 3mm --use mast | truss",
        "--tube 60x60mm --thickness 3mm --diameter 1m | --vessel",
        "--overlap 480cm2 | --sheets is missing",
        "--overlap 480cm2 --sheets 8 | two thicknesses",
        "--pockets 0 | 1 or more",
        "--box 1200x800x300mm --thickness 2mm --open front | --return is missing",
        "--box 1200x800x300mm --thickness 2mm --open back --return 25mm | not known: front",
        "--box 1200x800x300mm --thickness 2mm --return 25mm | --open front",
        "--tube 60x60mm --thickness 3mm --open front --return 25mm | --box",
        "--box 1200x800x300mm --open front --return 25mm | --thickness is missing",
        "--box 1200x800x300mm --thickness 2mm --open front --return 2mm | nothing is folded",
        "--box 1200x800x300mm --thickness 2mm --open front --return 400mm | closed box",
        "--box 1200x800x300mm --thickness 150mm --open front --return 200mm | no space inside",
        "--vessel 0l | above zero",
        "--tube 60x60mm --thickness 3mm --second-dip sideways | turned-over"
      })
  void wrongUsageIsOneSentenceAndExitTwo(String arguments, String says) {
    assertThat(vents(arguments)).isEqualTo(ExitCode.USAGE);
    assertThat(err.toString().strip().lines()).hasSize(1);
    assertThat(err.toString()).contains(says.strip());
  }

  private static JsonNode rule(JsonNode answer, String name) {
    for (JsonNode rule : answer.get("rules")) {
      if (rule.get("rule").asText().equals(name)) {
        return rule;
      }
    }
    throw new AssertionError("no rule " + name + " in " + answer.get("rules"));
  }
}
