package spangle.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static spangle.cli.Calc.near;

import com.fasterxml.jackson.databind.JsonNode;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Published figures and hand sums through the commands of the phone call. */
class CalcNumbersTest {
  /** ISO 1461:2009 Table 3: rows change above 3.0 and above 6.0 mm; 1 m2 of plate has 2 m2. */
  @ParameterizedTest
  @CsvSource({
    "3.0, 55, 0.792, 3.36",
    "3.01, 70, 1.008, 4.27",
    "6.0, 70, 1.008, 2.14",
    "6.01, 85, 1.224, 2.59"
  })
  void zincOnPlateByIso1461(double mm, double meanUm, double kg, double pct) throws Exception {
    JsonNode zinc = Calc.json("zinc --thickness " + mm + "mm --area 2m2");

    assertThat(zinc.at("/coating_um/mean").asDouble()).isEqualTo(meanUm);
    near(zinc.at("/zinc_on_parts_kg/minimum"), kg);
    near(zinc.at("/pickup_pct/minimum"), pct);
  }

  /** ISO 1461:2009 Table 3: 500 brackets of 120 x 120 x 3 mm, edges counted. */
  @Test
  void zincOnBracketsCountsEdges() throws Exception {
    JsonNode zinc = Calc.json("zinc --thickness 3mm --plate 120x120mm --count 500");

    near(zinc.at("/area_m2"), 15.12);
    near(zinc.at("/zinc_on_parts_kg/minimum"), 5.97);
    near(zinc.at("/pickup_pct/minimum"), 3.52);
  }

  /** Yield range of the trade: likely = 1.2 x minimum / 0.75 for steel of class A (hand sum). */
  @Test
  void zincToBuyIsZincOnTheWorkOverTheYield() throws Exception {
    JsonNode zinc = Calc.json("zinc --thickness 3mm --area 2m2 --si 0.02 --p 0.01");

    assertThat(zinc.at("/steel_class").asText()).isEqualTo("A");
    near(zinc.at("/zinc_to_buy_kg/likely"), 0.792 * 1.2 / 0.75);
    near(zinc.at("/zinc_to_buy_kg/low"), 0.792 * 1.1 / 0.82);
    near(zinc.at("/zinc_to_buy_kg/high"), 0.792 * 1.3 / 0.65);
  }

  /** Grade 75 of ASTM A123 with its own conversion: 530.0 g/m2. */
  @Test
  void zincByAstmA123HasItsOwnMassPerUm() throws Exception {
    JsonNode zinc =
        Calc.json("zinc --thickness 0.1875in --area 2m2 --standard astm-a123 --category plate");

    assertThat(zinc.at("/coating_um/mean").asDouble()).isEqualTo(75);
    near(zinc.at("/coating_g_m2"), 530.0);
  }

  /** A published powder-coating answer on coverage: SG 1.6, 75 um, 60 %: 8.33 and 120 g/m2. */
  @Test
  void powderCoverageAsPublished() throws Exception {
    JsonNode powder = Calc.json("powder --area 1m2 --film 75um --sg 1.6 --use 0.6");

    near(powder.at("/coverage_m2_kg"), 8.33);
    near(powder.at("/film_kg"), 0.120);
    near(powder.at("/sprayed_kg"), 1 / 5.00);
  }

  /** The same formula with hooks of 4 mm wire and a fixed loss (hand sum). */
  @Test
  void powderOfSmallBracketsIsMostlyHooksAndLoss() throws Exception {
    JsonNode powder =
        Calc.json(
            "powder --area 5.0826m2 --film 70um --sg 1.6 --use 0.5 --hooks 300"
                + " --hook-area 0.00377m2 --colour-loss 1kg --pack 20kg");

    near(powder.at("/film_kg"), 0.696);
    near(powder.at("/sprayed_kg"), 1.392);
    near(powder.at("/to_draw_kg"), 2.392);
    assertThat(powder.at("/packs").asInt()).isEqualTo(1);
  }

  /** Published coating tech notes: 71 % and 125 um; 50 % thinned by 10 % for 60 um. */
  @ParameterizedTest
  @CsvSource({"71, 0, 125, 176, 5.68", "50, 10, 60, 132, 7.58"})
  void liquidSpreadingAsPublished(
      double solids, double thinner, double film, double wet, double spreading) throws Exception {
    JsonNode paint =
        Calc.json(
            "liquid --area 100m2 --film %sum --solids %s --thinner %s"
                .formatted(film, solids, thinner));

    near(paint.at("/wet_film_um"), wet);
    near(paint.at("/spreading_m2_l"), spreading);
  }

  /** Formula of the same notes (hand sum): 22.22 l = 17.78 + 4.44 l at 4:1. */
  @Test
  void liquidComponentsAddUp() throws Exception {
    JsonNode paint = Calc.json("liquid --area 100m2 --film 80um --solids 60 --loss 0.4 --mix 4:1");

    near(paint.at("/litres_theoretical"), 13.33);
    near(paint.at("/litres"), 22.22);
    near(paint.at("/components_l/0"), 17.78);
    near(paint.at("/components_l/1"), 4.44);
  }

  /** Lumped capacitance with constant U and c (textbook formula): 12.07 min for 6 mm of steel. */
  @Test
  void cureWithConstantU() throws Exception {
    JsonNode cure =
        Calc.json("cure --steel 6mm --oven 200C --from 20C --window '10@180,max 20' --u 35");

    near(cure.at("/heat_up_min"), 12.07);
    near(cure.at("/dwell_min/min"), 22.07);
    near(cure.at("/dwell_min/max"), 32.07);
    assertThat(cure.at("/verdict").asText()).isEqualTo("cures");
  }

  /** An oven below the lowest listed temperature never cures. */
  @Test
  void cureBelowTheWindowCannotCure() throws Exception {
    JsonNode cure = Calc.json("cure --steel 6mm --oven 170C --window 10@180");

    assertThat(cure.at("/verdict").asText()).isEqualTo("cannot cure");
    assertThat(cure.at("/dwell_min").has("min")).isTrue();
    assertThat(cure.at("/dwell_min/min").isNull()).isTrue();
    assertThat(cure.at("/dwell_min/max").isNull()).isTrue();
    assertThat(cure.at("/heat_up_min").isNull()).isTrue();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "zinc --thickness 3 --area 2m2",
        "zinc --thickness 3mm",
        "zinc --thickness 3mm --area 2m2 --plate 1x1m",
        "zinc --thickness 3mm --area 2m2 --spun --standard astm-a123",
        "zinc --thickness 3mm --area 2m2 --yield 0",
        "zinc --thickness 3mm --area 2kg",
        "powder --area 1m2 --film 75um --sg 1.6 --use 0",
        "powder --area 1m2 --film 75um --sg 1.6 --use 1.2",
        "liquid --area 1m2 --film 75um --solids 60 --loss 1",
        "liquid --area 1m2 --film 75um --solids 60 --mix four",
        "cure --oven 200C --window 10@180",
        "cure --steel 3mm --oven 200C --window 10@180 --u 35 --h 20"
      })
  void wrongUseIsOneSentenceAndExitTwo(String line) {
    assertThat(Calc.refusal(line)).isNotBlank();
  }
}
