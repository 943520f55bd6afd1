package spangle.intake.read;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.assertj.core.groups.Tuple;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import spangle.plan.event.Event;
import spangle.plan.event.EventKind;

class EventReaderTest {
  @TempDir Path folder;

  private WeekReader.Reading read(String... lines) {
    return WeekFiles.sound(folder)
        .put("events.yaml", "events:\n" + String.join("\n", lines) + "\n")
        .read();
  }

  @Test
  void eachEventIsReadWithWhenWhatWhoAndCount() {
    WeekReader.Reading reading =
        read(
            "  - {when: mon 07:10, what: arrived, who: bending, job: J-1, part: LB-20, count: 150}",
            "  - {when: mon 08:00, what: hung, load: P01}",
            "  - {when: tue 09:20, what: broken, station: oven-1, until: tue 11:00, note: burner}");

    assertThat(reading.problems()).isEmpty();
    Event arrived = reading.input().orElseThrow().events().events().get(0);
    assertThat(arrived.atMin()).isEqualTo(7 * 60 + 10);
    assertThat(arrived.by()).isEqualTo("bending");
    assertThat(arrived.figures().count()).hasValue(150);
    Event broken = reading.input().orElseThrow().events().events().get(2);
    assertThat(broken.kind()).isEqualTo(EventKind.BROKEN);
    assertThat(broken.figures().untilMin()).hasValue(1440 + 11 * 60);
    assertThat(broken.note()).isEqualTo("burner");
  }

  @Test
  void aBadEventIsRefusedWithItsPlaceAndTheRestIsKeptUnderItsNumber() {
    WeekReader.Reading reading =
        read(
            "  - {when: mon 07:10, what: arived, job: J-1, part: LB-20, count: 5}",
            "  - {when: mon 07:10, what: arrived, job: J-1, part: LB-20, count: 0}",
            "  - {when: mon 07:10, what: arrived, job: J-9, part: LB-20, count: 5}",
            "  - {when: noon, what: hung, load: P01}",
            "  - {when: mon 08:00, what: broken, station: oven-7}",
            "  - {when: mon 08:00, what: broken, station: oven-1, until: mon 07:00}",
            "  - {when: mon 08:00, what: hung}",
            "  - {when: mon 08:00, what: priority-changed, job: J-1}",
            "  - {when: mon 08:00, what: gate-opened, job: J-1, part: LB-20, gate: vents,"
                + " opened_by: [Rim]}",
            "  - {when: mon 08:00, what: struck, event: 10}",
            "  - hung",
            "  - {when: mon 09:00, what: hung, load: P02}");

    assertThat(reading.problems())
        .extracting(p -> p.code().key() + " " + p.place().words() + " " + p.field())
        .containsExactlyInAnyOrder(
            "unknown-word events.yaml:2:29 what",
            "out-of-range events.yaml:3:68 count",
            "unknown-name events.yaml:4:43 job",
            "not-a-time events.yaml:5:12 when",
            "unknown-name events.yaml:6:46 station",
            "event-bad events.yaml:7:61 until",
            "value-missing events.yaml:8:5 load",
            "event-bad events.yaml:9:29 what",
            "event-bad events.yaml:10:89 opened_by",
            "out-of-range events.yaml:11:44 event",
            "wrong-shape events.yaml:12:5 events");
    assertThat(reading.input().orElseThrow().events().events())
        .extracting(Event::number, Event::load)
        .containsExactly(Tuple.tuple(12, "P02"));
  }

  @Test
  void whatAnEventDoesNotReadIsAsked() {
    assertThat(read("  - {when: mon 08:00, what: hung, load: P01, colour: grey}").problems())
        .extracting(p -> p.code().key())
        .containsExactly("unknown-key");
  }

  /** A kettle 2300 mm deep with its zinc 150 mm below the rim holds 2150 mm of it. */
  @ParameterizedTest
  @CsvSource({"2149, 0", "2150, 1"})
  void aLevelAtTheBottomIsNoBath(int downMm, int refused) {
    String event = "{when: mon 08:00, what: level, station: kettle, level_down_mm: " + downMm + "}";

    assertThat(read("  - " + event).problems())
        .hasSize(refused)
        .allSatisfy(p -> assertThat(p.why()).contains("2150 mm of zinc"));
  }

  @ParameterizedTest
  @CsvSource({"2100, 49, 0", "2100, 50, 1"})
  void norInTheShopFile(int downMm, int drossMm, int refused) {
    String kettle = "{id: kettle, profile: kettle-medium";
    assertThat(WeekFiles.SHOP).contains(kettle);

    assertThat(
            WeekFiles.sound(folder)
                .put(
                    "shop.yaml",
                    WeekFiles.SHOP.replace(
                        kettle, kettle + ", level_mm: " + downMm + ", dross_mm: " + drossMm))
                .read()
                .problems())
        .hasSize(refused)
        .allSatisfy(p -> assertThat(p.why()).contains("no zinc would be left"));
  }

  @Test
  void nobodyIsMissingWhereNobodyHasToBe() {
    WeekReader.Reading reading =
        read("  - {when: mon 07:00, what: absent, station: cool, factor: 2, until: mon 12:00}");
    assertThat(reading.problems())
        .filteredOn(p -> p.place().file().equals("events.yaml"))
        .singleElement()
        .satisfies(
            p -> {
              assertThat(p.why()).isEqualTo("nobody has to be there while it runs");
              assertThat(p.remedy()).contains("at which people are missing");
            });
    assertThat(reading.input().orElseThrow().events().events()).isEmpty();
  }
}
