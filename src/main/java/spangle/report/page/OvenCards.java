package spangle.report.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import spangle.plan.LineKind;
import spangle.plan.LineSpec;
import spangle.plan.Lot;
import spangle.plan.PlannedBatch;
import spangle.report.BatchNote;
import spangle.report.week.LoadPlace;
import spangle.report.week.WeekIndex;

/** The cards of all oven batches, in the order the ovens run them. */
final class OvenCards {
  private OvenCards() {}

  static List<OvenCard> of(WeekIndex index) {
    List<OvenCard> cards = new ArrayList<>();
    for (LineSpec line : index.report().brief().lines()) {
      if (line.kind() == LineKind.ZINC || line.kind() == LineKind.OUTSIDE) {
        continue;
      }
      for (PlannedBatch batch : index.report().plan().batches()) {
        List<LoadPlace> loads =
            index.loads(line).stream().filter(l -> l.batch().equals(batch)).toList();
        if (batch.lineId().equals(line.id()) && !loads.isEmpty()) {
          cards.add(card(index, batch, loads));
        }
      }
    }
    return cards;
  }

  private static OvenCard card(WeekIndex index, PlannedBatch batch, List<LoadPlace> loads) {
    LoadHeads heads = new LoadHeads(index);
    Optional<BatchNote> note = index.note(batch);
    LoadPlace first = loads.get(0);
    return new OvenCard(
        batch.id(),
        first.machine().name(),
        first.setting(),
        batch.setupStartMin() < batch.startMin()
            ? "set the oven at " + index.time().clock(batch.setupStartMin())
            : "",
        index.begins(batch.startMin()),
        loads.stream()
            .map(
                l ->
                    new OvenCard.CardLoad(
                        l.id(), index.colour(l.finish()), heads.patch(l), heads.mass(l.massKg())))
            .toList(),
        note.map(n -> index.lot(n.probe()).map(Lot::label).orElse(n.probe())).orElse(""),
        note.map(n -> "about " + n.heatUpMin() + " min").orElse(""),
        note.map(
                n ->
                    n.minutesAtHeat()
                        + " min from "
                        + index.say().number(n.partCelsius(), 0)
                        + (n.bake() ? " °C of the oven" : " °C on the part"))
            .orElse(""),
        note.filter(BatchNote::bake).isPresent(),
        index.clockOf(batch.endMin()),
        note.map(n -> index.clockOf(batch.startMin() + n.longestMin())).orElse(""),
        note.map(BatchNote::words).orElse(""));
  }
}
