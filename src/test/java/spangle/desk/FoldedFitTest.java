package spangle.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import spangle.fit.Verdict;
import spangle.intake.drawing.DxfText;
import spangle.intake.read.WeekFiles;
import spangle.part.BendAllowance;

/**
 * A bent sheet by its drawing: an angle with two legs of 2200 mm, 400 mm wide. Its box is 2200 mm
 * high at every tilt and the kettle less deep; on its fold, legs at 45 degrees, it is 2200 x 0.7071
 * = 1556 mm high and 2200 x 1.4142 = 3111 mm long.
 */
class FoldedFitTest {
  private static final String HEADING =
      "job,part,qty,material,thickness_mm,drawing,length_mm,width_mm,height_mm,route,finish,due,"
          + "welded,hollow,overlaps,pockets,soldered,certificate,si_pct,p_pct\n";

  @TempDir private Path folder;

  private PartFit fit(String size) {
    double half = BendAllowance.squareBendMm(2) / 2;
    double bend = 2200 + half;
    WeekFiles.sound(folder)
        .put(
            "jobs/a.csv",
            HEADING
                + "J-1,LB-20,1,steel,2,lb.dxf,"
                + size
                + ",zinc,,wed,no,no,no,no,no,C-1,0.02,0.01\n")
        .put(
            "jobs/lb.dxf",
            DxfText.mm()
                .rectangle(0, 0, 2 * bend, 400)
                .on("BEND_UP")
                .line(bend, 0, bend, 400)
                .on("NOTES")
                .text(bend + 2, 10, "UP 90%%d R2")
                .bytes());
    return FitDesk.part(folder, "J-1/LB-20").fit().orElseThrow();
  }

  @Test
  void aBentSheetIsJudgedByItsFoldedOutline() {
    PartFit fit = fit(",,");
    assertThat(fit.answer().verdict()).isEqualTo(Verdict.TILTED);
    assertThat(fit.answer().whole().orElseThrow().windowsDeg())
        .anyMatch(window -> window.min() < 45 && window.max() > 45);
  }

  @Test
  void aSizeInTheRowCountsBeforeTheDrawing() {
    assertThat(fit("2200,2200,400").answer().verdict()).isNotIn(Verdict.STRAIGHT, Verdict.TILTED);
  }
}
