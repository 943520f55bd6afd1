package spangle.intake.drawing;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import spangle.intake.problem.Place;
import spangle.intake.problem.ProblemCode;
import spangle.intake.problem.Problems;
import spangle.measure.Figures;
import spangle.part.flat.Contour;
import spangle.part.flat.Defect;
import spangle.part.flat.FlatLayout;

/** Puts what is odd in a layout into words; the numbers are those in the picture. */
final class DefectWords {
  private final FlatLayout layout;
  private final String file;
  private final Problems problems;
  private final Map<Defect.Kind, Integer> said = new EnumMap<>(Defect.Kind.class);

  private DefectWords(FlatLayout layout, String file, Problems problems) {
    this.layout = layout;
    this.file = file;
    this.problems = problems;
  }

  static void say(FlatLayout layout, String file, Problems problems) {
    DefectWords words = new DefectWords(layout, file, problems);
    List<Defect> defects = layout.defects();
    for (int i = 0; i < defects.size(); i++) {
      words.say(defects.get(i), i + 1);
    }
    words.said.forEach(words::more);
  }

  private void say(Defect defect, int number) {
    int count = said.merge(defect.kind(), 1, Integer::sum);
    if (count > DrawingLimits.LISTED) {
      return;
    }
    String where = " (" + number + " in the picture) near " + at(defect) + " mm: " + defect.label();
    String size = Figures.significant(defect.sizeMm(), 3) + " mm";
    switch (defect.kind()) {
      case OPEN_CLOSED_FOR_NOW ->
          ask(
              ProblemCode.DRAWING_OPEN,
              "a contour lacks " + size + "; closed straight to reckon with" + where,
              "close it in the drawing");
      case OPEN ->
          ask(
              ProblemCode.DRAWING_OPEN,
              "a line to be cut closes nothing and is not counted; its ends are "
                  + size
                  + " apart"
                  + where,
              "close it, put it on a layer for bends or marks, or take it out");
      case GAP ->
          note(
              "a gap of " + size + " was closed" + where,
              "nothing, unless two parts should not meet there");
      case DOUBLED ->
          ask(
              ProblemCode.DRAWING_DOUBT,
              "a line of "
                  + size
                  + " lies on another; counted once, but it would be cut twice"
                  + where,
              "take one of the two out");
      case CROSSING ->
          gate(
              "a contour crosses itself or another, so that its inside is not clear" + where,
              "draw it again");
      case BRANCH ->
          ask(
              ProblemCode.DRAWING_DOUBT,
              "more than two lines meet; the outer boundary was followed" + where,
              "look at the picture; put bend lines on a layer of their own");
      case BEND_ON_CUT ->
          ask(
              ProblemCode.DRAWING_DOUBT,
              "a straight line right across is read as a bend line, not as a cut" + where,
              "put bend lines on a layer of their own");
      case SEVERAL_PARTS ->
          gate(
              layout.outers().size()
                  + " outlines side by side: all together "
                  + m2(layout.netAreaMm2())
                  + " net, the largest outline alone "
                  + m2(layout.outers().get(0).areaMm2())
                  + where,
              "one part to a drawing; answer keep if all belong to one piece");
      case ISLAND -> gate(island() + where, "take the frame off, or keep if it is right so");
    }
  }

  private String island() {
    double inside = layout.islands().stream().mapToDouble(Contour::areaMm2).sum();
    return layout.islands().size()
        + " contour(s) inside a hole, "
        + m2(inside)
        + ": a frame round the part, or a part in the scrap; reckoned as sheet: "
        + m2(layout.netAreaMm2())
        + " net in all";
  }

  private static String m2(double mm2) {
    return Figures.significant(mm2 / 1e6, 4) + " m2";
  }

  private static String at(Defect defect) {
    return Figures.upTo(defect.at().x(), 1) + ", " + Figures.upTo(defect.at().y(), 1);
  }

  private void more(Defect.Kind kind, int count) {
    int left = count - DrawingLimits.LISTED;
    if (left > 0) {
      boolean small = kind == Defect.Kind.GAP;
      problems.add(
          small ? ProblemCode.DRAWING_NOTE : ProblemCode.DRAWING_DOUBT,
          Place.file(file),
          "drawing",
          "",
          "",
          "and " + left + " more like the last " + DrawingLimits.LISTED + " of this kind",
          "look at the picture");
    }
  }

  private void ask(ProblemCode code, String why, String remedy) {
    problems.add(code, Place.file(file), "drawing", "", "", why, remedy);
  }

  private void note(String why, String remedy) {
    ask(ProblemCode.DRAWING_NOTE, why, remedy);
  }

  private void gate(String why, String remedy) {
    problems.add(DrawingDoubt.of(file, why, remedy));
  }
}
