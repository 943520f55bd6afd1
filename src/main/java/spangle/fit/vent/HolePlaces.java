package spangle.fit.vent;

import java.util.ArrayList;
import java.util.List;
import spangle.measure.Figures;

/**
 * Finds the highest and the lowest corner of a hollow for the attitude it hangs in. Tilted by an
 * angle between level and upright, the corner l and h both point to is highest and its opposite is
 * lowest. Level, a whole side is highest: both ends then need both holes.
 */
public final class HolePlaces {
  private static final double LEVEL_DEG = 1;

  private HolePlaces() {}

  /** The places of vents and drains, those of the first dip first. */
  public static List<HolePlace> of(HungHollow hung) {
    List<HolePlace> places = new ArrayList<>(firstDip(hung));
    boolean flipEnds = hung.second() == HungHollow.Second.END_FOR_END;
    boolean flipSides = hung.second() == HungHollow.Second.TURNED_OVER;
    if (flipEnds || flipSides) {
      for (HolePlace place : firstDip(hung)) {
        boolean farEnd = flipEnds != place.farEnd();
        boolean topSide = flipSides != place.topSide();
        places.add(place(place.task(), farEnd, topSide, "second dip", hung.tiltDeg()));
      }
    }
    return List.copyOf(places);
  }

  /**
   * The corners of a box open at the front where its returns meet, as it hangs with the opening
   * upright. On its end a whole gutter lies level: both its corners then need a hole.
   */
  public static List<HolePlace> inReturns(HungHollow hung) {
    HungHollow turned =
        hung.tiltDeg() > 90 - LEVEL_DEG
            ? new HungHollow(hung.lMm(), hung.hMm(), 90, hung.second())
            : hung;
    List<HolePlace> places = new ArrayList<>(of(turned));
    if (turned.tiltDeg() == 90) {
      for (HolePlace p : of(turned)) {
        String when = p.words().contains(": ") ? p.words().replaceFirst(": .*", "") : "";
        places.add(place(p.task(), p.farEnd(), !p.topSide(), when, 90));
      }
    }
    return places.stream()
        .map(
            p ->
                new HolePlace(
                    p.task(), p.farEnd(), p.topSide(), p.words() + " where the returns meet"))
        .distinct()
        .toList();
  }

  private static List<HolePlace> firstDip(HungHollow hung) {
    String when = hung.second() == HungHollow.Second.NONE ? "" : "first dip";
    double tilt = hung.tiltDeg();
    if (tilt < LEVEL_DEG) {
      return List.of(
          place(Task.DRAIN, false, false, when, tilt),
          place(Task.DRAIN, true, false, when, tilt),
          place(Task.VENT, false, true, when, tilt),
          place(Task.VENT, true, true, when, tilt));
    }
    return List.of(
        place(Task.DRAIN, false, false, when, tilt), place(Task.VENT, true, true, when, tilt));
  }

  private static HolePlace place(
      Task task, boolean farEnd, boolean topSide, String when, double tiltDeg) {
    String prefix = when.isEmpty() ? "" : when + ": ";
    String corner = (farEnd ? "far end" : "near end") + ", " + (topSide ? "top side" : "underside");
    String why =
        tiltDeg < LEVEL_DEG
            ? task == Task.VENT ? "highest side, level" : "lowest side, level"
            : (task == Task.VENT ? "highest" : "lowest")
                + " corner at "
                + Figures.fixed(tiltDeg, 0)
                + " degrees";
    return new HolePlace(
        task,
        farEnd,
        topSide,
        prefix + task.word() + " at the " + corner + " (" + why + "), within 10 mm of the corner");
  }
}
