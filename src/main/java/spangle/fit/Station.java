package spangle.fit;

/**
 * One station a part passes on its way.
 *
 * @param kind what happens there
 * @param space what it takes
 * @param maxMassKg most it bears, work and jig together; infinite where nothing is said
 */
public record Station(Kind kind, UsableSpace space, double maxMassKg) {
  /** A station of which no greatest mass is known. */
  public Station(Kind kind, UsableSpace space) {
    this(kind, space, Double.POSITIVE_INFINITY);
  }

  /** What happens at a station. */
  public enum Kind {
    /** Degreasing, rinsing, pickling, fluxing: a tank of cold or warm liquid. */
    PRETREATMENT,
    /** Drying or preheating before the zinc. */
    DRYER,
    /** The zinc. */
    KETTLE,
    /** Water after the zinc. */
    QUENCH,
    /** A room, a door, a booth, an oven. */
    ROOM
  }

  /** Its name. */
  public String name() {
    return space.name();
  }
}
