package spangle.desk;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import spangle.intake.week.Coating;
import spangle.intake.week.PartLine;
import spangle.intake.week.WeekInput;
import spangle.intake.week.Zinc;
import spangle.plan.FinishKind;
import spangle.plan.Lot;
import spangle.plan.event.Event;
import spangle.plan.event.EventKind;
import spangle.plan.event.LotNames;

/** What stands on the sheet of a load of rejected pieces: how the gun is set, which coat it is. */
final class ReworkNotes {
  private final WeekInput week;

  ReworkNotes(WeekInput week) {
    this.week = week;
  }

  List<String> of(List<Lot> load) {
    Set<String> notes = new LinkedHashSet<>();
    for (Lot lot : load) {
      if (LotNames.rework(lot)) {
        notes.addAll(of(lot));
      }
    }
    return List.copyOf(notes);
  }

  private List<String> of(Lot lot) {
    Optional<Event> from =
        week.events().events().stream()
            .filter(e -> e.number() == LotNames.eventOf(lot))
            .findFirst();
    if (from.isPresent() && from.get().kind() == EventKind.STRIPPED) {
      return List.of("Stripped pieces: bare metal all over, or back to the stripper.");
    }
    if (lot.finish().kind() == FinishKind.ZINC) {
      return zinc();
    }
    List<String> notes = new ArrayList<>();
    Optional<Coating> coating = week.catalogue().coating(lot.finish().materialId());
    coating.ifPresent(c -> notes.add("REWORK, set the gun: " + c.recoating().gun() + "."));
    int most = most(lot);
    int coat = from.map(Event::coats).orElse(1) + 1;
    if (most < Integer.MAX_VALUE) {
      notes.add(
          String.format(
              Locale.ROOT,
              "%s: coat %d of at most %d%s.",
              lot.jobId() + " " + lot.partId(),
              coat,
              most,
              coat >= most ? "; what is rejected after it is stripped" : ""));
    }
    return notes;
  }

  private List<String> zinc() {
    return week.catalogue()
        .zinc()
        .flatMap(Zinc::strip)
        .map(
            s ->
                List.of(
                    "REWORK: "
                        + s.minutes()
                        + " min in "
                        + s.stationId()
                        + " until the zinc is off, then the whole way again.",
                    "Zinc in acid gives off hydrogen: exhaust on, no flame, goggles and gloves;"
                        + " acid that holds zinc is kept apart."))
        .orElse(List.of("REWORK: the zinc comes off in acid first, then the whole way again."));
  }

  private int most(Lot lot) {
    return week.jobs().stream()
        .filter(j -> j.id().equals(lot.jobId()))
        .flatMap(j -> j.parts().stream())
        .filter((PartLine line) -> line.id().equals(lot.partId()))
        .mapToInt(week::mostCoats)
        .findFirst()
        .orElse(Integer.MAX_VALUE);
  }
}
