package spangle.intake.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import spangle.intake.problem.Problem;
import spangle.intake.problem.ProblemCode;
import spangle.intake.problem.Problems;
import spangle.part.FlatPattern;

/** A drawing read as part.dxf, and what was said of it; sheet 2 mm, steel. */
abstract class FlatReading {
  static final Asked STEEL = Asked.of(2, 7850);

  final Problems problems = new Problems();

  FlatRead read(byte[] bytes, Asked asked) {
    return FlatFile.read("part.dxf", bytes, asked, problems).orElseThrow();
  }

  FlatPattern shape(DxfText text) {
    return shape(text.bytes());
  }

  FlatPattern shape(byte[] bytes) {
    return read(bytes, STEEL).shape().orElseThrow();
  }

  List<String> said() {
    return problems.sorted().stream().map(p -> p.severity().word() + " " + p.code().key()).toList();
  }

  String why(ProblemCode code) {
    return problems.list().stream()
        .filter(p -> p.code() == code)
        .map(Problem::why)
        .findFirst()
        .orElse("");
  }

  void refused(byte[] bytes, ProblemCode code, String words) {
    assertThat(FlatFile.read("part.dxf", bytes, STEEL, problems).flatMap(FlatRead::shape))
        .isEmpty();
    assertThat(why(code)).contains(words);
  }
}
