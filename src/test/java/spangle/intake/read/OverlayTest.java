package spangle.intake.read;

import static org.assertj.core.api.Assertions.assertThat;

import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import spangle.equipment.Pace;
import spangle.equipment.StationProfile;
import spangle.intake.problem.Problem;
import spangle.intake.week.Shop;
import spangle.intake.week.ShopLine;
import spangle.intake.week.StationUse;
import spangle.intake.week.Stock;

/** A what-if changes what it names and nothing else; what is wrong in it names its own line. */
class OverlayTest {
  private static final Path HARBOUR = Path.of("samples/harbour-week");
  private static final Path WHAT_IF = Path.of("samples/what-if");

  @TempDir Path temp;

  private WeekReader.Reading read(String overlay) throws IOException {
    Path file = temp.resolve("over.yaml");
    Files.writeString(file, overlay);
    return WeekReader.read(HARBOUR, Besides.overlay(Optional.of(file)));
  }

  private Shop shop(String overlay) throws IOException {
    return read(overlay).input().orElseThrow().shop();
  }

  private static List<String> stations(Shop shop, String line) {
    return shop.line(line).orElseThrow().stations().stream().map(StationUse::id).toList();
  }

  @Test
  void whatItDoesNotNameStaysAsItIs() throws IOException {
    Shop plain = WeekReader.read(HARBOUR).input().orElseThrow().shop();

    Shop other = shop("title: more days\nshop: {horizon_days: 6}");

    assertThat(other.horizonDays()).isEqualTo(6);
    assertThat(other.lines()).isEqualTo(plain.lines());
    assertThat(other.shifts()).isEqualTo(plain.shifts());
    assertThat(other.maintenance()).isEqualTo(plain.maintenance());
  }

  /** Half of it would be planned and the other half passed over: nobody would see it. */
  @Test
  void whatAnOverlayCannotChangeIsRefusedWhole() throws IOException {
    WeekReader.Reading reading =
        read("title: Saturday\nshop: {horizon_days: 6}\njobs:\n  - {job: H-101, due: fri 12:00}\n");

    assertThat(reading.input()).isEmpty();
    assertThat(reading.problems())
        .filteredOn(p -> p.field().equals("jobs"))
        .singleElement()
        .satisfies(
            p -> {
              assertThat(p.place().words()).endsWith("over.yaml:3:1");
              assertThat(p.why()).isEqualTo("an overlay cannot change 'jobs'");
              assertThat(p.limit()).isEqualTo("title, shop, coatings, kits");
            });
  }

  @Test
  void overtimeIsAddedToWhatIsThere() throws IOException {
    Shop other =
        shop(
            """
            title: Saturday
            shop:
              horizon_days: 6
              extra_days: [{date: sat, from: 06:00, to: 12:00, lines: [powder]}]
              maintenance: [{station: kettle, day: tue, from: 06:00, to: 07:00, why: drossing}]
            """);

    assertThat(other.exceptions()).singleElement().extracting("day").isEqualTo(5);
    assertThat(other.maintenance()).hasSize(3);
  }

  @Test
  void aNewStationStandsBehindTheOneItNames() throws IOException {
    Shop other =
        shop(
            """
            title: second kettle
            shop:
              lines:
                - id: zinc
                  stations: [{id: kettle-2, profile: kettle-small, after: kettle}]
            """);

    List<String> ids = stations(other, "zinc");
    assertThat(ids.indexOf("kettle-2")).isEqualTo(ids.indexOf("kettle") + 1);
    assertThat(other.line("zinc").orElseThrow().machines()).hasSize(2);
  }

  @Test
  void aKnownStationChangesOnlyTheValuesNamed() throws IOException {
    Shop plain = WeekReader.read(HARBOUR).input().orElseThrow().shop();
    Shop other =
        shop("title: more pickle\nshop: {lines: [{id: zinc, stations: [{id: pickle, count: 7}]}]}");

    StationUse before = station(plain, "zinc", "pickle");
    StationUse after = station(other, "zinc", "pickle");
    assertThat(after.count()).isEqualTo(7);
    assertThat(after.profile()).isEqualTo(before.profile());
    assertThat(stations(other, "zinc")).isEqualTo(stations(plain, "zinc"));
  }

  @Test
  void aStationWithHalfItsCrewTakesTwiceAsLongAndAnOvenDoesNotCare() throws IOException {
    Shop plain = WeekReader.read(HARBOUR).input().orElseThrow().shop();
    Shop other =
        shop(
            """
            title: one sprayer away
            shop:
              lines:
                - id: powder
                  stations: [{id: booth, crew_pct: 50}, {id: oven-1, crew_pct: 50}]
            """);

    Pace before = ((StationProfile) station(plain, "powder", "booth").profile()).pace();
    Pace after = ((StationProfile) station(other, "powder", "booth").profile()).pace();
    assertThat(after.fixedMin()).isEqualTo(2 * before.fixedMin());
    assertThat(after.variableMin(10, 4, 2)).isEqualTo(2 * before.variableMin(10, 4, 2));
    assertThat(station(other, "powder", "oven-1")).isEqualTo(station(plain, "powder", "oven-1"));
    assertThat(
            read("title: nobody\nshop: {lines: [{id: powder, stations: [{id: booth, crew_pct: 0}]}]}")
                .stopped())
        .isTrue();
  }

  private static StationUse station(Shop shop, String line, String id) {
    return shop.line(line).orElseThrow().stations().stream()
        .filter(s -> s.id().equals(id))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void thingsAreTakenAwayAndReplacedWhole() throws IOException {
    Shop other =
        shop(
            """
            title: no liquid booth, one small oven
            shop:
              without: [liquid]
              lines:
                - id: powder
                  without: [oven-1, tall-cart]
                  carriers: [{id: flat-rack, profile: flat-rack, owned: 3, replaced: yes}]
            """);

    assertThat(other.lines()).extracting(ShopLine::id).containsExactly("powder", "zinc");
    assertThat(stations(other, "powder")).doesNotContain("oven-1").contains("oven-2");
    ShopLine powder = other.line("powder").orElseThrow();
    assertThat(powder.carriers())
        .extracting("id")
        .containsExactly("flat-rack", "small-parts-rack", "deep-cart");
    assertThat(powder.carriers().get(0).inStrip()).isZero();
  }

  @Test
  void aDeliveryIsMovedByItsLotAndANewOneAdded() throws IOException {
    WeekReader.Reading reading =
        read(
            """
            title: yellow on Thursday, and more of it
            coatings:
              powders:
                - id: P-BUOY-YELLOW
                  on_order:
                    - {lot: BY-047, arrives: thu 10:00}
                    - {lot: BY-050, kg: 20, arrives: fri 06:00}
            """);

    Stock stock =
        reading.input().orElseThrow().catalogue().coating("P-BUOY-YELLOW").orElseThrow().stock();
    assertThat(stock.lots()).hasSize(1);
    assertThat(stock.deliveries())
        .containsExactly(
            new Stock.Delivery("BY-047", 8, 3 * 1440 + 600),
            new Stock.Delivery("BY-050", 20, 4 * 1440 + 360));
  }

  @Test
  void whatIsWrongInItIsFoundByItsOwnLine() throws IOException {
    WeekReader.Reading reading =
        read(
            """
            title: slips
            shop:
              horizon_days: lots
              lines:
                - id: zinc
                  stations: [{id: kettle-2, profile: kettle-smal, after: ketle}]
              without: [nothing-there]
            stores: {}
            """);

    assertThat(reading.stopped()).isTrue();
    assertThat(reading.problems())
        .filteredOn(p -> p.place().file().equals("over.yaml"))
        .extracting(p -> p.place().line() + " " + p.field())
        .contains("3 horizon_days", "6 profile", "6 after", "7 without", "8 stores");
    assertThat(
            read("title: slip\ncoatings: {powders: [{id: P-BUOY-YELLOW, colour_los_kg: 2}]}")
                .problems())
        .filteredOn(p -> p.place().words().equals("over.yaml:2:42"))
        .extracting(Problem::field)
        .containsExactly("colour_los_kg");
  }

  @Test
  void aPaintLineWithoutItsBoothIsRefusedForNobodyWouldSpray() throws IOException {
    WeekReader.Reading powder =
        read("title: no booth\nshop: {lines: [{id: powder, without: [booth]}]}");
    WeekReader.Reading liquid =
        read("title: no booth\nshop: {lines: [{id: liquid, without: [liquid-booth]}]}");

    assertThat(powder.problems())
        .extracting(Problem::why)
        .contains("line 'powder': a powder line needs a powder booth ahead of its oven");
    assertThat(powder.stopped()).isTrue();
    assertThat(liquid.problems())
        .extracting(Problem::why)
        .contains("line 'liquid': a paint line needs a spray booth ahead of its oven");
    assertThat(liquid.stopped()).isTrue();
  }

  @Test
  void anOverlayThatIsNotThereStopsEverything() {
    WeekReader.Reading reading =
        WeekReader.read(HARBOUR, Besides.overlay(Optional.of(temp.resolve("none.yaml"))));

    assertThat(reading.stopped()).isTrue();
    assertThat(reading.problems())
        .extracting(Problem::why)
        .contains("without the overlay nothing is planned");
  }

  @Test
  void oneThatChangesNothingOrHasNoTitleIsRefused() throws IOException {
    assertThat(read("title: nothing").stopped()).isTrue();
    assertThat(read("shop: {horizon_days: 6}").stopped()).isTrue();
  }

  @Test
  void itIsNotAmongTheFilesOfTheWeek() throws IOException {
    WeekReader.Reading reading = read("title: more days\nshop: {horizon_days: 6}");

    assertThat(reading.digests()).isEqualTo(new TreeMap<>(WeekReader.read(HARBOUR).digests()));
    assertThat(reading.input().orElseThrow().overlay())
        .hasValueSatisfying(
            note -> {
              assertThat(note.title()).isEqualTo("more days");
              assertThat(note.bytes()).isEqualTo(40);
              assertThat(note.sha256()).hasSize(64);
            });
  }

  @Test
  void everySampleIsReadWithoutAWordAndKeepsTheSchema() throws IOException {
    List<Path> files;
    try (Stream<Path> found = Files.list(WHAT_IF)) {
      files = found.filter(f -> f.toString().endsWith(".yaml")).sorted().toList();
    }
    assertThat(files).hasSizeGreaterThanOrEqualTo(4);
    List<Problem> usual = WeekReader.read(HARBOUR).problems();
    Schema schema = schema();
    for (Path file : files) {
      WeekReader.Reading reading = WeekReader.read(HARBOUR, Besides.overlay(Optional.of(file)));
      assertThat(reading.problems()).as(file.toString()).isEqualTo(usual);
      assertThat(schema.validate(Files.readString(file), InputFormat.YAML))
          .as(file.toString())
          .isEmpty();
    }
    assertThat(schema.validate("shop: {horizon_days: 6}", InputFormat.YAML)).isNotEmpty();
    assertThat(schema.validate("title: x\nshop: {horizon: 6}", InputFormat.YAML)).isNotEmpty();
  }

  private static Schema schema() throws IOException {
    try (InputStream in = OverlayTest.class.getResourceAsStream("/schema/overlay.schema.json")) {
      return SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
          .getSchema(Objects.requireNonNull(in));
    }
  }
}
