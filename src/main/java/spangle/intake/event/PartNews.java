package spangle.intake.event;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;
import spangle.intake.week.Metal;
import spangle.intake.week.PartLine;
import spangle.intake.week.Wanted;
import spangle.plan.event.Event;
import spangle.plan.event.EventKind;

/** What events say of one part: which pieces are here or come when, its steel, its due time. */
final class PartNews {
  /** Time of pieces of which nobody has said when they come. */
  private static final int NOBODY_SAYS = Integer.MAX_VALUE;

  private final PartLine was;
  private final List<Event> events;
  private final List<Slot> slots = new ArrayList<>();
  private final List<Wanted.Arrival> arrivals = new ArrayList<>();
  private int missing;

  /** Pieces of the delivery plan: at what time, and whether somebody has counted them in. */
  private static final class Slot {
    private final int pieces;
    private final int atMin;
    private final boolean counted;

    Slot(int pieces, int atMin, boolean counted) {
      this.pieces = pieces;
      this.atMin = atMin;
      this.counted = counted;
    }
  }

  PartNews(PartLine was, List<Event> events, int atMin) {
    this.was = was;
    this.events = events;
    int announced = 0;
    for (Wanted.Arrival arrival : was.wanted().arrivals()) {
      slots.add(new Slot(arrival.pieces(), arrival.atMin(), false));
      announced += arrival.pieces();
    }
    if (announced < was.qty()) {
      slots.add(new Slot(was.qty() - announced, NOBODY_SAYS, false));
    }
    boolean anyCounted = false;
    for (Event event : events) {
      int pieces = event.figures().count().orElse(0);
      if (event.kind() == EventKind.ARRIVED) {
        anyCounted = true;
        take(pieces, event.atMin(), true);
      } else if (event.kind() == EventKind.EXPECTED) {
        take(pieces, event.figures().untilMin().orElse(event.atMin()), false);
      }
    }
    slots.sort(Comparator.comparingInt(s -> s.atMin));
    for (Slot slot : slots) {
      // Where arrivals are counted, what should be here and was not counted in is not here.
      boolean overdue = anyCounted && !slot.counted && slot.atMin <= atMin;
      if (overdue || slot.atMin == NOBODY_SAYS) {
        missing += slot.pieces;
      } else {
        arrivals.add(new Wanted.Arrival(slot.pieces, slot.atMin));
      }
    }
  }

  /**
   * Moves pieces not yet counted in, those due first, to another time; more than ordered do not
   * count.
   */
  private void take(int pieces, int toMin, boolean counted) {
    slots.sort(Comparator.comparingInt(s -> s.atMin));
    int left = pieces;
    List<Slot> after = new ArrayList<>();
    for (Slot slot : slots) {
      if (slot.counted || left == 0) {
        after.add(slot);
        continue;
      }
      int taken = Math.min(left, slot.pieces);
      left -= taken;
      if (taken < slot.pieces) {
        after.add(new Slot(slot.pieces - taken, slot.atMin, false));
      }
    }
    if (pieces > left) {
      after.add(new Slot(pieces - left, toMin, counted));
    }
    slots.clear();
    slots.addAll(after);
  }

  int missing() {
    return missing;
  }

  PartLine line() {
    return new PartLine(
        was.id(),
        was.description(),
        was.revision(),
        was.qty(),
        metal(),
        was.body(),
        wanted(),
        was.hollows(),
        was.heat(),
        was.handling(),
        was.note(),
        was.place());
  }

  private Wanted wanted() {
    Wanted w = was.wanted();
    int due = w.dueMin();
    int weight = w.weight();
    for (Event event : events) {
      if (event.kind() == EventKind.PRIORITY_CHANGED) {
        due = event.figures().dueMin().orElse(due);
        weight = event.figures().priority().orElse(weight);
      }
    }
    int ready = arrivals.stream().mapToInt(Wanted.Arrival::atMin).min().orElse(w.readyMin());
    return new Wanted(
        w.route(), w.finishes(), w.filmUm(), ready, due, weight, w.rejectAllowancePct(), arrivals);
  }

  private Metal metal() {
    Metal m = was.metal();
    OptionalDouble si = m.siPct();
    OptionalDouble p = m.pPct();
    String certificate = m.certificate();
    for (Event event : events) {
      if (event.kind() == EventKind.CERTIFICATE) {
        si = event.figures().siPct();
        p = event.figures().pPct();
        certificate = "reported, event " + event.number();
      }
    }
    return new Metal(
        m.material(),
        m.materialWord(),
        m.grade(),
        m.thicknessMm(),
        m.thickestMm(),
        m.skins(),
        m.strengthMpa(),
        m.bendRadiusMm(),
        certificate,
        si,
        p,
        m.alPct());
  }
}
