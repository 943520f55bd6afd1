package spangle.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import spangle.fit.Verdict;
import spangle.intake.read.WeekFiles;

/**
 * A body of triangles: an angle of two legs of 2200 x 10 mm, 400 mm wide. Its box is as high as the
 * kettle is not deep at every tilt; on its edge, legs at 45 degrees, it is (2200 + 10) x 0.7071 =
 * 1563 mm high and 3111 mm long.
 */
class SolidFitTest {
  private static final String HEADING =
      "job,part,qty,material,thickness_mm,drawing,drawing_unit,length_mm,width_mm,height_mm,route,"
          + "finish,due,welded,hollow,overlaps,pockets,soldered,moving_parts,certificate,si_pct,"
          + "p_pct\n";

  private static final double[][] OUTLINE = {
    {0, 0}, {2200, 0}, {2200, 10}, {10, 10}, {10, 2200}, {0, 2200}
  };
  private static final int[][] CAP = {{0, 1, 3}, {1, 2, 3}, {0, 3, 5}, {3, 4, 5}};

  @TempDir private Path folder;

  private static String angle() {
    StringBuilder stl = new StringBuilder("solid angle\n");
    for (int[] t : CAP) {
      facet(stl, at(t[0], 400), at(t[1], 400), at(t[2], 400));
      facet(stl, at(t[2], 0), at(t[1], 0), at(t[0], 0));
    }
    for (int i = 0; i < OUTLINE.length; i++) {
      int next = (i + 1) % OUTLINE.length;
      facet(stl, at(i, 0), at(next, 0), at(next, 400));
      facet(stl, at(i, 0), at(next, 400), at(i, 400));
    }
    return stl.append("endsolid angle\n").toString();
  }

  private static String at(int corner, int z) {
    return String.format(Locale.ROOT, "%s %s %d", OUTLINE[corner][0], OUTLINE[corner][1], z);
  }

  private static void facet(StringBuilder stl, String... corners) {
    stl.append("facet normal 0 0 0\nouter loop\n");
    for (String corner : corners) {
      stl.append("vertex ").append(corner).append('\n');
    }
    stl.append("endloop\nendfacet\n");
  }

  private PartFit fit(String size) {
    WeekFiles.sound(folder)
        .put(
            "jobs/a.csv",
            HEADING
                + "J-1,AN-1,1,steel,10,an.stl,mm,"
                + size
                + ",zinc,,wed,no,no,no,no,no,no,C-1,0.02,0.01\n")
        .put("jobs/an.stl", angle());
    return FitDesk.part(folder, "J-1/AN-1").fit().orElseThrow();
  }

  @Test
  void aBodyIsJudgedByItsOutline() {
    PartFit fit = fit(",,");
    assertThat(fit.answer().verdict()).isEqualTo(Verdict.TILTED);
    assertThat(fit.answer().whole().orElseThrow().windowsDeg())
        .anyMatch(window -> window.min() < 45 && window.max() > 45);
    assertThat(fit.answer().acrossMm()).isEqualTo(400);
  }

  @Test
  void aSizeInTheRowCountsBeforeTheBody() {
    assertThat(fit("2200,2200,400").answer().verdict()).isNotIn(Verdict.STRAIGHT, Verdict.TILTED);
  }
}
