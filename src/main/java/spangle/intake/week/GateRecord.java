package spangle.intake.week;

import java.util.List;
import java.util.Locale;

/**
 * A gate somebody has opened.
 *
 * @param gate which
 * @param jobId the job
 * @param partId the part
 * @param openedBy who, in the order written
 * @param at when, as written; without it the record opens nothing
 * @param note what was seen; without it the record opens nothing
 */
public record GateRecord(
    Gate gate, String jobId, String partId, List<String> openedBy, String at, String note) {

  /** Gates a person may open with a signature. */
  public enum Gate {
    /** Holes of hollow members were seen. */
    VENTS,
    /** An overlap was found open. */
    OVERLAP,
    /** Heat will not harm it. */
    HEAT,
    /** Reactive or strong steel is accepted by the customer. */
    STEEL,
    /** Moving parts are taken apart or have play. */
    MOVING_PARTS,
    /** Area, mass and thickness were measured. */
    SIZE,
    /** Pockets drain in the hung attitude. */
    POCKETS,
    /** Holes smaller than the largest rule are released by the galvanizer. */
    HOLES,
    /** Air that would float it can leave. */
    FLOATING,
    /** Thin and thick welded together: warping is accepted. */
    THICKNESS_RATIO,
    /** Thin flat sheet: waviness is accepted. */
    DISTORTION;

    /** The word in files. */
    public String word() {
      return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
  }

  /** Copies the list. */
  public GateRecord {
    openedBy = List.copyOf(openedBy);
  }
}
