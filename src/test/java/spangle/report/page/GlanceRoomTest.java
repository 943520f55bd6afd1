package spangle.report.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;
import spangle.report.week.Answer;

/** Heights by hand: 30 pt around, 17.5 pt a line of the answer, 13.4 pt a line of a detail. */
class GlanceRoomTest {
  private static final String LONG =
      "H-203 service pedestal frame, closed tube: a hollow without vent and drain holes on record explodes in molten zinc";

  private static Answer answer(String words, List<String> details) {
    return new Answer(4, "vent holes", "Where must vent holes be seen?", words, details, true);
  }

  /** 120 - 30 - 17.5 leaves 72.5 pt: five lines, two details of two lines and one for the rest. */
  @Test
  void longDetailsAreCutToTwoLinesAndTheRestIsCounted() {
    List<String> shown =
        new GlanceRoom(120).details(answer("6 parts held", Collections.nCopies(9, LONG)));

    assertThat(shown).hasSize(2);
    assertThat(shown)
        .allSatisfy(d -> assertThat(GlanceRoom.lines(d, 39)).isLessThanOrEqualTo(2))
        .allSatisfy(d -> assertThat(d).endsWith("..."));
  }

  @Test
  void shortDetailsAllStandThere() {
    List<String> five = List.of("one", "two", "three", "four", "five");
    assertThat(new GlanceRoom(120).details(answer("nothing", five))).isEqualTo(five);
    assertThat(new GlanceRoom(120).details(answer("nothing", Collections.nCopies(6, "one"))))
        .hasSize(4);
  }

  /** An answer of two lines takes the room of a detail line and more. */
  @Test
  void aLongAnswerLeavesLessRoom() {
    String two = "two look at Z01, Z02, Z03 and more";
    assertThat(GlanceRoom.lines(two, 25)).isEqualTo(2);
    assertThat(new GlanceRoom(100).details(answer(two, Collections.nCopies(9, LONG)))).hasSize(1);
  }

  @Test
  void linesBreakAtBlanks() {
    assertThat(GlanceRoom.lines("", 10)).isEqualTo(1);
    assertThat(GlanceRoom.lines("1234567890", 10)).isEqualTo(1);
    assertThat(GlanceRoom.lines("12345 67890", 10)).isEqualTo(2);
    assertThat(GlanceRoom.lines("a 123456789012345678901", 10)).isEqualTo(4);
  }
}
