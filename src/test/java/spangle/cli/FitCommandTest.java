package spangle.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringReader;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The forms of fit as somebody types them. */
class FitCommandTest {
  private static final String WEEK = "samples/harbour-week";

  private static final class Screen {
    final StringWriter out = new StringWriter();
    final StringWriter err = new StringWriter();

    int fit(String... arguments) {
      List<String> all = new ArrayList<>(List.of("fit"));
      all.addAll(List.of(arguments));
      return Spangle.run(new PrintWriter(out), new PrintWriter(err), all.toArray(String[]::new));
    }

    JsonNode json() throws IOException {
      return new ObjectMapper().readTree(out.toString());
    }
  }

  private static JsonNode bare(String... arguments) throws IOException {
    Screen screen = new Screen();
    List<String> all = new ArrayList<>(List.of(arguments));
    all.add("--json");
    assertThat(screen.fit(all.toArray(String[]::new))).isEqualTo(ExitCode.DONE);
    return screen.json();
  }

  /** Check value K1: working kettle 3.7 x 1.1 x 1.9 m, part 2.0 x 1.2 x 0.5 m; plane geometry. */
  @Test
  void cabinetGoesInStraightAndTiltsToTheDepth() throws IOException {
    JsonNode answer =
        bare("--kettle", "usable", "3.7x1.1x1.9m", "--size", "2.0x1.2x0.5m", "--mass", "240kg");
    assertThat(answer.get("verdict").asText()).isEqualTo("straight");
    assertThat(answer.get("across_mm").asDouble()).isEqualTo(500);
    assertThat(answer.get("tilt_deg").get("min").asDouble()).isZero();
    assertThat(answer.get("tilt_deg").get("max").asDouble()).isCloseTo(23.59, within(0.005));
    assertThat(answer.get("dips").asInt()).isEqualTo(1);
    assertThat(answer.get("margin_mm").get("length").asDouble()).isEqualTo(1700);
    assertThat(answer.get("margin_mm").get("width").asDouble()).isEqualTo(600);
    assertThat(answer.get("margin_mm").get("depth").asDouble()).isEqualTo(700);
  }

  /** Check value K2: the smallest side is wider than the kettle. */
  @Test
  void aPartWiderThanTheKettleNeverGoesIn() throws IOException {
    JsonNode answer = bare("--kettle", "usable 3.7x1.1x1.9m", "--size", "3.0x2.2x1.3m");
    assertThat(answer.get("verdict").asText()).isEqualTo("no");
    assertThat(answer.get("dips").asInt()).isZero();
    assertThat(answer.get("margin_mm").get("width").asDouble()).isEqualTo(-200);
    assertThat(answer.get("tilt_windows_deg")).isEmpty();
  }

  @Test
  void everyAgreedKeyIsThereAndNullWhereItDoesNotApply() throws IOException {
    JsonNode straight = bare("--kettle", "usable 3.7x1.1x1.9m", "--size", "1x1x1m");
    assertThat(straight.fieldNames())
        .toIterable()
        .contains(
            "verdict",
            "across_mm",
            "tilt_deg",
            "tilt_windows_deg",
            "roll_deg",
            "dip_tilt_deg",
            "dips",
            "overlap_mm",
            "margin_mm",
            "limited_by",
            "cautions");
    for (String key : List.of("roll_deg", "dip_tilt_deg", "overlap_mm", "limited_by")) {
      assertThat(straight.get(key).isNull()).as(key).isTrue();
    }
    JsonNode rolled = bare("--kettle", "usable 2.5x1x1m", "--size", "2400x1250x20mm");
    assertThat(rolled.get("verdict").asText()).isEqualTo("tilted");
    assertThat(rolled.get("roll_deg").get("min").asDouble()).isBetween(37.0, 38.0);
    JsonNode endOut = bare("--kettle", "usable 3.7x1.1x1.9m", "--size", "6500x300x200mm");
    assertThat(endOut.get("verdict").asText()).isEqualTo("two-dips");
    assertThat(endOut.get("tilt_deg").isNull()).isTrue();
    assertThat(endOut.get("dip_tilt_deg").get("min").asDouble()).isBetween(29.0, 31.0);
    assertThat(endOut.get("overlap_mm").asDouble()).isEqualTo(300);
  }

  @ParameterizedTest
  @CsvSource({
    "3700x1100x1900mm, straight",
    "3700.1x1100x1900mm, two-dips",
    "3700x1100.1x1900mm, no",
    "3700x1100x3500mm, two-dips",
    "3700x1100x3500.1mm, no"
  })
  void theLimitIsExactToATenthOfAMillimetre(String size, String verdict) throws IOException {
    // 3500 = 2 x 1900 - 300: turned over, each dip reaches the middle and half the overlap.
    JsonNode answer = bare("--kettle", "usable 3700x1100x1900mm", "--size", size);
    if (!verdict.equals("two-dips") || size.startsWith("3700x")) {
      assertThat(answer.get("verdict").asText()).isEqualTo(verdict);
    } else {
      assertThat(answer.get("verdict").asText()).isNotEqualTo("straight");
    }
  }

  @Test
  void builtInKettleKnowsItsSizeRimAndGreatestDip() throws IOException {
    JsonNode fits = bare("--kettle", "kettle-medium", "--size", "4200x1150x1900mm");
    assertThat(fits.get("verdict").asText()).isEqualTo("straight");
    JsonNode heavy = bare("--kettle", "kettle-medium", "--size", "1x1x1m", "--mass", "1201kg");
    assertThat(heavy.get("verdict").asText()).isEqualTo("no");
    assertThat(heavy.get("limited_by").asText()).isEqualTo("kettle-medium");
    assertThat(heavy.get("ways_out").toString()).contains("at most 1200 kg");
    JsonNode limit = bare("--kettle", "kettle-medium", "--size", "1x1x1m", "--mass", "1200kg");
    assertThat(limit.get("verdict").asText()).isEqualTo("straight");
  }

  @Test
  void levelDropAndDrossTakeDepthThatDay() throws IOException {
    JsonNode full = bare("--kettle", "usable 3x1x1.9m", "--size", "2900x900x1900mm");
    assertThat(full.get("verdict").asText()).isEqualTo("straight");
    JsonNode low =
        bare(
            "--kettle",
            "usable 3x1x1.9m",
            "--size",
            "2900x900x1900mm",
            "--level-drop",
            "40mm",
            "--dross",
            "60mm");
    assertThat(low.get("verdict").asText()).isEqualTo("two-dips");
    JsonNode rest =
        bare("--kettle", "usable 3x1x1.8m", "--size", "2900x900x1900mm", "--rim", "190mm");
    assertThat(low.get("margin_mm")).isEqualTo(rest.get("margin_mm"));
  }

  @Test
  void anotherKettleThatTakesItIsNamed() throws IOException {
    JsonNode answer = bare("--kettle", "kettle-medium", "--size", "3000x2200x1300mm");
    assertThat(answer.get("verdict").asText()).isEqualTo("no");
    assertThat(answer.get("ways_out").toString())
        .contains("kettle-long", "150 mm of width", "Split it in 2", "Paint it instead");
  }

  @Test
  void ovenIsEnteredThroughItsDoorAndTheRackCountsToo() throws IOException {
    // Door 1800 x 2500, 50 mm each side: 1700; usable width 1600 is the smaller.
    assertThat(
            bare("--oven", "box-oven-large", "--size", "4800x1600x2400mm").get("verdict").asText())
        .isEqualTo("straight");
    assertThat(
            bare("--oven", "box-oven-large", "--size", "4800x1600.1x2400.1mm")
                .get("verdict")
                .asText())
        .isEqualTo("no");
    JsonNode rack =
        bare("--oven", "box-oven-large", "--rack", "flat-rack", "--size", "1500x600x260mm");
    assertThat(rack.get("verdict").asText()).isEqualTo("no");
    assertThat(rack.get("limited_by").asText()).isEqualTo("flat-rack");
    assertThat(bare("--door", "1x2m", "--size", "3x1x2m").get("validity").asText())
        .contains("Local codes")
        .doesNotContain("galvanizer");
    assertThat(bare("--door", "1x2m", "--size", "3x1x2m").get("verdict").asText())
        .isEqualTo("straight");
    assertThat(bare("--door", "1x2m", "--size", "3x1.01x2.01m").get("verdict").asText())
        .isEqualTo("no");
  }

  @Test
  void roundPartsAndOutlinesGoInWhereTheirBoxesDoNot() throws IOException {
    // A disc is as long as it is high at every angle; an angle of two legs folds into its hull.
    JsonNode disc = bare("--kettle", "usable 2x1x2m", "--cylinder", "2000x900mm");
    assertThat(disc.get("tilt_windows_deg").get(0).get("max").asDouble()).isEqualTo(90);
    JsonNode box = bare("--kettle", "usable 4200x400x1900mm", "--size", "4300x800x300mm");
    JsonNode hull =
        bare(
            "--kettle",
            "usable 4200x400x1900mm",
            "--outline",
            "0x0mm",
            "4300x0mm",
            "4300x80mm",
            "80x800mm",
            "0x800mm",
            "--across",
            "300mm");
    assertThat(box.get("verdict").asText()).isNotEqualTo("tilted");
    assertThat(hull.get("verdict").asText()).isEqualTo("tilted");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "--kettle usable 3x1x1 --size 1x1x1m | unit",
        "--kettle kettle-mediun --size 1x1x1m | did you mean 'kettle-medium'",
        "--kettle box-oven-large --size 1x1x1m | no kettle",
        "--oven kettle-medium --size 1x1x1m | --kettle",
        "--oven hall-crane --size 1x1x1m | no usable size",
        "--kettle kettle-medium | --size",
        "--size 1x1x1m | --kettle",
        "--kettle kettle-medium --size 0x1x1m | above zero",
        "--kettle kettle-medium --size 1x1x1m --mass 0kg | up to 100 t",
        "--kettle kettle-medium --size 1x1x1m --mass 1e9kg | up to 100 t",
        "--kettle kettle-medium --size 1x1x1m --mass -5kg | below zero",
        "--kettle kettle-medium --size 1x1x1m --mass NaNkg | not a mass",
        "--kettle kettle-medium --size 1x1x1m --level-drop 1e9mm | more than 10 m",
        "--kettle kettle-medium --size 1x1x1m --level-drop 5000mm | nothing can be dipped",
        "--kettle kettle-medium --size 1x1x1m --level-drop 1m --dross 4m | nothing can be dipped",
        "--kettle kettle-medium --size 1x1x1m --overlap 90m | more than 10 m",
        "--kettle kettle-medium --size 1x1x1m --cylinder 1x1m | one of",
        "--kettle kettle-medium --oven box-oven-large --size 1x1x1m | one after the other",
        "--kettle kettle-medium --size 1x1x1m --across 1m | --outline",
        "--kettle kettle-medium --size 1x1x1m --until friday | 2026-11-30",
        "--kettle kettle-medium --size 1x1x1m --out answer.pdf | .html",
        "--oven box-oven-large --size 1x1x1m --dross 3mm | --kettle only",
        "--kettle kettle-medium --size 1e300x1x1m | look at the unit",
        "--kettle usable 1e300x1x1m --size 1x1x1m | look at the unit",
        "--kettle usable 0x1x1m --size 1x1x1m | above zero",
        "--kettle usable 1e-9x1x1mm --size 1x1x1m | look at the unit",
        "--kettle kettle-medium --size 1e-300x1x1mm | look at the unit",
        "--kettle kettle-medium --cylinder 1e-9x1mm | look at the unit",
        "--door 0x1m --size 1x1x1m | above zero",
        "--door 1x1e9m --size 1x1x1m | look at the unit",
        "--kettle kettle-medium --outline 0x0m 1x0m 1e300x1m --across 1m | look at the unit",
        "--kettle kettle-medium --outline 0x0mm 1x1mm 2x2mm --across 1m | on one line",
        "--kettle kettle-medium --outline 0x0mm 1x1mm 2x0mm | needs --across",
        "samples/harbour-week HC-42 --level-drop 40mm | shop.yaml",
        "samples/harbour-week | which part",
        "samples/harbour-week NOPE | JOB/PART",
        "samples/harbour-week HC-41 | did you mean 'HC-42'",
        "samples/harbour-week H-203 | H-203/SP-02 or H-203/SP-05",
        "samples/harbour-week HC-42 --size 1x1x1m | leave out"
      })
  void wrongUsageIsOneSentenceAndExitTwo(String arguments, String says) {
    Screen screen = new Screen();
    assertThat(screen.fit(arguments.strip().split(" "))).isEqualTo(ExitCode.USAGE);
    assertThat(screen.err.toString().strip().lines()).hasSize(1);
    assertThat(screen.err.toString()).contains(says.strip());
    assertThat(screen.out.toString()).isEmpty();
  }

  @Test
  void aFolderThatIsNoWeekIsRefused(@TempDir Path folder) {
    Screen screen = new Screen();
    assertThat(screen.fit(folder.toString(), "X")).isEqualTo(ExitCode.REFUSED);
    assertThat(screen.err.toString()).contains("cannot be used", "check");
  }

  @Test
  void partOfAWeekHasItsStationsGatesAndHoles() throws IOException {
    Screen screen = new Screen();
    assertThat(screen.fit(WEEK, "H-203/SP-02", "--json")).isEqualTo(ExitCode.DONE);
    JsonNode answer = screen.json();
    assertThat(answer.get("stations").findValuesAsText("name"))
        .containsExactly("degrease", "rinse-1", "pickle", "rinse-2", "flux", "dryer", "kettle");
    // Bore 94 x 94 mm: a quarter of 132.9 mm is 33.2, the next size cut is 35 mm.
    assertThat(answer.get("holes").get(0).get("vent").get("drill_mm").asDouble()).isEqualTo(35);
    assertThat(answer.get("holes").get(0).get("places").toString())
        .contains("near end, underside", "far end, top side");
    JsonNode hollow = gate(answer, "hollows");
    assertThat(hollow.get("state").asText()).isEqualTo("opened");
    assertThat(hollow.get("opened_by").toString()).contains("hanger 1", "kettle lead");
    assertThat(answer.get("validity").asText()).contains("4 Dec 2026", "written release");
  }

  @Test
  void shutGateAndMissingRoomWaitForAPerson() throws IOException {
    Screen shut = new Screen();
    assertThat(shut.fit(WEEK, "SP-05", "--json")).isEqualTo(ExitCode.WAITS);
    assertThat(gate(shut.json(), "hollows").get("code").asText()).isEqualTo("hollow-closed");
    Screen no = new Screen();
    assertThat(no.fit(WEEK, "GH-01", "--json")).isEqualTo(ExitCode.WAITS);
    assertThat(no.json().get("verdict").asText()).isEqualTo("no");
    assertThat(no.json().get("limited_by").asText()).isEqualTo("kettle");
  }

  @Test
  void paintedPartsGoThroughBoothOvenAndOntoACarrier() throws IOException {
    Screen screen = new Screen();
    assertThat(screen.fit(WEEK, "H-201/PC-01", "--json")).isEqualTo(ExitCode.DONE);
    assertThat(screen.json().get("stations").findValuesAsText("name"))
        .contains("wash", "dry-off", "booth", "oven-1", "oven-2", "deep-cart");
    Screen spun = new Screen();
    assertThat(spun.fit(WEEK, "WC-05")).isEqualTo(ExitCode.DONE);
  }

  @Test
  void anOpenBoxThatGoesInOnlyOnItsBackIsToldSo() throws IOException {
    Screen screen = new Screen();
    assertThat(screen.fit(WEEK, "HC-42", "--json")).isEqualTo(ExitCode.DONE);
    assertThat(screen.json().get("across_mm").asDouble()).isEqualTo(700);
    assertThat(gate(screen.json(), "pockets").get("state").asText()).isEqualTo("opened");
  }

  @Test
  void theSheetIsOneWellFormedPageWithTheDrawing(@TempDir Path folder) throws Exception {
    Path page = folder.resolve("answer.html");
    Screen screen = new Screen();
    assertThat(screen.fit(WEEK, "HC-42", "--out", page.toString())).isEqualTo(ExitCode.DONE);
    String html = Files.readString(page);
    DocumentBuilderFactory.newInstance()
        .newDocumentBuilder()
        .parse(new org.xml.sax.InputSource(new StringReader(html.substring(15))));
    assertThat(html)
        .contains("TILTED", "from the side", "from the end", "18.4\u00b0", "40.4 to spare")
        .contains("ribs are pressed", "4 Dec 2026", "Local codes")
        .contains("air or water shut in explodes", "how the zinc will look", "18.4 degrees");
    Path alone = folder.resolve("answer.svg");
    assertThat(new Screen().fit(WEEK, "HC-42", "--out", alone.toString())).isEqualTo(ExitCode.DONE);
    assertThat(Files.readString(alone)).startsWith("<svg xmlns=").endsWith("</svg>");
    Path nowhere = folder.resolve("none/answer.html");
    Screen refused = new Screen();
    assertThat(refused.fit(WEEK, "HC-42", "--out", nowhere.toString())).isEqualTo(ExitCode.REFUSED);
  }

  @Test
  void theAnswerInWordsNamesVerdictMarginsAndWhoDecides() {
    Screen screen = new Screen();
    screen.fit("--kettle", "usable", "3.7x1.1x1.9m", "--size", "2.0x1.2x0.5m");
    assertThat(screen.out.toString())
        .startsWith("STRAIGHT")
        .contains("500 mm across", "0.0 to 23.6 degrees", "Mass not known", "written release");
  }

  private static JsonNode gate(JsonNode answer, String word) {
    for (JsonNode gate : answer.get("gates")) {
      if (gate.get("gate").asText().equals(word)) {
        return gate;
      }
    }
    throw new AssertionError("no gate " + word);
  }

  /** A door bounds no length: none is told, and the drawing is as long as the part. */
  @Test
  void aDoorTellsWidthAndHeightOnly(@TempDir Path folder) throws IOException {
    JsonNode answer = bare("--door", "1000x2000mm", "--size", "2500x1100x900mm");
    assertThat(answer.get("verdict").asText()).isEqualTo("straight");
    assertThat(answer.get("margin_mm").get("length").isNull()).isTrue();
    assertThat(answer.get("margin_mm").get("width").asDouble()).isEqualTo(100);
    assertThat(answer.get("margin_mm").get("depth").asDouble()).isEqualTo(900);
    // Nothing runs off in a room: it stands straight.
    assertThat(answer.get("hang_deg").asDouble()).isZero();

    Path sheet = folder.resolve("door.html");
    Screen screen = new Screen();
    screen.fit("--door", "1000x2000mm", "--size", "2500x2100x900mm", "--out", sheet.toString());
    assertThat(screen.out.toString())
        .contains("length any, width 100 mm, height -100 mm", "Missing: 100 mm of height");
    assertThat(Files.readString(sheet))
        .contains("a door, 2000 high", "height MISSING", "100 mm")
        .doesNotContain("1000000", "997500", "drains", "length to spare", "zinc", "explodes");
  }

  /** Of exactly the usable size there is one angle, and it is told as one. */
  @Test
  void oneAngleIsToldAsOne() {
    Screen screen = new Screen();
    screen.fit("--kettle", "usable", "3.7x1.1x1.9m", "--size", "3700x1100x1900mm");
    assertThat(screen.out.toString()).contains("at 0.0 degrees only");
  }

  /** Two dips are the kettle's doing: a better answer would need another. */
  @Test
  void twoDipsNameWhatLimitsThem() {
    Screen screen = new Screen();
    screen.fit("--kettle", "usable", "3.7x1.1x1.9m", "--size", "3700x1100x3500mm");
    assertThat(screen.out.toString()).contains("TWO-DIPS: turned over", "Limited by: kettle");
  }
}
