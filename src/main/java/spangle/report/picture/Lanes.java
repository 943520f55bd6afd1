package spangle.report.picture;

import java.util.ArrayList;
import java.util.List;
import spangle.plan.Finish;
import spangle.plan.LineKind;
import spangle.plan.LineSpec;
import spangle.plan.MachineSpec;
import spangle.plan.PlannedBatch;
import spangle.plan.PlannedLoad.PlannedVisit;
import spangle.plan.StationSpec;
import spangle.report.Swatch;
import spangle.report.week.LoadPlace;
import spangle.report.week.WeekIndex;

/** The lanes of a line: its stations in order with the ovens or kettles where they stand. */
final class Lanes {
  /** Zinc and anything else without a colour of its own. */
  static final String GREY = "c9ced3";

  private final WeekIndex index;
  private final LineSpec line;
  private final List<LoadPlace> loads;

  private Lanes(WeekIndex index, LineSpec line) {
    this.index = index;
    this.line = line;
    loads = index.loads(line);
  }

  static List<Lane> of(WeekIndex index, LineSpec line) {
    Lanes lanes = new Lanes(index, line);
    List<Lane> all = new ArrayList<>();
    line.before().forEach(s -> all.addAll(lanes.station(s)));
    line.machines().forEach(m -> all.add(lanes.machine(m)));
    line.after().forEach(s -> all.addAll(lanes.station(s)));
    return List.copyOf(all);
  }

  private List<Lane> station(StationSpec station) {
    List<Lane> places = new ArrayList<>();
    for (int place = 1; place <= station.alike(); place++) {
      List<Bar> bars = new ArrayList<>();
      for (LoadPlace load : loads) {
        for (PlannedVisit visit : load.load().visits()) {
          if (visit.stationId().equals(station.id())
              && visit.place() == place
              && !index.report().brief().isBeyond(visit.startMin())) {
            visit(bars, station, load, visit);
          }
        }
      }
      String name = station.name() + (station.alike() > 1 ? " " + place : "");
      places.add(new Lane(station.id(), name, station.calendar(), bars));
    }
    return places;
  }

  private void visit(List<Bar> bars, StationSpec station, LoadPlace load, PlannedVisit visit) {
    String link = "load-" + load.id();
    if (visit.setupStartMin() < visit.startMin()) {
      bars.add(
          new Bar(
              visit.setupStartMin(),
              visit.startMin(),
              "change",
              "",
              station.name()
                  + ": change to "
                  + index.colour(load.finish())
                  + span(visit.setupStartMin(), visit.startMin()),
              link,
              List.of()));
    }
    boolean colourMatters = station.setups().states().size() > 1;
    bars.add(
        new Bar(
            visit.startMin(),
            visit.endMin(),
            load.id() + (colourMatters ? " " + index.colour(load.finish()) : ""),
            load.id(),
            load.id()
                + " "
                + index.colour(load.finish())
                + " at "
                + station.name()
                + span(visit.startMin(), visit.endMin()),
            link,
            List.of(fill(load.finish()))));
  }

  private Lane machine(MachineSpec machine) {
    List<Bar> bars = new ArrayList<>();
    for (PlannedBatch batch : index.report().plan().batches()) {
      if (!batch.lineId().equals(line.id())
          || !batch.machineId().equals(machine.id())
          || index.report().brief().isBeyond(batch.startMin())) {
        continue;
      }
      List<LoadPlace> mine = loads.stream().filter(l -> l.batch().equals(batch)).toList();
      if (!mine.isEmpty()) {
        batch(bars, machine, batch, mine);
      }
    }
    return new Lane(machine.id(), machine.name(), machine.calendar(), bars);
  }

  private void batch(
      List<Bar> bars, MachineSpec machine, PlannedBatch batch, List<LoadPlace> mine) {
    String link = "load-" + mine.get(0).id();
    String setting = mine.get(0).setting();
    if (batch.setupStartMin() < batch.startMin()) {
      bars.add(
          new Bar(
              batch.setupStartMin(),
              batch.startMin(),
              "to " + setting,
              "",
              machine.name() + ": to " + setting + span(batch.setupStartMin(), batch.startMin()),
              link,
              List.of()));
    }
    String ids = String.join(" ", mine.stream().map(LoadPlace::id).toList());
    bars.add(
        new Bar(
            batch.startMin(),
            batch.endMin(),
            line.kind() == LineKind.ZINC || line.kind() == LineKind.OUTSIDE
                ? ids
                : setting + "  " + ids,
            ids,
            machine.name() + ", " + setting + ": " + ids + span(batch.startMin(), batch.endMin()),
            link,
            mine.stream().map(l -> fill(l.finish())).toList()));
  }

  private String span(int startMin, int endMin) {
    return ", " + index.time().at(startMin) + " to " + index.time().clock(endMin);
  }

  private Bar.Fill fill(Finish finish) {
    return new Bar.Fill(index.swatch(finish).map(Swatch::rgb).orElse(GREY), index.pattern(finish));
  }
}
