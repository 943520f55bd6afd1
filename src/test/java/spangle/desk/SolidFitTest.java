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

  private static final int[][] CAP = {{0, 1, 3}, {1, 2, 3}, {0, 3, 5}, {3, 4, 5}};

  @TempDir private Path folder;

  /** Two equal legs, so thick and so wide. */
  private static String angle(int leg, int thick, int wide) {
    int[][] outline = {{0, 0}, {leg, 0}, {leg, thick}, {thick, thick}, {thick, leg}, {0, leg}};
    StringBuilder stl = new StringBuilder("solid angle\n");
    for (int[] t : CAP) {
      facet(stl, at(outline[t[0]], wide), at(outline[t[1]], wide), at(outline[t[2]], wide));
      facet(stl, at(outline[t[2]], 0), at(outline[t[1]], 0), at(outline[t[0]], 0));
    }
    for (int i = 0; i < outline.length; i++) {
      int[] one = outline[i];
      int[] next = outline[(i + 1) % outline.length];
      facet(stl, at(one, 0), at(next, 0), at(next, wide));
      facet(stl, at(one, 0), at(next, wide), at(one, wide));
    }
    return stl.append("endsolid angle\n").toString();
  }

  private static String at(int[] corner, int z) {
    return String.format(Locale.ROOT, "%d %d %d", corner[0], corner[1], z);
  }

  private static void facet(StringBuilder stl, String... corners) {
    stl.append("facet normal 0 0 0\nouter loop\n");
    for (String corner : corners) {
      stl.append("vertex ").append(corner).append('\n');
    }
    stl.append("endloop\nendfacet\n");
  }

  private PartFit fit(String size) {
    return fit(size, 10, angle(2200, 10, 400));
  }

  private PartFit fit(String size, int thick, String stl) {
    WeekFiles.sound(folder)
        .put(
            "jobs/a.csv",
            HEADING
                + "J-1,AN-1,1,steel,"
                + thick
                + ",an.stl,mm,"
                + size
                + ",zinc,,wed,no,no,no,no,no,no,C-1,0.02,0.01\n")
        .put("jobs/an.stl", stl);
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

  /**
   * Legs of 1300 mm, 2000 mm wide: no side is as short as the kettle is wide (1150 mm), and its box
   * rolled is wider still, 1300 (cos r + sin r). Rolled until the legs stand at 45 degrees it is
   * (1300 + 5) x 0.7071 = 923 mm across at most and 1300 x 1.4142 = 1838 mm high; the kettle is
   * 1900 mm deep.
   */
  @Test
  void aBodyIsRolledByItsOutline() {
    PartFit fit = fit(",,", 5, angle(1300, 5, 2000));
    assertThat(fit.answer().verdict()).isEqualTo(Verdict.TILTED);
    assertThat(fit.answer().rollDeg().orElseThrow().min()).isLessThan(45);
    assertThat(fit.answer().rollDeg().orElseThrow().max()).isGreaterThan(45);
    assertThat(fit.answer().margin().widthMm()).isGreaterThan(200);

    assertThat(fit("1300,1300,2000", 5, angle(1300, 5, 2000)).answer().verdict())
        .isNotIn(Verdict.STRAIGHT, Verdict.TILTED);
  }
}
