package spangle.intake.read;

import static org.assertj.core.api.Assertions.assertThat;
import static spangle.intake.read.OtherLists.codes;
import static spangle.intake.read.OtherLists.parts;
import static spangle.intake.read.OtherLists.read;

import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import spangle.intake.problem.Problem;
import spangle.intake.week.PartLine;

/** Headings of shops that never saw this program: which column each means, and where it stands. */
class OtherPeoplesHeadingsTest {
  @TempDir Path folder;

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
  void aClearHeadingWinsOverAWeakOneAndItIsSaid() {
    WeekReader.Reading reading =
        read(
            folder,
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
            folder,
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

  @Test
  void aMassStandsInWhicheverColumnHasIt() {
    WeekReader.Reading reading =
        read(
            folder,
            "job,part,qty,material,thickness_mm,shape,weight kg,weight lb,route,finish,due\n"
                + "J-1,A,4,steel,3,plate 160x120 mm,,1,powder,P-GREY,fri\n");
    assertThat(parts(reading).get(0).body().massKg()).hasValue(0.45359237);
  }

  @Test
  void aTableWithoutNeededColumnsIsSaidOnceARow() {
    WeekReader.Reading reading =
        read(
            folder,
            "part,shape,finish,note\nA,plate 160x120 mm,P-GREY,x\nB,plate 160x120 mm,P-GREY,x\n");

    assertThat(reading.rows().refused()).isEqualTo(2);
    assertThat(reading.problems())
        .filteredOn(p -> p.code().key().equals("value-missing"))
        .extracting(Problem::why)
        .hasSize(2)
        .allMatch(why -> why.equals("missing: job, qty, material, thickness_mm, due"));
  }
}
