package spangle.desk;

import java.util.List;
import java.util.function.UnaryOperator;
import spangle.plan.Brief;
import spangle.plan.CarrierSpec;
import spangle.plan.Kit;
import spangle.plan.LineSpec;
import spangle.plan.Lot;
import spangle.plan.MachineSpec;
import spangle.plan.PlannedBatch;
import spangle.plan.StationSpec;
import spangle.plan.Supply;

/** A brief with one thing or another different: for a replan, or a question of what would be if. */
final class BriefChange {
  private final Brief brief;
  private String name;
  private int horizonMin;
  private List<LineSpec> lines;
  private List<CarrierSpec> carriers;
  private List<Lot> lots;
  private List<Kit> kits;
  private List<Supply> supplies;
  private List<PlannedBatch> frozen;
  private List<PlannedBatch> announced;
  private List<String> retired;

  private BriefChange(Brief brief) {
    this.brief = brief;
    this.name = brief.name();
    this.horizonMin = brief.horizonMin();
    this.lines = brief.lines();
    this.carriers = brief.carriers();
    this.lots = brief.lots();
    this.kits = brief.kits();
    this.supplies = brief.supplies();
    this.frozen = brief.frozen();
    this.announced = brief.announced();
    this.retired = brief.retired();
  }

  /** So far nothing is different. */
  static BriefChange of(Brief brief) {
    return new BriefChange(brief);
  }

  BriefChange name(String other) {
    name = other;
    return this;
  }

  BriefChange horizonMin(int other) {
    horizonMin = other;
    return this;
  }

  BriefChange lines(List<LineSpec> others) {
    lines = others;
    return this;
  }

  BriefChange carriers(List<CarrierSpec> others) {
    carriers = others;
    return this;
  }

  BriefChange lots(List<Lot> others) {
    lots = others;
    return this;
  }

  BriefChange kits(List<Kit> others) {
    kits = others;
    return this;
  }

  BriefChange supplies(List<Supply> others) {
    supplies = others;
    return this;
  }

  BriefChange frozen(List<PlannedBatch> others) {
    frozen = others;
    return this;
  }

  BriefChange announced(List<PlannedBatch> others) {
    announced = others;
    return this;
  }

  BriefChange retired(List<String> others) {
    retired = others;
    return this;
  }

  /** The brief. */
  Brief made() {
    return new Brief(
        name,
        brief.monday(),
        horizonMin,
        lines,
        carriers,
        lots,
        kits,
        supplies,
        brief.goals(),
        frozen,
        announced,
        brief.baths(),
        brief.scrapped(),
        brief.caged(),
        retired);
  }

  static Brief lots(Brief b, List<Lot> lots) {
    return of(b).lots(lots).made();
  }

  static Brief lots(Brief b, UnaryOperator<Lot> change) {
    return lots(b, b.lots().stream().map(change).toList());
  }

  static Brief supplies(Brief b, UnaryOperator<Supply> change) {
    return supplies(b, b.supplies().stream().map(change).toList());
  }

  static Brief supplies(Brief b, List<Supply> supplies) {
    return of(b).supplies(supplies).made();
  }

  static Brief kits(Brief b, UnaryOperator<Kit> change) {
    return of(b).kits(b.kits().stream().map(change).toList()).made();
  }

  static Brief carriers(Brief b, UnaryOperator<CarrierSpec> change) {
    return of(b).carriers(b.carriers().stream().map(change).toList()).made();
  }

  static Brief lines(Brief b, UnaryOperator<LineSpec> change) {
    return of(b).lines(b.lines().stream().map(change).toList()).made();
  }

  static Brief stations(Brief b, UnaryOperator<StationSpec> change) {
    return lines(b, line -> line(line, change, UnaryOperator.identity()));
  }

  static LineSpec line(
      LineSpec line, UnaryOperator<StationSpec> station, UnaryOperator<MachineSpec> machine) {
    return line.with(
        line.before().stream().map(station).toList(),
        line.machines().stream().map(machine).toList(),
        line.after().stream().map(station).toList());
  }
}
