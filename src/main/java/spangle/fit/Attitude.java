package spangle.fit;

import java.util.List;
import java.util.Optional;
import spangle.measure.Interval;

/**
 * How a part goes in whole: what lies across, what is seen from the side, and the angles that do.
 *
 * @param acrossMm the part's side that lies across the tank, before any roll
 * @param neededWidthMm width needed across; more than the side when the part is rolled
 * @param side the view along the tank, after any roll
 * @param windowsDeg all angles at which it goes in, separate and rising; at least one
 * @param rollDeg sideways angles for which some tilt goes in; empty when no roll is needed
 * @param section what is seen from the end before the roll; no corners when no roll is needed
 */
public record Attitude(
    double acrossMm,
    double neededWidthMm,
    Silhouette side,
    List<Interval> windowsDeg,
    Optional<Interval> rollDeg,
    List<Silhouette.Corner> section) {
  /** Copies the lists. */
  public Attitude {
    windowsDeg = List.copyOf(windowsDeg);
    section = List.copyOf(section);
  }

  /** An attitude without roll. */
  static Attitude unrolled(double acrossMm, Silhouette side, List<Interval> windowsDeg) {
    return new Attitude(acrossMm, acrossMm, side, windowsDeg, Optional.empty(), List.of());
  }

  /** Whether it goes in level. */
  public boolean level() {
    return windowsDeg.get(0).min() == 0;
  }

  /** Whether it goes in on end. */
  public boolean onEnd() {
    return windowsDeg.get(windowsDeg.size() - 1).max() == 90;
  }

  /** Whether it goes in straight: level or on end, without roll. */
  public boolean straight() {
    return rollDeg.isEmpty() && (level() || onEnd());
  }

  /**
   * The one range that is reported: the one starting level; for a part that goes in straight only
   * on end the one ending there; else the lowest.
   */
  public Interval tiltDeg() {
    return !level() && straight() ? windowsDeg.get(windowsDeg.size() - 1) : windowsDeg.get(0);
  }

  /** The angle at which margins are given: level or on end when straight, else the middle. */
  public double statedDeg() {
    if (straight()) {
      return level() ? 0 : 90;
    }
    return tiltDeg().middle();
  }

  /** The widest stretch of angles inside a range; empty where none is. */
  public Optional<Interval> widestWithin(Interval rangeDeg) {
    Optional<Interval> widest = Optional.empty();
    for (Interval window : windowsDeg) {
      Optional<Interval> shared = window.intersect(rangeDeg);
      if (shared.isPresent() && widest.map(Interval::width).orElse(-1.0) < shared.get().width()) {
        widest = shared;
      }
    }
    return widest;
  }

  /** The widest of all its ranges. */
  public double widestDeg() {
    return windowsDeg.stream().mapToDouble(Interval::width).max().orElse(0);
  }

  /** The angle to hang it at: the middle of the widest stretch that drains well, else as stated. */
  public double hangDeg(Interval drainDeg) {
    return widestWithin(drainDeg).map(Interval::middle).orElseGet(this::statedDeg);
  }

  /** Usable less needed at an angle. */
  public Margin marginAt(double tiltDeg, UsableSpace space) {
    return new Margin(
        space.lengthMm() - side.alongMm(tiltDeg),
        space.widthMm() - neededWidthMm,
        space.depthMm() - side.uprightMm(tiltDeg));
  }
}
