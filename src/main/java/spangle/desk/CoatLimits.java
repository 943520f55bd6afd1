package spangle.desk;

import java.util.ArrayList;
import java.util.List;
import java.util.NavigableSet;
import java.util.TreeSet;
import spangle.coating.zinc.ZincRow;
import spangle.intake.brief.Draws;
import spangle.measure.Figures;
import spangle.part.WallArea;
import spangle.plan.PartFacts;
import spangle.report.LotNote;

/** What the standard asks of each wall of an article: every thickness by its own row. */
final class CoatLimits {
  private CoatLimits() {}

  /** Limits of each row that judges a part, thinnest wall first; one where all walls share it. */
  static List<LotNote.CoatLimit> of(Draws draws, PartFacts part) {
    NavigableSet<Double> walls = new TreeSet<>();
    part.skins().stream().map(WallArea::thicknessMm).forEach(walls::add);
    walls.add(part.thickestMm());
    List<LotNote.CoatLimit> limits = new ArrayList<>();
    for (double mm : walls) {
      ZincRow row = draws.row(part, mm);
      boolean known =
          limits.stream().anyMatch(l -> l.meanUm() == row.meanUm() && l.localUm() == row.localUm());
      if (!known) {
        limits.add(new LotNote.CoatLimit(Figures.upTo(mm, 2) + " mm", row.meanUm(), row.localUm()));
      }
    }
    return limits.size() == 1
        ? List.of(new LotNote.CoatLimit("", limits.get(0).meanUm(), limits.get(0).localUm()))
        : limits;
  }
}
