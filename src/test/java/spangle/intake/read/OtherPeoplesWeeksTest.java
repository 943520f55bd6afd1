package spangle.intake.read;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import spangle.intake.problem.Problem;
import spangle.intake.week.Job;
import spangle.intake.week.PartLine;
import spangle.intake.week.Route;
import spangle.part.Material;

/** Order lists of shops that never saw this program: their headings, words, dates and counts. */
class OtherPeoplesWeeksTest {
  private static final int DAY = 1440;

  @TempDir Path folder;

  private WeekReader.Reading read(String csv) {
    return WeekFiles.sound(folder).put("jobs/a.csv", csv).read();
  }

  private static List<PartLine> parts(WeekReader.Reading reading) {
    return reading.input().orElseThrow().jobs().stream()
        .map(Job::parts)
        .flatMap(List::stream)
        .toList();
  }

  private static List<String> codes(WeekReader.Reading reading) {
    return reading.problems().stream().map(p -> p.code().key() + " " + p.value()).toList();
  }

  private WeekReader.Reading due(String due) {
    return WeekFiles.rows(
            folder, "J-1,,A,4,steel,3,plate 160x120 mm,,,powder,P-GREY,,\"" + due + "\",no,no,,,,")
        .read();
  }

  private WeekReader.Reading qty(String qty) {
    return WeekFiles.rows(
            folder,
            "J-1,,A,\"" + qty + "\",steel,3,plate 160x120 mm,,,powder,P-GREY,,fri,no,no,,,,")
        .read();
  }

  @ParameterizedTest
  @CsvSource({
    "Order Ref, job",
    "W.O. No., job",
    "Works Order, job",
    "Job #, job",
    "PO Number, job",
    "Part Number, part",
    "P/N, part",
    "Dwg No, part",
    "Part Description, description",
    "Cust., customer",
    "Order Qty, qty",
    "Qty Req'd, qty",
    "No. Off, qty",
    "Qnty, qty",
    "Qty (pcs), qty",
    "Si (%), si_pct",
    "Matl, material",
    "Material Type, material",
    "Thk mm, thickness_mm",
    "Material Thickness (in), thickness_in",
    "Gauge, gauge",
    "Size, shape",
    "Surface Area (sq ft), area_sqft",
    "Area sq. m, area_sqm",
    "Area m2/pc, area_m2",
    "Wt (lbs), mass_lbs",
    "Unit Wt (kg ea), mass_kg",
    "Weight kg/pc, mass_kg",
    "Finish Type, route",
    "Colour, finish",
    "RAL No., finish",
    "Film (mils), film_mils",
    "Required Date, due",
    "Due Dt, due",
    "Need By, due",
    "Ship Date, due",
    "Date In, ready",
  })
  void headingsOfTheTradeAreKnown(String heading, String key) {
    assertThat(JobColumns.key(heading, Map.of())).contains(key);
  }

  /** What is of the whole job, or may mean two columns, is asked about. */
  @ParameterizedTest
  @CsvSource({
    "Total Weight (kg)",
    "Weight (total)",
    "Total Area m2",
    "Spec",
    "Date",
    "Price",
    "Qty (dozen)",
    "Qty (boxes)",
    "Number",
    "Rank",
    "Gauge (mm)",
    "SWG",
    "Si (ppm)"
  })
  void headingsThatMayMeanSomethingElseAreNotTaken(String heading) {
    assertThat(JobColumns.key(heading, Map.of())).isEmpty();
  }

  @Test
  void aListInTheWordsOfAnotherShopIsReadAndEveryReadingIsAsked() {
    WeekReader.Reading reading =
        read(
            """
            Weekly order sheet;;;;;;;;;;
            ;;;;;;;;;;
            Order Ref;Cust.;Part Number;Order Qty;Matl;Thk mm;Size;Coating;Colour;Required Date;Remarks
            4711;Pier Nine;BR-1;120;Mild Steel;3,0;plate 160 x 120 mm;Powder Coat;light grey;Wed 4 Nov;
            4712;Dock;GS-7;40;S235;6mm;plate 200x200 mm;Galv;;4.11.26;
            4713;Dock;PN-1;2 doz;CR4;1,5;plate 600x400 mm;powder coating;P-BLACK;Friday noon;edge
            """);

    assertThat(codes(reading))
        .containsExactlyInAnyOrder("finish-by-colour light grey", "steel-unknown ");
    PartLine bracket = parts(reading).get(0);
    assertThat(bracket.wanted().route()).isEqualTo(Route.POWDER);
    assertThat(bracket.wanted().finishes()).containsExactly("P-GREY");
    assertThat(bracket.wanted().dueMin()).isEqualTo(3 * DAY);
    assertThat(parts(reading).get(1).wanted().route()).isEqualTo(Route.ZINC);
    assertThat(parts(reading).get(1).wanted().dueMin()).isEqualTo(3 * DAY);
    PartLine panel = parts(reading).get(2);
    assertThat(panel.qty()).isEqualTo(24);
    assertThat(panel.metal().material()).isEqualTo(Material.STEEL);
    assertThat(panel.wanted().dueMin()).isEqualTo(4 * DAY + 720);
  }

  @Test
  void withoutARouteTheFinishSaysItAndIsAskedAbout() {
    WeekReader.Reading reading =
        read(
            "job,part,qty,material,thickness_mm,shape,finish,due\n"
                + "J-1,A,4,steel,3,plate 160x120 mm,P-GREY,fri\n"
                + "J-2,B,4,steel,3,plate 160x120 mm,L-EPOXY,fri\n"
                + "J-3,C,4,steel,3,plate 160x120 mm,Powder Coat,fri\n");

    assertThat(codes(reading))
        .containsExactlyInAnyOrder(
            "route-from-finish ",
            "route-from-finish ",
            "route-from-finish ",
            "finish-unknown Powder Coat");
    assertThat(parts(reading))
        .extracting(p -> p.wanted().route())
        .containsExactly(Route.POWDER, Route.LIQUID);
    assertThat(reading.rows().refused()).isEqualTo(1);
  }

  @ParameterizedTest
  @CsvSource({
    "Powder Coat, POWDER",
    "powder-coated, POWDER",
    "HDG, ZINC",
    "Hot Dip Galvanised, ZINC",
    "Galv., ZINC",
    "galv + powder, DUPLEX",
    "Galvanize and powder coat, DUPLEX",
    "Wet paint, LIQUID",
    "2 coat powder, TWO_COAT"
  })
  void waysAreKnownByTheirUsualWords(String words, Route route) {
    assertThat(RouteWords.find(words)).contains(route);
  }

  /** Plated zinc is not dipped; galvanneal is a sheet; paint may be powder or liquid. */
  @ParameterizedTest
  @CsvSource({"zinc plated", "galvanneal", "paint", "coated", "anodise", "electro galv"})
  void wordsThatMeanAnotherWayOrTwoAreNotTaken(String words) {
    assertThat(RouteWords.find(words)).isEmpty();
  }

  @Test
  void aClearHeadingWinsOverAWeakOneAndItIsSaid() {
    WeekReader.Reading reading =
        read(
            "Item,Job,Part No,Qty,Material,Thickness mm,Shape,Route,Finish,Due\n"
                + "1,J-1,BR-1,4,steel,3,plate 160x120 mm,powder,P-GREY,fri\n");

    assertThat(codes(reading)).containsExactly("column-twice Part No");
    assertThat(parts(reading).get(0).id()).isEqualTo("BR-1");
  }

  /** A printed list has its headings on every page; a second table may have another order. */
  @Test
  void headingsBelowHeadingsAreHeadings() {
    String headings = "job,part,qty,material,thickness_mm,shape,route,finish,due\n";
    WeekReader.Reading reading =
        read(
            headings
                + "J-1,A,4,steel,3,plate 160x120 mm,powder,P-GREY,fri\n"
                + headings
                + "J-1,B,4,steel,3,plate 160x120 mm,powder,P-GREY,fri\n\n"
                + "Part,Job,Qty,Material,Thickness mm,Shape,Route,Finish,Due\n"
                + "C,J-1,4,steel,3,plate 160x120 mm,powder,P-GREY,fri\n"
                + "Total,,12,,,,,,\n");

    assertThat(parts(reading)).extracting(PartLine::id).containsExactly("A", "B", "C");
    assertThat(reading.rows().read()).isEqualTo(4);
    assertThat(reading.rows().refused()).isEqualTo(1);
  }

  /** 2.8 mil is a film of 71 um; 2.8 um is none. Both readings are shown. */
  @Test
  void aFilmInMilsWithoutItsUnitIsRefusedWithBothReadings() {
    WeekReader.Reading reading =
        read(
            "job,part,qty,material,thickness_mm,shape,film_um,route,finish,due\n"
                + "J-1,A,4,steel,3,plate 160x120 mm,2.8,powder,P-GREY,fri\n");
    assertThat(codes(reading)).containsExactly("out-of-range 2.8");
    assertThat(reading.problems().get(0).why())
        .isEqualTo("as written it is 2.8 um; as mil it would be 71 um");
  }

  /** 1.250 x 600 of 3 mm sheet is 1250, or inches, or a slip: never a strip of 1.25 mm. */
  @Test
  void aSideUnderThreeThicknessesIsAskedAboutWithItsReadings() {
    String headings =
        "job,part,qty,material,thickness_mm,shape,mass_kg,length_mm,width_mm,height_mm,";
    WeekReader.Reading reading =
        read(
            headings
                + "route,finish,due\n"
                + "J-1,A,4,steel,3,plate 1.250x600 mm,,,,,powder,P-GREY,fri\n"
                + "J-1,B,4,steel,3,plate 9x600 mm,,,,,powder,P-GREY,fri\n"
                + "J-1,C,4,steel,3,blank 160x120 mm,,1.25,600,50,powder,P-GREY,fri\n"
                + "J-1,D,4,steel,3,bar 8x300 mm,,,,,powder,P-GREY,fri\n");
    assertThat(codes(reading))
        .containsExactlyInAnyOrder("unit-doubt plate 1.250x600 mm", "unit-doubt 1.25");
    assertThat(reading.problems())
        .filteredOn(p -> p.field().equals("shape"))
        .extracting(p -> p.why())
        .singleElement()
        .asString()
        .contains("1.25 mm is hardly more", "in inches it would be 31.8 mm", "thousands 1250 mm");
  }

  @Test
  void aMassStandsInWhicheverColumnHasIt() {
    WeekReader.Reading reading =
        read(
            "job,part,qty,material,thickness_mm,shape,weight kg,weight lb,route,finish,due\n"
                + "J-1,A,4,steel,3,plate 160x120 mm,,1,powder,P-GREY,fri\n");
    assertThat(parts(reading).get(0).body().massKg()).hasValue(0.45359237);
  }

  @Test
  void aTableWithoutNeededColumnsIsSaidOnceARow() {
    WeekReader.Reading reading =
        read("part,shape,finish,note\nA,plate 160x120 mm,P-GREY,x\nB,plate 160x120 mm,P-GREY,x\n");

    assertThat(reading.rows().refused()).isEqualTo(2);
    assertThat(reading.problems())
        .filteredOn(p -> p.code().key().equals("value-missing"))
        .extracting(Problem::why)
        .hasSize(2)
        .allMatch(why -> why.equals("missing: job, qty, material, thickness_mm, due"));
  }

  @ParameterizedTest
  @CsvSource({
    "Thu, 3",
    "Thursday, 3",
    "5 Nov, 3",
    "5th November 2026, 3",
    "Nov 5, 3",
    "'November 5, 2026', 3",
    "5-Nov-26, 3",
    "Thu 5 Nov, 3",
    "20261105, 3",
    "2026-11-05, 3",
    "05.11.2026, 3",
    "2 Jan, 61",
    "2026-11-05 00:00:00, 3"
  })
  void datesAsPeopleWriteThem(String written, int day) {
    assertThat(parts(due(written)).get(0).wanted().dueMin()).isEqualTo((day + 1) * DAY);
  }

  @ParameterizedTest
  @CsvSource({
    "Fri noon, 720",
    "Fri 2pm, 840",
    "Fri 2:30 p.m., 870",
    "6 Nov 7:30, 450",
    "06.11.2026 12 am, 0",
    "2026-11-06 4 PM, 960"
  })
  void hoursAsPeopleWriteThem(String written, int minute) {
    assertThat(parts(due(written)).get(0).wanted().dueMin()).isEqualTo(4 * DAY + minute);
  }

  /** The 6th of November 2026 is a Friday. */
  @ParameterizedTest
  @CsvSource({"Mon 6 Nov", "'Thursday, November 6, 2026'"})
  void aDayOfTheWeekThatDoesNotFitItsDateIsAsked(String written) {
    assertThat(codes(due(written))).containsExactly("date-two-ways " + written);
  }

  @ParameterizedTest
  @CsvSource({"Fri 6 Nov, 5", "29 Feb 2028, 485", "'Tue, 29 Feb 2028', 485"})
  void aDayOfTheWeekThatFitsAndALeapDayAreRead(String written, int day) {
    assertThat(parts(due(written)).get(0).wanted().dueMin()).isEqualTo(day * DAY);
  }

  @ParameterizedTest
  @CsvSource({"asap", "hot", "week 45", "31 Feb", "Nov", "Fri 25:00", "5 Nov or so"})
  void whatIsNoDateIsRefusedAndBearsNoDue(String written) {
    WeekReader.Reading reading = due(written);
    assertThat(reading.rows().refused()).isEqualTo(1);
    assertThat(reading.problems()).allMatch(p -> p.dueMin() == Problem.NO_DUE);
  }

  @ParameterizedTest
  @CsvSource({
    "12, 12",
    "12.0, 12",
    "2.0 dz, 24",
    "1\u202f200, 1200",
    "1'000 pcs, 1000",
    "25 pcs, 25",
    "30 off, 30",
    "8 ea, 8",
    "2 dz, 24",
    "'1,200', 1200",
    "1.250, 1250",
    "1 200, 1200",
    "'12,500 pcs', 12500"
  })
  void countsAsPeopleWriteThem(String written, int pieces) {
    assertThat(parts(qty(written)).get(0).qty()).isEqualTo(pieces);
  }

  /** 1,000 is a thousand, or one with three decimals, as some programs write it. */
  @ParameterizedTest
  @CsvSource({
    "'1,000'",
    "12.000",
    "1.250 dz",
    "'1,500 dozen'",
    "2 x 30",
    "1 lot",
    "2 sets",
    "3 pallets",
    "1.5",
    "'12,50'",
    "0",
    "-3"
  })
  void whatIsNoCountOrTwoIsRefused(String written) {
    assertThat(codes(qty(written))).containsExactly("not-a-count " + written);
  }

  @Test
  void twoReadingsOfACountAreShown() {
    assertThat(qty("12.000").problems())
        .extracting(Problem::why)
        .containsExactly("this may be 12 or 12000 pieces; nothing is assumed for it");
  }

  @Test
  void anInchValueInAGaugeColumnIsNoGauge() {
    WeekReader.Reading reading =
        read(
            "job,part,qty,material,gauge,shape,route,finish,due\n"
                + "J-1,A,4,steel,0.125,plate 160x120 mm,powder,P-GREY,fri\n");

    assertThat(reading.problems())
        .extracting(Problem::why)
        .containsExactly("'0.125' is no gauge number");
  }

  /** Found by chance bytes: an angle without length was an exception. */
  @ParameterizedTest
  @CsvSource({
    "'angle 40x40x0 mm'",
    "'channel 0x60x30x400 mm'",
    "'box 600x400x0 mm open front'",
    "'plate 0x120 mm'",
    "'tube 40x0x800 mm'",
    "'section SHS40x40x3 x 0 mm'",
    "'plate 160x120 mm holes 4x0'",
    "'plate 160x90000 mm'"
  })
  void aSizeNoPieceHasIsRefused(String shape) {
    WeekReader.Reading reading =
        WeekFiles.rows(folder, "J-1,,A,4,steel,3," + shape + ",,,powder,P-GREY,,fri,no,no,,,,")
            .read();
    assertThat(codes(reading)).containsExactly("shape-not-read " + shape);
  }
}
