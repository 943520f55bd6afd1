package spangle.plan;

import java.util.List;
import spangle.equipment.WorkCalendar;

/**
 * A station that loads pass one at a time per place: hanging, wash, dry-off, booth, pickling tanks,
 * cooling, unloading.
 *
 * @param id unique in the week
 * @param name words for the sheet
 * @param alike how many of it stand side by side
 * @param calendar when it works
 * @param setups from-to changes by the lot's {@link Finish#index()}; one state when it has none
 * @param initialState state at the week's start
 * @param longestWaitAfterMin minutes a load may wait between leaving here and the start of its next
 *     visit (wash to coat, flux to zinc); {@link Integer#MAX_VALUE} where there is no limit
 * @param out places that are out of use for a while, while the others work
 */
public record StationSpec(
    String id,
    String name,
    int alike,
    WorkCalendar calendar,
    SetupTable setups,
    int initialState,
    int longestWaitAfterMin,
    List<PlacesOut> out) {
  /** Copies the list. */
  public StationSpec {
    out = List.copyOf(out);
  }

  /** A station all of whose places work. */
  public StationSpec(
      String id,
      String name,
      int alike,
      WorkCalendar calendar,
      SetupTable setups,
      int initialState,
      int longestWaitAfterMin) {
    this(id, name, alike, calendar, setups, initialState, longestWaitAfterMin, List.of());
  }

  /** Whether a place, counted from 1, is out of use at some minute of a stay. */
  public boolean isOut(int place, int startMin, int endMin) {
    return out.stream().anyMatch(o -> o.meets(place, alike, startMin, endMin));
  }

  /** The same with other hours. */
  public StationSpec during(WorkCalendar hours) {
    return new StationSpec(id, name, alike, hours, setups, initialState, longestWaitAfterMin, out);
  }

  /** The same with so many places, of which some are out of use. */
  public StationSpec having(int places, List<PlacesOut> outOfUse) {
    return new StationSpec(
        id, name, places, calendar, setups, initialState, longestWaitAfterMin, outOfUse);
  }

  /** The same with other minutes for its set-ups. */
  public StationSpec changing(SetupTable others) {
    return new StationSpec(
        id, name, alike, calendar, others, initialState, longestWaitAfterMin, out);
  }

  /** The same after which a load may wait so many minutes. */
  public StationSpec waiting(int longestMin) {
    return new StationSpec(id, name, alike, calendar, setups, initialState, longestMin, out);
  }
}
