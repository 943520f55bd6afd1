package spangle.desk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import spangle.cli.Spangle;
import spangle.intake.read.Besides;
import spangle.intake.read.WeekReader;
import spangle.intake.week.Hauling;
import spangle.intake.week.Shop;
import spangle.plan.LineKind;
import spangle.plan.LineSpec;
import spangle.plan.Lot;
import spangle.plan.PlannedBatch;
import spangle.plan.PlannedLoad;
import spangle.report.ReportFiles;
import spangle.report.TerminalSummary;
import spangle.report.Yardstick;
import spangle.solve.ProgressListener;
import spangle.solve.SolveOptions;

/** The harbour week with its galvanizing bought: the truck stands in place of the kettle line. */
class SentOutTest {
  private static final Path HARBOUR = Path.of("samples/harbour-week");
  private static final Path OUTSIDE = Path.of("samples/what-if/kettle-outside.yaml");
  private static final long STEPS = 20_000;
  private static final PlanDesk.Made MADE = made(Optional.of(OUTSIDE), STEPS);
  private static final PlanDesk.Made HOUSE = made(Optional.empty(), 0);

  @TempDir Path temp;

  private static PlanDesk.Made made(Optional<Path> overlay, long steps) {
    return new PlanDesk()
        .plan(
            HARBOUR,
            overlay,
            new SolveOptions(steps == 0 ? 0 : 60, steps, 1, 1),
            ProgressListener.NOBODY)
        .made()
        .orElseThrow();
  }

  private static LineSpec line() {
    return MADE.week().brief().lines().stream()
        .filter(l -> l.kind() == LineKind.OUTSIDE)
        .findFirst()
        .orElseThrow();
  }

  @Test
  void thePlanKeepsEveryRuleAndNothingDrawsOnTheShopsOwnZinc() {
    assertThat(MADE.findings()).isEmpty();
    assertThat(MADE.plan().batches()).anyMatch(b -> b.lineId().equals(line().id()));
    assertThat(MADE.purchases()).noneMatch(p -> p.item().name().contains("zinc"));
  }

  @Test
  void whatGoesAwayHasASheetOfItsOwnAndNoOvensQuestions() {
    String page =
        new String(ReportFiles.render(MADE.report()).get("index.html"), StandardCharsets.UTF_8);
    String trip =
        MADE.plan().batches().stream()
            .filter(b -> b.lineId().equals(line().id()))
            .flatMap(b -> b.loads().stream())
            .map(PlannedLoad::id)
            .findFirst()
            .orElseThrow();
    int from = page.indexOf("<section class=\"sheet load\" id=\"load-" + trip + "\"");
    String sheet = page.substring(from, page.indexOf("</section>", from));

    assertThat(sheet)
        .contains("pack from", "<span>truck</span>", "strapped", "counted back", "zinc read")
        .doesNotContain("hang from", ">oven<", "earth and hooks", "first film");
    for (String words : List.of("<th>truck</th>", "before it leaves, ")) {
      assertThat(page.contains(words)).as(words).isTrue();
    }
    assertThat(page.contains("first film of galvanized")).isFalse();
  }

  @Test
  void daysWithAnotherFirmAreNoHoursInAnOven() {
    long inTheHouse =
        MADE.plan().batches().stream()
            .filter(b -> !b.lineId().equals(line().id()))
            .mapToLong(PlannedBatch::dwellMin)
            .sum();
    assertThat(inTheHouse).isEqualTo(MADE.plan().figures().runMinutes());
    assertThat(MADE.plan().figures().trips())
        .isEqualTo(
            (int)
                MADE.plan().batches().stream().filter(b -> b.lineId().equals(line().id())).count());
    assertThat(HOUSE.plan().figures().trips()).isZero();
    Yardstick sheet = MADE.report().yardstick();

    assertThat(sheet.bounds())
        .filteredOn(b -> b.name().startsWith("hours in"))
        .allMatch(b -> Math.abs(b.ours() - inTheHouse / 60.0) < 1e-9)
        .allMatch(b -> b.noPlanFewerThan() <= b.ours())
        .hasSize(1);
    assertThat(sheet.comparisons()).anyMatch(c -> c.name().startsWith("hours in"));
    assertThat(HOUSE.report().yardstick().comparisons())
        .anyMatch(c -> c.name().startsWith("hours in"));
    assertThat(TerminalSummary.of(MADE.report())).contains(" truck trip");
    assertThat(TerminalSummary.of(HOUSE.report())).doesNotContain("truck trip");
  }

  @Test
  void aTripLeavesWhenItIsCollectedAndComesBackAfterTheLeadTime() {
    // collected Monday 14:00, two working days: Wednesday 10:00
    assertThat(line().machines().get(0).name()).isEqualTo("Truck Mon 14:00, back Wed 10:00");
    for (PlannedBatch trip : MADE.plan().batches()) {
      if (trip.lineId().equals(line().id())) {
        int number = trip.setting();
        assertThat(trip.machineId()).isEqualTo(line().machines().get(number).id());
        assertThat(trip.startMin()).isEqualTo(List.of(840, 2280, 3600).get(number));
        assertThat(trip.endMin()).isEqualTo(List.of(3480, 4920, 6360).get(number));
      }
    }
  }

  @Test
  void noTripIsHeavierThanTheTruckBearsOrTakesMorePalletsThanItHasPlaces() {
    Map<String, Lot> lots = new HashMap<>();
    MADE.week().brief().lots().forEach(l -> lots.put(l.id(), l));
    for (PlannedBatch trip : MADE.plan().batches()) {
      if (trip.lineId().equals(line().id())) {
        double kg =
            trip.loads().stream()
                .flatMap(l -> l.lotIds().stream())
                .mapToDouble(id -> lots.get(id).massKg())
                .sum();
        assertThat(kg).isPositive().isLessThanOrEqualTo(6000);
        assertThat(trip.loads().size()).isLessThanOrEqualTo(14);
      }
    }
  }

  @Test
  void powderOnBoughtZincWaitsForTheTruck() {
    Map<String, Integer> back = new HashMap<>();
    Map<String, Integer> first = new HashMap<>();
    for (PlannedBatch batch : MADE.plan().batches()) {
      for (PlannedLoad load : batch.loads()) {
        int start =
            load.visits().stream()
                .mapToInt(PlannedLoad.PlannedVisit::startMin)
                .reduce(batch.startMin(), Math::min);
        load.lotIds().forEach(id -> back.put(id, batch.endMin()));
        load.lotIds().forEach(id -> first.put(id, start));
      }
    }
    List<Lot> bakes =
        MADE.week().brief().lots().stream()
            .filter(l -> l.finish().name().equals("degassing bake") && first.containsKey(l.id()))
            .toList();
    assertThat(bakes).isNotEmpty();
    assertThat(bakes)
        .allSatisfy(
            l ->
                assertThat(first.get(l.id()))
                    .isGreaterThanOrEqualTo(back.get(l.after().orElseThrow().lotId())));
  }

  @Test
  void theOtherFirmsKettleDecidesWhatFits() {
    // the tall cabinet that goes into the house kettle only tilted goes into the larger straight
    assertThat(HOUSE.report().facts().fits()).isNotEmpty();
    assertThat(MADE.report().facts().fits())
        .noneMatch(fit -> fit.verdict().equals("tilted") || fit.verdict().equals("does not fit"));
  }

  @Test
  void theSheetSaysTruckMassChargeAndWhoLooksIntoTheHoles() {
    assertThat(MADE.report().facts().loads())
        .filteredOn(n -> n.loadId().startsWith("X"))
        .isNotEmpty()
        .allSatisfy(
            n -> {
              assertThat(n.cautions().get(0))
                  .contains("the galvanizer across the bay", "back ", "at 1.15 a kg");
              assertThat(n.cautions().get(1)).contains("seen by two people");
            });
  }

  @Test
  void houseAndOutsideAreComparedByWhatTheySend() throws Exception {
    Path house = temp.resolve("house");
    Path out = temp.resolve("outside");
    PlanDesk.write(HARBOUR, house, HOUSE);
    PlanDesk.write(HARBOUR, Optional.of(OUTSIDE), out, MADE);

    PlanCompare.Difference difference = PlanCompare.of(PlanShelf.read(house), PlanShelf.read(out));

    assertThat(difference.made())
        .containsExactly("the second plan is a what-if: Galvanizing bought outside");
    Balance sent =
        difference.balance().stream()
            .filter(b -> b.name().equals("kg sent to another firm"))
            .findFirst()
            .orElseThrow();
    assertThat(sent.before()).isZero();
    assertThat(sent.after()).isPositive();
    // 1.15 for each kilogram, as the overlay says; nothing is paid in the house.
    Balance money = row(difference, "money other firms ask for it");
    assertThat(money.before()).isZero();
    assertThat(money.after()).isCloseTo(1.15 * sent.after(), within(1.2));
    Balance zinc = row(difference, "kg of the shop's own zinc on the work");
    assertThat(zinc.before()).isPositive();
    assertThat(zinc.after()).isZero();
    assertThat(OrderDesk.order(HARBOUR, Optional.of(out)).charges())
        .singleElement()
        .satisfies(
            c -> {
              assertThat(c.kg()).isCloseTo(sent.after(), within(0.5));
              assertThat(c.perKg()).isEqualTo(1.15);
              assertThat(c.money()).isCloseTo(1.15 * c.kg(), within(1e-9));
            });
    assertThat(OrderDesk.order(HARBOUR, Optional.of(house)).charges()).isEmpty();
    StringWriter json = new StringWriter();
    Spangle.run(
        new PrintWriter(json),
        new PrintWriter(new StringWriter()),
        "order",
        HARBOUR.toString(),
        "--plan",
        out.toString(),
        "--json");
    JsonNode said = new ObjectMapper().readTree(json.toString()).at("/sent_out/0");
    assertThat(said.at("/charge").asDouble())
        .isCloseTo(1.15 * said.at("/kg").asDouble(), within(0.02));
    assertThat(PlanShelf.audit(out, HARBOUR).findings()).isEmpty();
  }

  private static Balance row(PlanCompare.Difference difference, String name) {
    return difference.balance().stream()
        .filter(b -> b.name().equals(name))
        .findFirst()
        .orElseThrow();
  }

  private Optional<Shop> shop(String change) throws IOException {
    Path file = temp.resolve("over.yaml");
    Files.writeString(file, Files.readString(OUTSIDE) + change);
    return WeekReader.read(HARBOUR, Besides.overlay(Optional.of(file))).input().map(i -> i.shop());
  }

  @Test
  void aFirmThatCollectsOnFridayBringsItBackAfterTheWeekend() throws IOException {
    Path file = temp.resolve("friday.yaml");
    Files.writeString(
        file,
        Files.readString(OUTSIDE).replace("[mon 14:00, tue 14:00, wed 12:00]", "[fri 12:00]"));
    Shop shop =
        WeekReader.read(HARBOUR, Besides.overlay(Optional.of(file))).input().orElseThrow().shop();

    Hauling hauling = shop.line("zinc").orElseThrow().hauling().orElseThrow();

    // Friday, then Monday and Tuesday: two working days, Tuesday 10:00 of the second week
    assertThat(hauling.trips()).containsExactly(new Hauling.Trip(4 * 1440 + 720, 8 * 1440 + 600));
  }

  @Test
  void anOutsideLineWithoutDaysOrTruckIsRefused() throws IOException {
    assertThat(shop("").isPresent()).isTrue();
    Path file = temp.resolve("none.yaml");
    Files.writeString(
        file,
        Files.readString(OUTSIDE)
            .replace("      collects: [mon 14:00, tue 14:00, wed 12:00]\n", "")
            .replace("      truck_max_kg: 6000\n", ""));

    WeekReader.Reading reading = WeekReader.read(HARBOUR, Besides.overlay(Optional.of(file)));

    assertThat(reading.stopped()).isTrue();
    assertThat(reading.problems()).extracting("field").contains("collects", "truck_max_kg");
  }
}
