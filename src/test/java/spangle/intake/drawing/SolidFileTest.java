package spangle.intake.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import spangle.intake.problem.Problem;
import spangle.intake.problem.ProblemCode;
import spangle.intake.problem.Problems;
import spangle.part.HollowKind;
import spangle.part.Solid;

/** Bodies with volumes and surfaces worked by hand; steel. */
class SolidFileTest {
  private static final Asked MM = Asked.of(1, 7850).in(DrawingUnit.MM);

  private final Problems problems = new Problems();

  private SolidRead read(byte[] bytes) {
    return SolidFile.read("body.stl", bytes, MM, problems).orElseThrow();
  }

  private Solid solid(byte[] bytes) {
    return read(bytes).shape().orElseThrow();
  }

  private List<String> said() {
    return problems.sorted().stream().map(p -> p.severity().word() + " " + p.code().key()).toList();
  }

  private String why(ProblemCode code) {
    return problems.list().stream()
        .filter(p -> p.code() == code)
        .map(Problem::why)
        .findFirst()
        .orElse("");
  }

  private static StlText box() {
    return new StlText().box(10, 20, 30, 100, 50, 20, true);
  }

  @Test
  void aBoxInBothKindsOfFile() {
    for (byte[] bytes : List.of(box().ascii(), box().binary(), box().shuffled(7).binary())) {
      Solid body = solid(bytes);
      assertThat(body.metalMm3()).isEqualTo(100_000, within(1e-6));
      assertThat(body.outerMm2()).isEqualTo(2 * (5000 + 2000 + 1000), within(1e-6));
      assertThat(body.envelopeMm().lengthMm()).isEqualTo(100, within(1e-9));
      assertThat(body.envelopeMm().heightMm()).isEqualTo(20, within(1e-9));
      assertThat(body.measure(7850).massKg()).isEqualTo(0.785, within(1e-9));
    }
    assertThat(problems.list()).isEmpty();
  }

  /** The same body twice doubles its figures; two that touch count the face between them. */
  @Test
  void bodiesThatTouchOrAreDrawnTwiceAreAskedAbout() {
    solid(box().box(10, 20, 30, 100, 50, 20, true).binary());
    assertThat(said()).containsExactly("ask drawing-doubt");
    assertThat(why(ProblemCode.DRAWING_DOUBT)).startsWith("18 edge(s) at which more than two");
    solid(box().box(110, 20, 30, 40, 50, 20, true).binary());
    assertThat(problems.list().get(1).why()).startsWith("5 edge(s) at which more than two");
  }

  @Test
  void aFineBallNearsTheRoundOne() {
    Solid ball = solid(new StlText().ball(50, 96).binary());
    assertThat(ball.metalMm3()).isEqualTo(4.0 / 3 * Math.PI * 125_000, within(1_200.0));
    assertThat(ball.outerMm2()).isEqualTo(Math.PI * 10_000, within(60.0));
    assertThat(ball.metalMm3()).isLessThan(4.0 / 3 * Math.PI * 125_000);
  }

  @Test
  void aClosedHollowIsDangerAndTakenOffTheMetal() {
    Solid body = solid(box().box(20, 30, 35, 60, 30, 10, false).binary());
    assertThat(body.metalMm3()).isEqualTo(100_000 - 18_000, within(1e-6));
    assertThat(body.voids()).isEqualTo(1);
    assertThat(body.voidMm2()).isEqualTo(2 * (1800 + 600 + 300), within(1e-6));
    assertThat(body.measure(7850).hollow()).isEqualTo(HollowKind.CLOSED);
    assertThat(body.measure(7850).enclosedVolumeL()).isEqualTo(0.018, within(1e-9));
    assertThat(said()).containsExactly("danger body-has-void");
  }

  @Test
  void aHollowThatFacesOutwardsCountsAsHollowAllTheSame() {
    assertThat(solid(box().box(20, 30, 35, 60, 30, 10, true).binary()).voids()).isEqualTo(1);
    assertThat(why(ProblemCode.BODY_HAS_VOID)).contains("may be metal");
  }

  @Test
  void aBodyInAHollowIsMetalAgain() {
    Solid body =
        solid(box().box(20, 30, 35, 60, 30, 10, false).box(30, 35, 37, 10, 10, 5, true).binary());
    assertThat(body.metalMm3()).isEqualTo(82_000 + 500, within(1e-6));
    assertThat(body.voidMm3()).isEqualTo(17_500, within(1e-6));
  }

  @Test
  void aBodyInsideOutIsTakenTheOtherWay() {
    Solid body = solid(new StlText().box(0, 0, 0, 100, 50, 20, false).binary());
    assertThat(body.metalMm3()).isEqualTo(100_000, within(1e-6));
    assertThat(said()).containsExactly("warn drawing-note");
  }

  @Test
  void aMissingTriangleMeansNoVolume() {
    SolidRead read = read(box().without(3).binary());
    assertThat(read.shape()).isEmpty();
    assertThat(read.facts().openEdges()).isEqualTo(3);
    assertThat(read.surfaceMm2()).isLessThan(16_000).isGreaterThan(13_000);
    assertThat(said()).containsExactly("ask body-not-closed");
  }

  @Test
  void aTriangleTheWrongWayRoundMeansNoVolume() {
    SolidRead read = read(box().turned(3).binary());
    assertThat(read.shape()).isEmpty();
    assertThat(read.facts().turnedEdges()).isEqualTo(3);
  }

  @Test
  void cornersAHairApartAreBroughtTogether() {
    StlText text = box().without(0);
    double h = 4e-5;
    text.facet(
        new double[] {10 + h, 20, 30},
        new double[] {10, 70 + h, 30},
        new double[] {110, 70, 30},
        true);
    Solid body = solid(text.ascii());
    assertThat(body.metalMm3()).isEqualTo(100_000, within(1.0));
    assertThat(said()).containsExactly("warn drawing-note");
  }

  @Test
  void trianglesWithoutAreaAreLeftOut() {
    double[] a = {10, 20, 30};
    double[] b = {110, 20, 30};
    assertThat(solid(box().facet(a, b, b, true).binary()).metalMm3())
        .isEqualTo(100_000, within(1e-6));
    assertThat(said()).containsExactly("warn drawing-note");
  }

  @Test
  void twoBodiesAreAskedAbout() {
    assertThat(solid(box().box(500, 0, 0, 10, 10, 10, true).binary()).metalMm3())
        .isEqualTo(101_000, within(1e-3));
    assertThat(said()).containsExactly("ask drawing-doubt");
  }

  @Test
  void withoutAUnitTheOnlyLikelyOneIsTakenAndBothAreShown() {
    Asked open = Asked.of(1, 7850);
    SolidRead read =
        SolidFile.read("body.stl", box().box(500, 0, 0, 1, 1, 1, true).binary(), open, problems)
            .orElseThrow();
    // 491 mm and 0.8 kg, or 12.5 m and 12.9 t: a shop may have either, so it is asked.
    assertThat(read.readings()).hasSize(2);
    assertThat(why(ProblemCode.DRAWING_UNIT)).contains("in millimetres", "in inches");
  }

  @Test
  void wrongCountsAndFilesCutOff() {
    byte[] whole = box().binary();
    assertThat(read(Arrays.copyOf(whole, whole.length - 60)).shape()).isEmpty();
    assertThat(why(ProblemCode.DRAWING_LEFT_OUT)).contains("states 12 triangles and holds 10");
  }

  @Test
  void moreStatedThanThere() {
    assertThat(solid(box().binary("head", 13)).metalMm3()).isEqualTo(100_000, within(1e-6));
    assertThat(said()).containsExactly("ask drawing-left-out");
  }

  @Test
  void anAsciiFileCutOff() {
    byte[] whole = box().ascii();
    assertThat(read(Arrays.copyOf(whole, whole.length - 200)).shape()).isEmpty();
    assertThat(why(ProblemCode.DRAWING_LEFT_OUT)).contains("cut off");
  }

  @Test
  void decimalCommasAndOtherLineEnds() {
    String text = new String(box().ascii(), StandardCharsets.UTF_8);
    byte[] commas = text.replace('.', ',').replace("\n", "\r\n").getBytes(StandardCharsets.UTF_8);
    assertThat(solid(commas).metalMm3()).isEqualTo(100_000, within(1e-6));
  }

  @Test
  void trianglesWithoutAreaAloneAreNoBody() {
    double[] a = {10, 20, 30};
    double[] b = {110, 20, 30};
    byte[] flat = new StlText().facet(a, b, b, true).binary();

    assertThat(SolidFile.read("body.stl", flat, MM, problems)).isEmpty();
    assertThat(why(ProblemCode.DRAWING_UNREADABLE)).contains("no triangle in it has an area");
  }

  @Test
  void numbersThatAreNoneLeaveTheirTriangleOut() {
    String text =
        new String(box().ascii(), StandardCharsets.UTF_8).replaceFirst("vertex \\S+", "vertex nan");
    assertThat(read(text.getBytes(StandardCharsets.UTF_8)).shape()).isEmpty();
    assertThat(why(ProblemCode.DRAWING_LEFT_OUT)).contains("1 triangle(s) with numbers");
  }

  @Test
  void whatIsNoBodyIsRefused() {
    for (byte[] bytes :
        List.of(
            new byte[0],
            "solid nothing\nendsolid\n".getBytes(StandardCharsets.UTF_8),
            new byte[84],
            "hello".getBytes(StandardCharsets.UTF_8))) {
      Problems own = new Problems();
      assertThat(SolidFile.read("body.stl", bytes, MM, own)).isEmpty();
      assertThat(own.list()).hasSize(1);
      assertThat(own.list().get(0).code()).isEqualTo(ProblemCode.DRAWING_UNREADABLE);
    }
  }
}
