package spangle.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import spangle.WeekCopy;
import spangle.intake.read.WeekReader;
import spangle.plan.event.Event;

/** What is written into the log, and what is not. */
class EventBookTest {
  @TempDir Path week;

  @BeforeEach
  void aWeek() {
    WeekCopy.unplanned(Path.of("samples/first-steps"), week);
  }

  private EventBook.Answer add(String what, String... pairs) throws IOException {
    Map<String, String> values = new LinkedHashMap<>();
    values.put("when", "mon 07:00");
    values.put("what", what);
    for (String pair : pairs) {
      values.put(pair.substring(0, pair.indexOf('=')), pair.substring(pair.indexOf('=') + 1));
    }
    return EventBook.add(week, values, Optional.empty());
  }

  private String refused(String what, String... pairs) throws IOException {
    EventBook.Answer answer = add(what, pairs);
    assertThat(answer.number()).isZero();
    return String.join("\n", answer.refused());
  }

  private List<Event> log() {
    return WeekReader.read(week).input().orElseThrow().events().events();
  }

  @Test
  void eventsAreNumberedAndAnyTextIsReadBackAsItWasSaid() throws IOException {
    String note = "burner \"A\": trip, 50 % {open} # \\ \t end";
    assertThat(add("broken", "station=oven", "note=" + note).number()).isEqualTo(1);
    assertThat(add("repaired", "station=oven").number()).isEqualTo(2);
    assertThat(log()).extracting(Event::number).containsExactly(1, 2);
    assertThat(log().get(0).note()).isEqualTo(note);
    assertThat(week.resolve("events.yaml~new")).doesNotExist();
  }

  @Test
  void aRefusedEventLeavesTheLogAsItWasByteForByte() throws IOException {
    add("broken", "station=oven");
    byte[] before = Files.readAllBytes(week.resolve("events.yaml"));
    refused("broken", "station=ofen");
    assertThat(week.resolve("events.yaml")).hasBinaryContent(before);
    assertThat(week.resolve("events.yaml~new")).doesNotExist();
  }

  @Test
  void aRefusalNamesKeyValueAndLimit() throws IOException {
    assertThat(refused("rejected", "job=F-1", "part=LB-20", "count=0"))
        .contains("count '0'", "1 to 10000000");
    assertThat(refused("absent", "station=booth", "factor=0.5", "until=mon 12:00"))
        .contains("factor '0.5'", "1 to 20");
    assertThat(refused("cancelled", "job=F-9")).contains("job 'F-9'", "F-1");
    assertThat(refused("priority-changed", "job=F-1", "priority=77"))
        .contains("priority '77'", "1 to 9")
        .doesNotContain("nothing changes");
    assertThat(refused("priority-changed", "job=F-1", "due=mon 06:00"))
        .contains("due 'mon 06:00'", "before the event");
    assertThat(refused("broken", "station=booth", "count=9")).contains("booth has 1 place");
    assertThat(refused("level", "station=booth", "level_down_mm=5")).contains("no bath");
    assertThat(week.resolve("events.yaml")).doesNotExist();
  }

  @Test
  void aTankAndAKettleHaveALevel() throws IOException {
    assertThat(add("broken", "station=pickle", "count=1").words()).endsWith("pickle, 1 place");
    assertThat(add("level", "station=kettle", "level_down_mm=120").number()).isEqualTo(2);
    assertThat(add("level", "station=pickle", "level_down_mm=50").number()).isEqualTo(3);
  }

  @Test
  void peopleMayBeAbsentFromALaterHourOn() throws IOException {
    String until = "until=tue 14:00";
    assertThat(add("absent", "station=booth", "factor=2", "from=tue 06:00", until).number())
        .isEqualTo(1);
    assertThat(log().get(0).figures().fromMin()).hasValue(1440 + 360);
    assertThat(refused("absent", "station=booth", "factor=2", "from=mon 06:59", until))
        .contains("from 'mon 06:59'", "before the event");
    assertThat(refused("absent", "station=booth", "factor=2", "from=tue 14:00", until))
        .contains("until 'tue 14:00'", "before 'from'");
  }
}
