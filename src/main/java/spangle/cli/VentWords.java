package spangle.cli;

import java.io.PrintWriter;
import java.util.List;
import spangle.fit.FitAnswer;
import spangle.fit.vent.HolePlace;
import spangle.fit.vent.Holes;
import spangle.fit.vent.Need;
import spangle.fit.vent.OpenFront;
import spangle.fit.vent.Task;
import spangle.fit.vent.VentAnswer;
import spangle.measure.Figures;

/** Vents and drains as sentences and as data. */
final class VentWords {
  private VentWords() {}

  static void print(VentAnswer answer, List<HolePlace> places, PrintWriter out) {
    out.println(answer.hollow().words() + ", holes " + answer.hollow().scope());
    for (Task task : Task.values()) {
      out.println(
          answer
              .of(task)
              .map(holes -> line(task, holes))
              .orElse(task.word() + ": no rule asks for one"));
    }
    for (HolePlace place : places) {
      out.println("  " + place.words());
    }
    out.println("All published rules:");
    for (Need need : answer.needs()) {
      out.println(
          "  "
              + need.task().word()
              + ": "
              + need.holes()
              + " x "
              + mm(need.eachMm())
              + " mm = "
              + Figures.fixed(need.areaMm2(), 0)
              + " mm2, "
              + need.rule()
              + " ("
              + need.working()
              + "; "
              + need.source()
              + ")"
              + (wins(answer, need) ? " WINS" : need.counted() ? "" : " not counted"));
    }
    answer.cautions().forEach(caution -> out.println("CAUTION   " + caution));
    out.println(FitAnswer.VALIDITY);
    out.flush();
  }

  private static String line(Task task, Holes holes) {
    return task.word() + ": " + FitWords.holes(holes) + ", by " + holes.winner().source();
  }

  private static boolean wins(VentAnswer answer, Need need) {
    return answer.of(need.task()).map(holes -> holes.winner().equals(need)).orElse(false);
  }

  static JsonOut json(VentAnswer answer, List<HolePlace> places) {
    JsonOut out =
        new JsonOut()
            .put("hollow", answer.hollow().words())
            .put("scope", answer.hollow().scope())
            .put("vent", answer.vent().map(VentWords::json).orElse(null))
            .put("drain", answer.drain().map(VentWords::json).orElse(null))
            .put("places", places.stream().map(VentWords::json).toList())
            .put(
                "rules",
                answer.needs().stream().map(need -> json(need, wins(answer, need))).toList())
            .put("cautions", answer.cautions())
            .put("validity", FitAnswer.VALIDITY);
    if (answer.hollow() instanceof OpenFront front) {
      double litres = front.trappedMm3() / 1e6;
      out.put("tilt_deg", front.tiltDeg())
          .put("trapped_l", litres)
          .put("trapped_zinc_kg", litres * OpenFront.ZINC_KG_PER_LITRE);
    }
    return out;
  }

  static JsonOut json(Holes holes) {
    return new JsonOut()
        .put("count", holes.asRuled().count())
        .put("drill_mm", holes.asRuled().drillMm())
        .put("exact_mm", holes.winner().eachMm())
        .put("area_mm2", holes.winner().areaMm2())
        .put("rule", holes.winner().rule())
        .put("source", holes.winner().source())
        .put("or", holes.otherwise().stream().map(VentWords::json).toList());
  }

  private static JsonOut json(Holes.Choice choice) {
    return new JsonOut().put("count", choice.count()).put("drill_mm", choice.drillMm());
  }

  private static JsonOut json(HolePlace place) {
    return new JsonOut()
        .put("task", place.task().word())
        .put("end", place.farEnd() ? "far" : "near")
        .put("side", place.topSide() ? "top" : "underside")
        .put("words", place.words());
  }

  private static JsonOut json(Need need, boolean wins) {
    return new JsonOut()
        .put("task", need.task().word())
        .put("rule", need.rule())
        .put("source", need.source())
        .put("holes", need.holes())
        .put("each_mm", need.eachMm())
        .put("area_mm2", need.areaMm2())
        .put("working", need.working())
        .put("counted", need.counted())
        .put("wins", wins);
  }

  private static String mm(double value) {
    return Figures.upTo(value, 1);
  }
}
