package spangle.intake.read;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import spangle.intake.week.PartLine;

class CsvJobsTest {
  @TempDir Path folder;

  private static PartLine last(WeekReader.Reading reading) {
    var jobs = reading.input().orElseThrow().jobs();
    var parts = jobs.get(jobs.size() - 1).parts();
    return parts.get(parts.size() - 1);
  }

  private static final String SEMICOLON =
      "Order list of the yard;;;;;;;;\r\n"
          + ";;;;;;;;\r\n"
          + "Auftrag;Teil;Menge;Werkstoff;Dicke mm;Abmessung;Verfahren;Farbe;Termin\r\n"
          + "\r\n"
          + "J-5;St\u00fctze;30;Stahl S235;2,5;plate 100x50 mm;powder;P-GREY;06.11.2026\r\n";

  @Test
  void semicolonDecimalCommaBlankRowsAndOwnWordsAreRead() {
    WeekFiles.sound(folder)
        .put(
            "jobs/b.csv", SEMICOLON.replace("Stahl S235", "S235").getBytes(StandardCharsets.UTF_8));

    WeekReader.Reading reading = WeekReader.read(folder);

    assertThat(reading.problems()).isEmpty();
    assertThat(last(reading).metal().thicknessMm()).isEqualTo(2.5);
    assertThat(last(reading).wanted().dueMin()).isEqualTo(5 * 1440);
    assertThat(last(reading).place().line()).isEqualTo(5);
  }

  @Test
  void latin1IsReadAndSaid() {
    WeekFiles.sound(folder)
        .put(
            "jobs/b.csv",
            SEMICOLON.replace("Stahl S235", "S235").getBytes(StandardCharsets.ISO_8859_1));

    WeekReader.Reading reading = WeekReader.read(folder);

    assertThat(reading.problems())
        .extracting(p -> p.code().key())
        .containsExactly("encoding-guessed");
    assertThat(last(reading).id()).isEqualTo("St\u00fctze");
  }

  @Test
  void byteOrderMarksOfUtf8AndUtf16AreTakenOff() {
    String text = WeekFiles.HEADING + WeekFiles.ROW;
    WeekFiles.sound(folder).put("jobs/a.csv", ("\uFEFF" + text).getBytes(StandardCharsets.UTF_8));
    assertThat(WeekReader.read(folder).problems()).isEmpty();

    WeekFiles.sound(folder)
        .put("jobs/a.csv", ("\uFEFF" + text).getBytes(StandardCharsets.UTF_16LE));
    assertThat(WeekReader.read(folder).problems()).isEmpty();
  }

  @Test
  void tabsAreFoundAndAQuotedCellMayHoldALineEnd() {
    String text = (WeekFiles.HEADING + WeekFiles.ROW).replace(',', '\t');
    WeekFiles.sound(folder)
        .put("jobs/a.csv", text.replace("\t\n", "\t\"two\nlines, \"\"big\"\"\"\n"));

    WeekReader.Reading reading = WeekReader.read(folder);

    assertThat(last(reading).note()).isEqualTo("two\nlines, \"big\"");
  }

  @Test
  void aQuoteThatNeverEndsTakesNoOtherRowWithIt() {
    WeekFiles.rows(
        folder,
        "J-1,\"Pilot House,LB-20,400,steel,3,plate 160x120 mm,,,powder,P-GREY,mon,wed,no,no,,,,",
        "J-2,Pilot House,LB-21,400,steel,3,plate 160x120 mm,,,powder,P-GREY,mon,wed,no,no,,,,");

    WeekReader.Reading reading = WeekReader.read(folder);

    assertThat(reading.rows().read()).isEqualTo(2);
    assertThat(reading.problems()).extracting(p -> p.code().key()).contains("quote-open");
    assertThat(reading.input().orElseThrow().jobs()).extracting("id").contains("J-2");
  }

  @Test
  void aDecimalCommaInACommaFileIsRefusedByItsExtraCell() {
    WeekFiles.rows(
        folder,
        "J-1,Pilot House,LB-20,400,steel,2,5,plate 160x120 mm,,,powder,P-GREY,mon,wed,no,no,,,,x");

    WeekReader.Reading reading = WeekReader.read(folder);

    assertThat(reading.rows().refused()).isEqualTo(1);
    assertThat(reading.problems()).extracting(p -> p.code().key()).contains("cell-without-column");
  }

  @Test
  void anUnknownColumnIsAskedAboutAndCanBeTaughtPerCustomer() {
    String text =
        "job,part,pcs ord'd,material,thickness_mm,shape,route,finish,due\n"
            + "J-5,A,30,steel,2,plate 100x50 mm,powder,P-GREY,fri\n";
    WeekFiles week = WeekFiles.sound(folder).put("jobs/pilot-house-44.csv", text);
    assertThat(week.inShort())
        .contains(
            "unknown-column jobs/pilot-house-44.csv:1:10 =pcs ord'd",
            "value-missing jobs/pilot-house-44.csv:2 qty=");

    week.put(
        "columns.yaml",
        "columns:\n  - files: \"pilot-house*.csv\"\n    names: {\"pcs ord'd\": qty}\n");
    assertThat(week.problems()).isEmpty();
    assertThat(last(week.read()).qty()).isEqualTo(30);
  }

  @Test
  void aTableWithoutHeadingsIsSaid() {
    assertThat(WeekFiles.sound(folder).put("jobs/b.csv", "1,2,3\n4,5,6\n").inShort())
        .containsExactly("no-heading jobs/b.csv =");
  }

  @ParameterizedTest
  @CsvSource({
    "thickness_mm, thickness_mm",
    "Thickness (mm), thickness_mm",
    "Thickness [in], thickness_in",
    "DICKE in mm, thickness_mm",
    "Thk, thickness",
    "Thickness (ga), gauge",
    "Weight (lb), mass_lb",
    "Qty., qty",
    "Qty (pcs), qty",
    "Finish (RAL), finish",
    "Due date, due",
    "Fläche m2, area_m2",
    "Order No, job",
  })
  void headingsAreKnownByTheirUsualNamesAndUnits(String heading, String key) {
    assertThat(JobColumns.key(heading, Map.of())).contains(key);
  }

  @ParameterizedTest
  @CsvSource({"Thickness (kg)", "weather", "''", "x y z"})
  void otherHeadingsAreNotGuessed(String heading) {
    assertThat(JobColumns.key(heading, Map.of())).isEmpty();
  }
}
