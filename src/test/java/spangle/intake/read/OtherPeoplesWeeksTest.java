package spangle.intake.read;

import static org.assertj.core.api.Assertions.assertThat;
import static spangle.intake.read.OtherLists.DAY;
import static spangle.intake.read.OtherLists.codes;
import static spangle.intake.read.OtherLists.parts;
import static spangle.intake.read.OtherLists.read;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import spangle.intake.problem.Problem;
import spangle.intake.week.PartLine;
import spangle.intake.week.Route;
import spangle.part.Material;

/**
 * Order lists of shops that never saw this program: their words for material, way, film and size.
 */
class OtherPeoplesWeeksTest {
  @TempDir Path folder;

  @Test
  void aListInTheWordsOfAnotherShopIsReadAndEveryReadingIsAsked() {
    WeekReader.Reading reading =
        read(
            folder,
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
            folder,
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

  /** 2.8 mil is a film of 71 um; 2.8 um is none. Both readings are shown. */
  @Test
  void aFilmInMilsWithoutItsUnitIsRefusedWithBothReadings() {
    WeekReader.Reading reading =
        read(
            folder,
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
            folder,
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
  void anInchValueInAGaugeColumnIsNoGauge() {
    WeekReader.Reading reading =
        read(
            folder,
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
