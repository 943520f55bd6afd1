package spangle.report.page;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import spangle.plan.LineKind;
import spangle.plan.Lot;
import spangle.report.LoadNote;
import spangle.report.LotNote;
import spangle.report.LotNote.ZincNote;
import spangle.report.week.LoadPlace;
import spangle.report.week.Say;
import spangle.report.week.WeekIndex;

/** The sheets of all dips. What is not known is treated as the dangerous case. */
final class DipSheets {
  private static final int READINGS_A_PIECE = 5;

  /** Rows of boxes there is room for, with a drawing above them and without. */
  private static final int BOX_ROWS = 5;

  private static final int BOX_ROWS_ALONE = 8;

  private final WeekIndex index;
  private final LoadHeads heads;

  private DipSheets(WeekIndex index) {
    this.index = index;
    heads = new LoadHeads(index);
  }

  static List<DipSheet> of(WeekIndex index) {
    DipSheets sheets = new DipSheets(index);
    List<DipSheet> all = new ArrayList<>();
    for (LoadPlace place : index.loads()) {
      if (place.line().kind() == LineKind.ZINC) {
        List<List<PartRow>> pages = LoadHeads.pages(sheets.heads.rows(place));
        for (int i = 0; i < pages.size(); i++) {
          all.add(sheets.sheet(place, pages.get(i), i, pages.size()));
        }
      }
    }
    return all;
  }

  private DipSheet sheet(LoadPlace place, List<PartRow> rows, int page, int pages) {
    List<Optional<ZincNote>> notes =
        place.lots().stream().map(l -> index.note(l).flatMap(LotNote::zinc)).toList();
    boolean hollow = notes.stream().anyMatch(n -> n.map(ZincNote::hollow).orElse(true));
    boolean quench = notes.stream().allMatch(n -> n.map(ZincNote::quench).orElse(false));
    boolean special = notes.stream().flatMap(Optional::stream).anyMatch(ZincNote::special);
    Optional<Lot> shown = page == 0 ? shown(place) : Optional.empty();
    int measured = measured(place);
    int wires = LoadHeads.hooks(place, place.lots());
    String picture = page == 0 ? heads.picture(place, shown.isEmpty()) : "";
    String sketch = shown.map(lot -> sketch(lot, !picture.isEmpty())).orElse("");
    int rowsOfBoxes = sketch.isEmpty() && picture.isEmpty() ? BOX_ROWS_ALONE : BOX_ROWS;
    return new DipSheet(
        heads.head(place, page, pages),
        rows,
        rows.size() > LoadHeads.ORDINARY_ROWS,
        page == 0,
        heads.pieces(place),
        heads.area(place),
        heads.mass(place.massKg()),
        heads.mass(place.massKg() + place.carrier().ownMassKg()),
        wires > 0 ? Say.count(wires, "wire") : "loose in the basket",
        page == 0 ? index.note(place.load()).map(LoadNote::level).orElse("") : "",
        attitudes(notes),
        special,
        sketch,
        sketch.isEmpty() ? "" : shown.map(lot -> heads.letterOf(place, lot)).orElse(""),
        picture,
        place.machine().name() + ", " + index.begins(place.batch().startMin()),
        Integer.toString(place.batch().dwellMin()),
        distinct(notes, ZincNote::steelClass, "not known: ask"),
        quench,
        hollow,
        limits(notes),
        readings(measured, rowsOfBoxes),
        IntStream.rangeClosed(1, Math.max(1, Math.min(rowsOfBoxes, measured))).boxed().toList(),
        index.note(place.load()).map(LoadNote::cautions).orElse(List.of()));
  }

  /** Pieces to measure: those the standard asks of a lot, but no more than hang here. */
  private int measured(LoadPlace place) {
    int measured = 0;
    for (Lot lot : place.lots()) {
      int asked = index.note(lot).flatMap(LotNote::zinc).map(ZincNote::readings).orElse(0);
      measured += Math.min(asked, lot.pieces());
    }
    return measured;
  }

  private static String readings(int measured, int rows) {
    if (measured == 0) {
      return READINGS_A_PIECE + " readings on each piece measured";
    }
    String rest = measured > rows ? "; the others on the back" : "";
    return Say.count(measured, "piece") + ", " + READINGS_A_PIECE + " readings on each" + rest;
  }

  private static String attitudes(List<Optional<ZincNote>> notes) {
    return distinct(notes, ZincNote::attitude, "not known: ask");
  }

  private static String distinct(
      List<Optional<ZincNote>> notes,
      java.util.function.Function<ZincNote, String> what,
      String unknown) {
    Set<String> found = new LinkedHashSet<>();
    for (Optional<ZincNote> note : notes) {
      found.add(note.map(what).filter(w -> !w.isEmpty()).orElse(unknown));
    }
    return String.join("; ", found);
  }

  private String limits(List<Optional<ZincNote>> notes) {
    return distinct(
        notes,
        n ->
            n.limits().stream()
                .map(
                    l ->
                        l.head()
                            + "mean at least "
                            + index.say().number(l.meanUm(), 0)
                            + " um, no place under "
                            + index.say().number(l.localUm(), 0)
                            + " um")
                .collect(Collectors.joining("; ")),
        "see the order");
  }

  /**
   * The lot that is drawn: one that goes in specially before one that is hollow, then the first.
   */
  private Optional<Lot> shown(LoadPlace place) {
    return place.lots().stream()
        .filter(lot -> zinc(lot).flatMap(ZincNote::drawings).isPresent())
        .min(
            Comparator.comparingInt(
                lot -> zinc(lot).map(z -> z.special() ? 0 : z.hollow() ? 1 : 2).orElse(2)));
  }

  private Optional<ZincNote> zinc(Lot lot) {
    return index.note(lot).flatMap(LotNote::zinc);
  }

  private String sketch(Lot lot, boolean beside) {
    return zinc(lot)
        .flatMap(ZincNote::drawings)
        .map(d -> SafeDrawing.of(beside ? d.beside() : d.alone()))
        .orElse("");
  }
}
