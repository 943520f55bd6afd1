package spangle.report.page;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import spangle.fit.hang.CarrierFace;
import spangle.fit.hang.HangPattern;
import spangle.fit.hang.HangPattern.HungPiece;
import spangle.plan.FinishKind;
import spangle.plan.Kit;
import spangle.plan.Lot;
import spangle.plan.PlannedLoad.PlannedVisit;
import spangle.plan.StationSpec;
import spangle.report.LotNote;
import spangle.report.Swatch;
import spangle.report.hangsheet.HangDrawing;
import spangle.report.picture.Hatch;
import spangle.report.picture.LoadCode;
import spangle.report.week.LoadPlace;
import spangle.report.week.Say;
import spangle.report.week.WeekIndex;
import spangle.report.week.WeekTime;

/** What rack sheets and dip sheets have in common. */
final class LoadHeads {
  /** Parts a page takes with all that is to be said of each, and with one line for each. */
  static final int ORDINARY_ROWS = 6;

  static final int DENSE_ROWS = 14;

  private static final String NO_SWATCH = "ffffff";

  private final WeekIndex index;

  LoadHeads(WeekIndex index) {
    this.index = index;
  }

  /** The pages of rows a load needs: one, unless very many parts share it. */
  static List<List<PartRow>> pages(List<PartRow> rows) {
    List<List<PartRow>> pages = new ArrayList<>();
    for (int i = 0; i < rows.size(); i += DENSE_ROWS) {
      pages.add(rows.subList(i, Math.min(rows.size(), i + DENSE_ROWS)));
    }
    return pages;
  }

  LoadHead head(LoadPlace place, int page, int pages) {
    String id = place.id();
    return new LoadHead(
        id,
        "load-" + id + (page == 0 ? "" : "-" + (page + 1)),
        pages == 1 ? "" : "page " + (page + 1) + " of " + pages,
        place.carrier().name()
            + (place.carrier().owned() > 1 ? ", number " + place.load().carrierNumber() : ""),
        place.line().name(),
        index.time().at(place.startMin()),
        index.colour(place.finish()),
        index.swatch(place.finish()).map(Swatch::code).orElse(""),
        Hatch.name(index.pattern(place.finish())),
        patch(place),
        LoadCode.of(id),
        stops(place),
        index.time().due(place.dueMin()),
        kits(place.lots()),
        gates(place));
  }

  /** How the gates stand: a line that holds for every part stands once, else with its letters. */
  private List<String> gates(LoadPlace place) {
    Map<String, Set<String>> letters = new LinkedHashMap<>();
    int number = 0;
    for (List<Lot> lots : alike(place).values()) {
      String letter = letter(number++);
      index
          .note(lots.get(0))
          .ifPresent(
              n ->
                  n.gates()
                      .forEach(
                          line ->
                              letters
                                  .computeIfAbsent(line, l -> new LinkedHashSet<>())
                                  .add(letter)));
    }
    int parts = number;
    List<String> lines = new ArrayList<>();
    letters.forEach(
        (line, on) -> lines.add(on.size() == parts ? line : String.join(" ", on) + ": " + line));
    return lines;
  }

  String patch(LoadPlace place) {
    return Hatch.patch(
        index.pattern(place.finish()),
        index.swatch(place.finish()).map(Swatch::rgb).orElse(NO_SWATCH),
        index.colour(place.finish()));
  }

  private List<Stop> stops(LoadPlace place) {
    record Timed(String name, int atMin, boolean machine) {}
    List<Timed> timed = new ArrayList<>();
    for (PlannedVisit visit : place.load().visits()) {
      timed.add(new Timed(station(place, visit), visit.startMin(), false));
    }
    timed.add(new Timed(place.machine().name(), place.batch().startMin(), true));
    timed.sort(Comparator.comparingInt(Timed::atMin));
    List<Stop> stops = new ArrayList<>();
    int day = Integer.MIN_VALUE;
    for (Timed t : timed) {
      int today = WeekTime.dayOf(t.atMin());
      stops.add(
          new Stop(
              t.name(),
              index.clockOf(t.atMin()),
              index.report().brief().isBeyond(t.atMin())
                  ? "waits"
                  : today == day ? "" : index.time().at(t.atMin()).substring(0, 3),
              t.machine()));
      day = today;
    }
    return stops;
  }

  private static String station(LoadPlace place, PlannedVisit visit) {
    List<StationSpec> all = new ArrayList<>(place.line().before());
    all.addAll(place.line().after());
    return all.stream()
        .filter(s -> s.id().equals(visit.stationId()))
        .findFirst()
        .map(s -> s.name() + (s.alike() > 1 ? " " + visit.place() : ""))
        .orElse(visit.stationId());
  }

  private String kits(List<Lot> lots) {
    Set<String> names = new LinkedHashSet<>();
    for (Lot lot : lots) {
      for (String id : lot.kitIds()) {
        names.add(
            index.report().brief().kits().stream()
                .filter(k -> k.id().equals(id))
                .findFirst()
                .map(Kit::name)
                .orElse(id));
      }
    }
    return String.join(", ", names);
  }

  /** One row for the lots of a part: a hanger counts pieces, not lots. */
  List<PartRow> rows(LoadPlace place) {
    Map<String, List<Lot>> alike = alike(place);
    List<PartRow> rows = new ArrayList<>();
    for (List<Lot> lots : alike.values()) {
      rows.add(row(place, lots, letter(rows.size())));
    }
    return rows;
  }

  private static Map<String, List<Lot>> alike(LoadPlace place) {
    Map<String, List<Lot>> alike = new LinkedHashMap<>();
    for (Lot lot : place.lots()) {
      alike.computeIfAbsent(lot.jobId() + "\u0000" + lot.partId(), k -> new ArrayList<>()).add(lot);
    }
    return alike;
  }

  /** The letter of a lot's part in the parts table; none where there is but one. */
  String letterOf(LoadPlace place, Lot lot) {
    List<List<Lot>> parts = List.copyOf(alike(place).values());
    for (int i = 0; parts.size() > 1 && i < parts.size(); i++) {
      if (parts.get(i).contains(lot)) {
        return letter(i);
      }
    }
    return "";
  }

  private static String letter(int number) {
    String last = String.valueOf((char) ('A' + number % 26));
    return number < 26 ? last : letter(number / 26 - 1) + last;
  }

  private PartRow row(LoadPlace place, List<Lot> lots, String letter) {
    Lot first = lots.get(0);
    int pieces = lots.stream().mapToInt(Lot::pieces).sum();
    int hooks = hooks(place, lots);
    LotNote note = index.note(first).orElse(null);
    String hook = note == null || note.hook().isEmpty() ? "hooks" : note.hook();
    return new PartRow(
        letter,
        Integer.toString(pieces),
        first.label(),
        first.jobId(),
        note == null ? "" : index.say().number(note.thicknessMm(), 2) + " mm",
        hooks > 0 ? hooks + " x " + hook : "loose",
        pitch(place, lots),
        note == null ? "" : note.faceOut(),
        film(first, note),
        note == null ? List.of() : note.masks(),
        kits(lots),
        index.time().at(lots.stream().mapToInt(Lot::dueMin).min().orElseThrow()));
  }

  /** Hooks or wires of these lots; none where pieces lie loose in a basket. */
  static int hooks(LoadPlace place, List<Lot> lots) {
    boolean loose = place.carrier().face().style() == CarrierFace.Style.BULK;
    return loose ? 0 : lots.stream().mapToInt(l -> l.pieces() * l.item().hooksPerPiece()).sum();
  }

  private String film(Lot lot, @org.jspecify.annotations.Nullable LotNote note) {
    if (note == null) {
      return "";
    }
    if (lot.finish().kind() == FinishKind.ZINC) {
      return note.zinc()
          .map(
              z ->
                  z.limits().stream()
                      .map(
                          l ->
                              l.head()
                                  + "mean "
                                  + index.say().number(l.meanUm(), 0)
                                  + ", least "
                                  + index.say().number(l.localUm(), 0)
                                  + " um")
                      .collect(Collectors.joining("; ")))
          .orElse("");
    }
    return note.film();
  }

  /** Middle to middle of neighbours in a row, the smallest in the pattern. */
  private String pitch(LoadPlace place, List<Lot> lots) {
    List<String> keys = lots.stream().map(l -> l.item().key()).toList();
    List<HungPiece> pieces =
        place.load().pattern().map(HangPattern::pieces).orElse(List.of()).stream()
            .filter(p -> keys.contains(p.key()))
            .sorted(
                Comparator.comparingInt(HungPiece::face)
                    .thenComparingDouble(HungPiece::yMm)
                    .thenComparingDouble(HungPiece::xMm))
            .toList();
    double least = Double.MAX_VALUE;
    for (int i = 1; i < pieces.size(); i++) {
      HungPiece a = pieces.get(i - 1);
      HungPiece b = pieces.get(i);
      if (a.face() == b.face() && a.yMm() == b.yMm()) {
        least = Math.min(least, b.xMm() + b.widthMm() / 2 - a.xMm() - a.widthMm() / 2);
      }
    }
    return least == Double.MAX_VALUE ? "" : index.say().number(least, 0) + " mm";
  }

  /** The hang pattern with the letters of the parts table. */
  String picture(LoadPlace place, boolean wide) {
    Map<String, String> letters = new LinkedHashMap<>();
    int number = 0;
    for (List<Lot> lots : alike(place).values()) {
      for (Lot lot : lots) {
        letters.put(lot.item().key(), letter(number));
        letters.put(lot.id(), letter(number));
      }
      number++;
    }
    return place
        .load()
        .pattern()
        .filter(p -> !p.pieces().isEmpty())
        .map(p -> draw(place, p, letters, wide))
        .orElse("");
  }

  /** Inside a page the drawing needs no namespace of its own. */
  private static String draw(
      LoadPlace place, HangPattern pattern, Map<String, String> letters, boolean wide) {
    CarrierFace face = place.carrier().face();
    String svg =
        wide
            ? HangDrawing.wideSvg(pattern, face, letters)
            : HangDrawing.svg(pattern, face, letters);
    return svg.replaceFirst(" xmlns=\"[^\"]*\"", "");
  }

  String mass(double kilograms) {
    return index.say().mass(kilograms) + " kg";
  }

  String area(LoadPlace place) {
    return index.say().area(place.areaM2()) + " m²";
  }

  String pieces(LoadPlace place) {
    return Say.count(place.pieces(), "piece");
  }
}
