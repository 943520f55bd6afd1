package spangle.intake.brief;

import java.util.List;
import java.util.Optional;
import spangle.intake.week.Coating;
import spangle.intake.week.Job;
import spangle.intake.week.Metal;
import spangle.intake.week.PartLine;
import spangle.intake.week.PieceFigures;
import spangle.intake.week.Route;
import spangle.intake.week.Told;
import spangle.intake.week.WeekInput;
import spangle.part.HollowKind;
import spangle.part.WallArea;
import spangle.plan.PartFacts;

/** Area, mass and outside size of every part: as given, else from its shape. */
final class PartMeasurer {
  private PartMeasurer() {}

  /** A measured part, or nothing where the file gives too little to measure it. */
  static Optional<PartFacts> measure(WeekInput input, Job job, PartLine line) {
    Optional<PieceFigures> found = PieceFigures.of(line.metal(), line.body());
    if (found.isEmpty()) {
      return Optional.empty();
    }
    PieceFigures figures = found.get();
    boolean hollow =
        !line.hollows().members().isEmpty()
            || line.hollows().told().yes()
            || figures.computed().map(m -> m.hollow() == HollowKind.CLOSED).orElse(false);
    double areaM2 = Math.max(0.0001, figures.areaM2() - line.body().maskedAreaM2());
    return Optional.of(
        new PartFacts(
            job.id(),
            line.id(),
            job.customer(),
            line.words(),
            line.revision(),
            line.qty(),
            line.metal().material(),
            line.metal().thicknessMm(),
            line.metal().thickestMm(),
            skins(line.metal(), areaM2),
            figures.sizeMm(),
            areaM2,
            figures.massKg(),
            figures.source(),
            line.wanted().route().word(),
            line.wanted().finishes(),
            film(input, line),
            line.wanted().readyMin(),
            line.wanted().dueMin(),
            line.wanted().weight(),
            line.handling().hooks().orElse(1),
            line.handling().showFace(),
            line.handling().masking(),
            line.handling().spin() == Told.YES,
            line.hollows().welded().yes(),
            hollow,
            line.metal().siPct(),
            line.metal().pPct(),
            line.metal().alPct()));
  }

  /** Masked surface is taken off every skin alike. */
  private static List<WallArea> skins(Metal metal, double areaM2) {
    if (metal.skins().isEmpty()) {
      return List.of(new WallArea(metal.thicknessMm(), areaM2));
    }
    double share = areaM2 / metal.skinAreaM2();
    return metal.skins().stream()
        .map(skin -> new WallArea(skin.thicknessMm(), share * skin.areaM2()))
        .toList();
  }

  private static double film(WeekInput input, PartLine line) {
    if (line.wanted().route() == Route.ZINC) {
      return 0;
    }
    List<String> coats = line.wanted().finishes();
    double aim =
        coats.isEmpty()
            ? 0
            : input
                .catalogue()
                .coating(coats.get(coats.size() - 1))
                .map(Coating::film)
                .map(f -> f.aimUm())
                .orElse(0.0);
    return line.wanted().filmUm().orElse(aim);
  }
}
