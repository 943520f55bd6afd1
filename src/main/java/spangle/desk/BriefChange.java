package spangle.desk;

import java.util.List;
import java.util.function.UnaryOperator;
import spangle.plan.Brief;
import spangle.plan.CarrierSpec;
import spangle.plan.Kit;
import spangle.plan.LineSpec;
import spangle.plan.Lot;
import spangle.plan.MachineSpec;
import spangle.plan.StationSpec;
import spangle.plan.Supply;

/** A brief with one thing different: for a question of what would be if. */
final class BriefChange {
  private BriefChange() {}

  static Brief lots(Brief b, List<Lot> lots) {
    return made(b, b.horizonMin(), b.lines(), b.carriers(), lots, b.supplies());
  }

  static Brief lots(Brief b, UnaryOperator<Lot> change) {
    return lots(b, b.lots().stream().map(change).toList());
  }

  static Brief supplies(Brief b, UnaryOperator<Supply> change) {
    return supplies(b, b.supplies().stream().map(change).toList());
  }

  static Brief supplies(Brief b, List<Supply> supplies) {
    return made(b, b.horizonMin(), b.lines(), b.carriers(), b.lots(), supplies);
  }

  static Brief kits(Brief b, UnaryOperator<Kit> change) {
    return new Brief(
        b.name(),
        b.monday(),
        b.horizonMin(),
        b.lines(),
        b.carriers(),
        b.lots(),
        b.kits().stream().map(change).toList(),
        b.supplies(),
        b.goals(),
        b.frozen(),
        b.announced(),
        b.baths(),
        b.scrapped(),
        b.caged(),
        b.retired());
  }

  static Brief carriers(Brief b, UnaryOperator<CarrierSpec> change) {
    List<CarrierSpec> carriers = b.carriers().stream().map(change).toList();
    return made(b, b.horizonMin(), b.lines(), carriers, b.lots(), b.supplies());
  }

  static Brief lines(Brief b, UnaryOperator<LineSpec> change) {
    List<LineSpec> lines = b.lines().stream().map(change).toList();
    return made(b, b.horizonMin(), lines, b.carriers(), b.lots(), b.supplies());
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

  static Brief made(
      Brief b,
      int horizonMin,
      List<LineSpec> lines,
      List<CarrierSpec> carriers,
      List<Lot> lots,
      List<Supply> supplies) {
    return new Brief(
        b.name(),
        b.monday(),
        horizonMin,
        lines,
        carriers,
        lots,
        b.kits(),
        supplies,
        b.goals(),
        b.frozen(),
        b.announced(),
        b.baths(),
        b.scrapped(),
        b.caged(),
        b.retired());
  }
}
