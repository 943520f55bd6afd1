package spangle.report;

import java.util.List;
import java.util.Optional;

/**
 * What the floor must know of a lot beyond the plan. Texts may be empty where nothing is to be
 * said.
 *
 * @param lotId the lot
 * @param thicknessMm governing thickness
 * @param hook hook or wire to use
 * @param faceOut which side is the show face
 * @param masks what is plugged or masked, with counts
 * @param film film wanted, in words: "60 to 90 um"
 * @param gates how its gates stand, line by line
 * @param zinc only for zinc legs
 */
public record LotNote(
    String lotId,
    double thicknessMm,
    String hook,
    String faceOut,
    List<String> masks,
    String film,
    List<String> gates,
    Optional<ZincNote> zinc) {
  /** Copies the lists. */
  public LotNote {
    masks = List.copyOf(masks);
    gates = List.copyOf(gates);
  }

  /**
   * What the kettle crew must know of a lot.
   *
   * @param attitude how it goes in, in words: "straight", "tilted 25 to 35 degrees", "two dips,
   *     overlap 300 mm"
   * @param tiltDeg angle to hang it at; 0 for level
   * @param dips 1 or 2
   * @param special true where it goes in only tilted or in two dips
   * @param steelClass the steel's reactivity in words
   * @param quench false for work that is painted afterwards
   * @param hollow true where vents and drains must be seen open by two people
   * @param limits coating asked for, one for each row of the standard that judges a wall of it
   * @param readings pieces to measure
   * @param drawings how one piece goes in; empty where it is not drawn
   */
  public record ZincNote(
      String attitude,
      double tiltDeg,
      int dips,
      boolean special,
      String steelClass,
      boolean quench,
      boolean hollow,
      List<CoatLimit> limits,
      int readings,
      Optional<Drawings> drawings) {
    /** Copies the list. */
    public ZincNote {
      limits = List.copyOf(limits);
    }
  }

  /**
   * Coating asked for on the walls of one row of the standard.
   *
   * @param walls the thinnest of them, {@code 8 mm}; empty where one row judges all walls
   * @param meanUm mean thickness asked for
   * @param localUm least thickness asked for at one place
   */
  public record CoatLimit(String walls, double meanUm, double localUm) {
    /** The walls as the head of a sentence: {@code 8 mm: }; empty where all are meant. */
    public String head() {
      return walls.isEmpty() ? "" : walls + ": ";
    }
  }

  /**
   * How one piece goes in, each one svg element.
   *
   * @param alone for the width of a sheet
   * @param beside for half of it, beside a hang pattern
   */
  public record Drawings(String alone, String beside) {}
}
