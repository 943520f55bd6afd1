package spangle.fit.vent;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import spangle.measure.Figures;

/** What to mind with an open-front box and its returns. */
final class ReturnCautions {
  /** Work hangs at this angle at least so that zinc runs off (trade design guides). */
  private static final double LEAST_DRAIN_DEG = 10;

  private static final double MM3_PER_LITRE = 1e6;

  private ReturnCautions() {}

  static List<String> of(OpenFront front, Optional<Holes> drain) {
    List<String> words = new ArrayList<>();
    double litres = front.trappedMm3() / MM3_PER_LITRE;
    words.add(
        "Without holes "
            + Figures.upTo(litres, 2)
            + " litres of zinc, "
            + Figures.upTo(litres * OpenFront.ZINC_KG_PER_LITRE, 1)
            + " kg, stay behind the returns and as much air shuts zinc out at the top: bare steel"
            + " there, flux and ash on the face");
    words.add(
        "Acid and water stand in the same corners: let them run out and dry before the dip; wet"
            + " work throws molten zinc");
    if (front.tiltDeg() < LEAST_DRAIN_DEG || front.tiltDeg() > 90 - LEAST_DRAIN_DEG) {
      words.add(
          "At "
              + Figures.upTo(front.tiltDeg(), 1)
              + " degrees a whole gutter lies level or nearly so: hang it at 10 degrees or more"
              + " from level and upright");
    }
    drain
        .map(holes -> holes.asRuled().drillMm())
        .filter(drill -> drill > front.lipMm())
        .ifPresent(
            drill ->
                words.add(
                    "A hole of "
                        + Text.mm(drill)
                        + " is wider than the "
                        + Text.mm(front.lipMm())
                        + " inside the return: leave the corner open by 19 mm or drill the wall"
                        + " behind it"));
    words.add(
        "Hang it with the opening upright: opening down keeps all the air, opening up all the zinc"
            + " (common practice)");
    words.add(
        "No vessel rule is published for a box open at the front; hems, gutters, doublers and hinge"
            + " pins need a check of their own (common practice)");
    return words;
  }
}
