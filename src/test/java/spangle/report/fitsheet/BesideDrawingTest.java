package spangle.report.fitsheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import spangle.fit.FitAnswer;
import spangle.fit.FitRequest;
import spangle.fit.FitRules;
import spangle.fit.KettleFit;
import spangle.fit.UsableSpace;
import spangle.measure.Box;

/** The drawing for half a sheet says in words what it leaves out as a view. */
class BesideDrawingTest {
  private static final UsableSpace KETTLE = UsableSpace.of("kettle", 4000, 1000, 2000);

  private static String beside(FitAnswer answer) {
    return KettleDrawing.beside(answer, Optional.empty(), List.of());
  }

  private static FitAnswer fit(double l, double w, double h) {
    return KettleFit.answer(FitRequest.of(new Box(l, w, h)), KETTLE);
  }

  /**
   * 200 x 250 x 8, the 8 across, hung at the middle of 10 to 45 degrees: along 250 cos 27.5 + 200
   * sin 27.5 = 314.1, upright 250 sin 27.5 + 200 cos 27.5 = 292.8. Whole mm to spare, rounded down.
   */
  @Test
  void aSmallPartHasItsAngleAndWhatIsToSpareInWords() {
    String svg = beside(fit(250, 8, 200));
    assertThat(svg)
        .contains(">27.5\u00b0<", "one piece, hang at 27.5\u00b0", "usable 4000 x 1000 x 2000")
        .contains("to spare 3685 x 992 x 1707")
        .doesNotContain("from the end", "hook", "MISSING");
  }

  /** The other views are needed where it is dipped twice or does not go in. */
  @Test
  void twoDipsAndNoKeepAllViews() {
    FitAnswer twice = fit(3900, 2600, 500);
    assertThat(beside(twice)).contains("first dip", "second dip", "from the end");
    assertThat(beside(fit(9000, 1500, 1500))).contains("from the end", "MISSING");
  }

  /** A room is no kettle: nothing hangs and nothing drains there. */
  @Test
  void aRoomKeepsItsOwnDrawing() {
    FitAnswer room =
        KettleFit.room(FitRequest.of(new Box(300, 200, 100)).withRules(FitRules.ROOM), KETTLE);
    assertThat(beside(room)).contains("(room, door)").doesNotContain("one piece");
  }
}
