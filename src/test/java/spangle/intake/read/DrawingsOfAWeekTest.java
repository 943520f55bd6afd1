package spangle.intake.read;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import spangle.desk.CheckDesk;
import spangle.intake.drawing.DxfText;
import spangle.intake.drawing.StlText;
import spangle.intake.problem.Problem;
import spangle.intake.week.PartLine;
import spangle.intake.week.PieceFigures;

/** Drawings beside job files: what a row takes from them, and what it asks. */
class DrawingsOfAWeekTest {
  private static final String HEADING =
      "job,part,qty,material,thickness_mm,drawing,drawing_unit,area_m2,mass_kg,length_mm,width_mm,"
          + "height_mm,route,finish,due,welded,hollow,overlaps,pockets,soldered,certificate,"
          + "si_pct,p_pct\n";

  @TempDir private Path folder;

  private WeekFiles week(String cells, String route) {
    String tail = route.equals("zinc") ? "zinc,,wed" : "powder,P-GREY,wed";
    return WeekFiles.sound(folder)
        .put(
            "jobs/a.csv",
            HEADING
                + "J-1,LB-20,40,steel,2,"
                + cells
                + ","
                + tail
                + ",no,no,no,no,no,C-1,0.02,0.01\n");
  }

  private static PieceFigures figures(WeekFiles week) {
    PartLine line = line(week).orElseThrow();
    return PieceFigures.of(line.metal(), line.body()).orElseThrow();
  }

  private static Optional<PartLine> line(WeekFiles week) {
    return week.read().input().orElseThrow().jobs().stream()
        .flatMap(j -> j.parts().stream())
        .findFirst();
  }

  private static List<String> said(WeekFiles week) {
    return CheckDesk.check(week.folder()).problems().stream()
        .map(p -> p.severity().word() + " " + p.code().key())
        .toList();
  }

  @Test
  void areaMassAndSizeComeFromTheDrawing() {
    WeekFiles week =
        week("lb.dxf,,,,,,", "powder")
            .put("jobs/lb.dxf", DxfText.mm().rectangle(0, 0, 160, 120).circle(30, 30, 5.5).bytes());
    double net = 19200 - 30.25 * Math.PI;
    double edge = 560 + 11 * Math.PI;
    PieceFigures figures = figures(week);
    assertThat(figures.areaM2()).isEqualTo((2 * net + 2 * edge) / 1e6, within(1e-12));
    assertThat(figures.massKg()).isEqualTo(net * 2 * 7850e-9, within(1e-12));
    assertThat(figures.sizeMm().lengthMm()).isEqualTo(160, within(1e-9));
    assertThat(week.problems()).isEmpty();
    assertThat(week.read().digests()).containsKey("jobs/lb.dxf");
  }

  @Test
  void theDrawingIsKeptAsAPictureEvenWhereItsOutlineIsOpen() {
    WeekFiles week = week("lb.dxf,,,,,,", "powder");
    week.put("jobs/lb.dxf", DxfText.mm().rectangle(0, 0, 160, 120).circle(30, 30, 5.5).bytes());
    assertThat(line(week).orElseThrow().body().picture()).startsWith("<svg").endsWith("</svg>");

    week.put("jobs/lb.dxf", DxfText.mm().rectangle(0, 0, 160, 120).line(20, 20, 60, 25).bytes());
    assertThat(said(week)).contains("ask drawing-open");
    assertThat(line(week).orElseThrow().body().picture()).startsWith("<svg").contains(">1<");
  }

  @Test
  void aDrawingOutsideTheFolderIsNotOpened(@TempDir Path outside) throws IOException {
    Path elsewhere = outside.resolve("lb.dxf");
    Files.write(elsewhere, DxfText.mm().rectangle(0, 0, 160, 120).bytes());
    WeekFiles week = week("lb.dxf,,,,,,", "powder");
    Files.createSymbolicLink(folder.resolve("jobs/lb.dxf"), elsewhere);
    assertThat(said(week)).contains("refused path-outside");
    assertThat(line(week)).isEmpty();
    assertThat(week.read().digests()).doesNotContainKey("jobs/lb.dxf");
  }

  @Test
  void aNameThatClimbsIsRefused() {
    for (String name : List.of("../shop.yaml", "..\\x.dxf", "/etc/passwd", "a/b.dxf")) {
      assertThat(said(week(name + ",,,,,,", "powder"))).contains("refused path-outside");
    }
  }

  @Test
  void aMissingDrawingIsNamed() {
    assertThat(said(week("lb.dxf,,,,,,", "powder")))
        .containsExactlyInAnyOrder("ask drawing-missing", "refused size-missing");
  }

  @Test
  void withoutAUnitTheRowWaitsUntilItIsSaid() {
    byte[] open = DxfText.withoutUnit().rectangle(0, 0, 50, 30).bytes();
    WeekFiles week = week("lb.dxf,,,,,,", "powder").put("jobs/lb.dxf", open);
    List<Problem> problems = CheckDesk.check(folder).problems();
    assertThat(problems).hasSize(1);
    assertThat(problems.get(0).ask()).isEqualTo("J-1/LB-20/drawing_unit");
    assertThat(problems.get(0).why()).contains("50 x 30", "1270 x 762");
    week.put(
        "answers.yaml",
        "answers:\n  - {ask: J-1/LB-20/drawing_unit, was: \"\", answer: in, by: desk}\n");
    assertThat(said(week)).isEmpty();
    assertThat(figures(week).sizeMm().lengthMm()).isEqualTo(1270, within(1e-9));
  }

  @Test
  void aMassInTheRowSettlesTheUnit() {
    byte[] open = DxfText.withoutUnit().rectangle(0, 0, 50, 30).bytes();
    // 50 x 30 mm of 2 mm steel: 0.02355 kg.
    WeekFiles week = week("lb.dxf,,,0.0236,,,", "powder").put("jobs/lb.dxf", open);
    assertThat(said(week)).containsExactly("warn drawing-note");
  }

  @Test
  void inchesCalledMillimetresClashWithTheMass() {
    double in = 1 / 25.4;
    WeekFiles week =
        week("lb.dxf,,,1.5,,,", "powder")
            .put("jobs/lb.dxf", DxfText.mm().rectangle(0, 0, 400 * in, 240 * in).bytes());
    // 400 x 240 x 2 mm weigh 1.507 kg; the file says 15.7 x 9.4 mm.
    assertThat(said(week)).containsExactly("ask unit-doubt");
    assertThat(week.problems().get(0).why()).contains("the lengths are in inches", "400 x 240");
  }

  @Test
  void aBentPartIsAskedForItsSizeOnce() {
    byte[] bent = DxfText.mm().rectangle(0, 0, 80, 40).on("BEND").line(30, 0, 30, 40).bytes();
    WeekFiles week = week("lb.dxf,,,,,,", "powder").put("jobs/lb.dxf", bent);
    assertThat(said(week)).containsExactly("ask folded-size-missing");
    week("lb.dxf,,,,50,40,32", "powder");
    assertThat(said(week)).isEmpty();
    assertThat(figures(week).sizeMm().heightMm()).isEqualTo(32);
  }

  @Test
  void anOpenOutlineWaitsUntilSomebodySaysKeep() {
    byte[] open =
        DxfText.mm()
            .line(2, 0, 100, 0)
            .line(100, 0, 100, 50)
            .line(100, 50, 0, 50)
            .line(0, 50, 0, 0)
            .bytes();
    WeekFiles week = week("lb.dxf,,,,,,", "powder").put("jobs/lb.dxf", open);
    assertThat(said(week)).containsExactly("ask drawing-open");
    week.put(
        "answers.yaml",
        "answers:\n  - {ask: J-1/LB-20/drawing, was: lb.dxf, answer: keep, by: desk}\n");
    assertThat(said(week)).isEmpty();
  }

  @Test
  void aDrawingNobodyNeedsStopsNothing() {
    WeekFiles week = week("lb.dxf,,0.04,0.3,160,120,2", "powder").put("jobs/lb.dxf", "nonsense");
    assertThat(said(week)).containsExactly("ask drawing-unreadable");
    assertThat(line(week)).isPresent();
  }

  @Test
  void aDrawingThatIsNeededAndCannotBeReadRefusesTheRow() {
    WeekFiles week = week("lb.dxf,,,,,,", "powder").put("jobs/lb.dxf", "nonsense");
    assertThat(said(week)).containsExactly("refused drawing-unreadable");
    assertThat(week.read().rows().refused()).isEqualTo(1);
  }

  @Test
  void aBodyWithAClosedHollowIsShutOutOfTheKettle() {
    byte[] hollow =
        new StlText().box(0, 0, 0, 200, 100, 60, true).box(5, 5, 5, 190, 90, 50, false).binary();
    WeekFiles week = week("lb.stl,mm,,,,,", "zinc").put("jobs/lb.stl", hollow);
    assertThat(said(week)).contains("danger hollow-closed");
    assertThat(said(week("lb.stl,mm,,,,,", "powder"))).doesNotContain("danger hollow-closed");
  }

  @Test
  void aSolidBodyIsPlannedByItsVolume() {
    byte[] block = new StlText().box(0, 0, 0, 200, 100, 60, true).ascii();
    WeekFiles week = week("lb.stl,mm,,,,,", "powder").put("jobs/lb.stl", block);
    assertThat(figures(week).massKg()).isEqualTo(1.2e6 * 7850e-9, within(1e-9));
    assertThat(figures(week).areaM2()).isEqualTo(0.076, within(1e-12));
  }

  @Test
  void anUnknownUnitIsRefused() {
    WeekFiles week =
        week("lb.dxf,furlong,,,,,", "powder")
            .put("jobs/lb.dxf", DxfText.mm().rectangle(0, 0, 160, 120).bytes());
    assertThat(said(week)).contains("refused unknown-word");
  }

  @Test
  void otherDrawingsAreNotOpened() {
    WeekFiles week = week("lb.pdf,,0.04,0.3,160,120,2", "powder").put("jobs/lb.pdf", "%PDF");
    assertThat(said(week)).containsExactly("warn file-not-read");
  }
}
