package spangle.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import spangle.WeekCopy;
import spangle.intake.brief.BriefMaker;
import spangle.intake.brief.PreparedWeek;
import spangle.intake.read.WeekReader;
import spangle.plan.Held;
import spangle.plan.Lot;

/**
 * The tall cabinet of the harbour week goes in tilted, so it travels alone, on a beam named for it
 * where one is named. A beam that is away for stripping is none.
 */
class NamedCarriersTest {
  private static final String BEAMS = "{id: beam, profile: dip-beam, owned: 3}";

  @TempDir Path folder;

  private PreparedWeek week(String carriers, String beams) throws IOException {
    WeekCopy.unplanned(Path.of("samples/harbour-week"), folder.resolve("week"));
    Path week = folder.resolve("week");
    change(week.resolve("shop.yaml"), BEAMS, beams);
    change(
        week.resolve("jobs/enclosures.yaml"),
        "description: tall hose cabinet",
        "description: tall hose cabinet\n        carriers: " + carriers);
    return BriefMaker.prepare(WeekReader.read(week).input().orElseThrow());
  }

  private static void change(Path file, String was, String is) throws IOException {
    String text = Files.readString(file);
    assertThat(text).contains(was);
    Files.writeString(file, text.replace(was, is));
  }

  private static List<Lot> cabinets(PreparedWeek week) {
    return week.brief().lots().stream().filter(l -> l.partId().equals("HC-42")).toList();
  }

  @Test
  void whatTravelsAloneTakesTheNamedBeamOnly() throws IOException {
    assertThat(cabinets(week("beam", BEAMS)))
        .hasSize(3)
        .allSatisfy(l -> assertThat(l.carriers()).containsExactly("beam"));
  }

  @Test
  void anyBeamWhereNoneIsNamedButNoneThatIsAway() throws IOException {
    assertThat(cabinets(week("\"\"", "{id: beam, profile: dip-beam, owned: 3, in_strip: 3}")))
        .hasSize(3)
        .allSatisfy(l -> assertThat(l.carriers()).containsExactly("long-beam"));
  }

  @Test
  void whereAllNamedBeamsAreAwayItIsHeldAndTheyAreNamed() throws IOException {
    PreparedWeek week = week("beam", "{id: beam, profile: dip-beam, owned: 3, in_strip: 3}");
    assertThat(cabinets(week)).isEmpty();
    assertThat(week.held())
        .filteredOn(h -> h.partId().equals("HC-42"))
        .singleElement()
        .extracting(Held::words)
        .asString()
        .startsWith("no carrier of the Kettle line that is named for it (beam) holds a piece of");
  }
}
