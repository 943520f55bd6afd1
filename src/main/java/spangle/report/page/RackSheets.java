package spangle.report.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import spangle.plan.FinishKind;
import spangle.plan.LineKind;
import spangle.plan.Lot;
import spangle.report.BatchNote;
import spangle.report.LoadNote;
import spangle.report.week.LoadPlace;
import spangle.report.week.WeekIndex;

/** The sheets of all racks and carts: everything but the kettle's work. */
final class RackSheets {
  private final WeekIndex index;
  private final LoadHeads heads;

  private RackSheets(WeekIndex index) {
    this.index = index;
    heads = new LoadHeads(index);
  }

  static List<RackSheet> of(WeekIndex index) {
    RackSheets sheets = new RackSheets(index);
    List<RackSheet> all = new ArrayList<>();
    for (LoadPlace place : index.loads()) {
      if (place.line().kind() != LineKind.ZINC) {
        all.addAll(sheets.sheets(place));
      }
    }
    return all;
  }

  private List<RackSheet> sheets(LoadPlace place) {
    List<List<PartRow>> pages = LoadHeads.pages(heads.rows(place));
    List<RackSheet> sheets = new ArrayList<>();
    for (int i = 0; i < pages.size(); i++) {
      sheets.add(sheet(place, pages.get(i), i, pages.size()));
    }
    return sheets;
  }

  private RackSheet sheet(LoadPlace place, List<PartRow> rows, int page, int pages) {
    Optional<BatchNote> note = index.note(place.batch());
    Optional<LoadNote> load = index.note(place.load());
    FinishKind kind = place.finish().kind();
    boolean away = place.line().kind() == LineKind.OUTSIDE;
    double draw =
        load.map(LoadNote::drawAmount)
            .filter(a -> a > 0)
            .orElse(place.lots().stream().mapToDouble(Lot::materialKg).sum());
    String unit = load.map(LoadNote::drawUnit).orElse(kind == FinishKind.LIQUID ? "l" : "kg");
    return new RackSheet(
        heads.head(place, page, pages),
        rows,
        rows.size() > LoadHeads.ORDINARY_ROWS,
        page == 0,
        heads.pieces(place),
        heads.area(place),
        heads.mass(place.massKg()),
        heads.mass(place.massKg() + place.carrier().ownMassKg()),
        kind == FinishKind.LIQUID ? "mix" : "weigh out",
        draw > 0 ? index.say().mass(draw) + " " + unit : "",
        load.map(LoadNote::drawWords).orElse(""),
        page == 0 ? heads.picture(place, true) : "",
        away ? place.machine().name() : place.machine().name() + ", " + place.setting(),
        with(place),
        note.map(n -> part(n.probe())).orElse(""),
        note.map(n -> Integer.toString(n.minutesAtHeat())).orElse(""),
        out(place, note),
        kind == FinishKind.DEGAS,
        kind == FinishKind.LIQUID,
        away,
        load.map(LoadNote::cautions).orElse(List.of()));
  }

  private String with(LoadPlace place) {
    List<String> others =
        place.batch().loads().stream()
            .map(l -> l.id())
            .filter(id -> !id.equals(place.id()))
            .toList();
    return others.isEmpty() ? "alone" : "with " + String.join(", ", others);
  }

  private String out(LoadPlace place, Optional<BatchNote> note) {
    int end = place.batch().endMin();
    if (index.report().brief().isBeyond(place.batch().startMin())) {
      return WeekIndex.NOT_THIS_WEEK;
    }
    if (place.line().kind() == LineKind.OUTSIDE) {
      return index.time().at(end);
    }
    return index.time().clock(end)
        + note.map(
                n ->
                    ", never after "
                        + index.time().clock(place.batch().startMin() + n.longestMin()))
            .orElse("");
  }

  private String part(String lotId) {
    return index.lot(lotId).map(Lot::label).orElse(lotId);
  }
}
