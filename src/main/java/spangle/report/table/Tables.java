package spangle.report.table;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import spangle.plan.LeftOut;
import spangle.plan.Lot;
import spangle.plan.Scrapped;
import spangle.report.HeldPart;
import spangle.report.PurchaseLine;
import spangle.report.week.LoadPlace;
import spangle.report.week.WeekIndex;

/** The tables of a week. */
final class Tables {
  private static final List<String> SCHEDULE =
      List.of(
          "state",
          "line",
          "load",
          "carrier",
          "carrier_number",
          "job",
          "part",
          "lot",
          "pieces",
          "finish",
          "hang_at",
          "machine",
          "setting",
          "in_at",
          "out_at",
          "dwell_min",
          "done_at",
          "due_at",
          "late_min",
          "area_m2",
          "mass_kg",
          "kits",
          "reason");

  private static final List<String> PURCHASES =
      List.of(
          "item",
          "unit",
          "need_low",
          "need_likely",
          "need_high",
          "stock",
          "on_order",
          "short",
          "packs",
          "pack_size",
          "latest_order",
          "used_by",
          "note",
          "allowance_for_rejects");

  private final WeekIndex index;
  private final LocalDate monday;

  private Tables(WeekIndex index) {
    this.index = index;
    monday = index.report().brief().monday();
  }

  /** One row for each lot: planned, left out, or held with the reason. */
  static Table schedule(WeekIndex index) {
    Tables tables = new Tables(index);
    List<List<Cell>> rows = new ArrayList<>();
    for (LoadPlace place : index.loads()) {
      place.lots().forEach(lot -> rows.add(tables.planned(place, lot)));
    }
    index.report().plan().leftOut().forEach(left -> rows.add(tables.leftOut(left)));
    index.report().waiting().held().forEach(held -> rows.add(tables.held(held)));
    return new Table("Schedule", SCHEDULE, rows);
  }

  private List<Cell> planned(LoadPlace place, Lot lot) {
    int horizon = index.report().brief().horizonMin();
    boolean waits = place.endMin() > horizon;
    boolean notIn = place.batch().startMin() >= horizon;
    int late = lot.lastLeg() && !waits ? Math.max(0, place.endMin() - lot.dueMin()) : 0;
    return List.of(
        Cell.text(waits ? "waits" : late > 0 ? "late" : "planned"),
        Cell.text(place.line().name()),
        Cell.text(place.id()),
        Cell.text(place.carrier().name()),
        Cell.count(place.load().carrierNumber()),
        Cell.text(lot.jobId()),
        Cell.text(lot.label()),
        Cell.text(lot.id()),
        Cell.count(lot.pieces()),
        Cell.text(lot.finish().name()),
        at(place.startMin()),
        Cell.text(place.machine().name()),
        Cell.text(place.setting()),
        notIn ? Cell.EMPTY : at(place.batch().startMin()),
        notIn ? Cell.EMPTY : at(place.batch().endMin()),
        Cell.count(place.batch().dwellMin()),
        waits ? Cell.EMPTY : at(place.endMin()),
        at(lot.dueMin()),
        Cell.count(late),
        Cell.number(lot.areaM2(), 3),
        Cell.number(lot.massKg(), 2),
        Cell.text(String.join(" ", lot.kitIds())),
        Cell.text(index.reason(lot.jobId()).orElse("")));
  }

  private List<Cell> leftOut(LeftOut left) {
    return index
        .lot(left.lotId())
        .map(
            lot ->
                notPlanned(
                    "left out",
                    lot.jobId(),
                    lot.label(),
                    lot.id(),
                    lot.pieces(),
                    lot.finish().name(),
                    at(lot.dueMin()),
                    left.reason()))
        .orElseGet(
            () -> notPlanned("left out", "", "", left.lotId(), 0, "", Cell.EMPTY, left.reason()));
  }

  private List<Cell> held(HeldPart held) {
    return notPlanned(
        Scrapped.gate(held.gate()) ? "scrapped" : "held",
        held.jobId(),
        held.partName(),
        "",
        held.pieces(),
        "",
        held.dueMin().isPresent() ? at(held.dueMin().getAsInt()) : Cell.EMPTY,
        held.gate() + ": " + held.words() + " (" + held.whoAnswers() + ")");
  }

  private static List<Cell> notPlanned(
      String state,
      String job,
      String part,
      String lot,
      int pieces,
      String finish,
      Cell due,
      String reason) {
    List<Cell> row = new ArrayList<>();
    for (String column : SCHEDULE) {
      row.add(
          switch (column) {
            case "state" -> Cell.text(state);
            case "job" -> Cell.text(job);
            case "part" -> Cell.text(part);
            case "lot" -> Cell.text(lot);
            case "pieces" -> Cell.count(pieces);
            case "finish" -> Cell.text(finish);
            case "due_at" -> due;
            case "reason" -> Cell.text(reason);
            default -> Cell.EMPTY;
          });
    }
    return row;
  }

  /** What to buy. */
  static Table purchases(WeekIndex index) {
    List<List<Cell>> rows = new ArrayList<>();
    for (PurchaseLine p : index.report().stores().purchases()) {
      rows.add(
          List.of(
              Cell.text(p.item()),
              Cell.text(p.unit()),
              Cell.number(p.needLow(), 3),
              Cell.number(p.needLikely(), 3),
              Cell.number(p.needHigh(), 3),
              Cell.number(p.stock(), 3),
              Cell.number(p.onOrder(), 3),
              Cell.number(p.shortBy(), 3),
              Cell.count(p.packs()),
              Cell.number(p.packSize(), 3),
              p.latestOrder().map(Cell::date).orElse(Cell.EMPTY),
              Cell.text(String.join(" ", p.usedBy())),
              Cell.text(p.note()),
              Cell.number(p.allowance(), 3)));
    }
    return new Table("To buy", PURCHASES, rows);
  }

  private Cell at(int minute) {
    return Cell.minute(monday, minute);
  }
}
