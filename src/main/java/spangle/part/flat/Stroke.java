package spangle.part.flat;

import java.util.ArrayList;
import java.util.List;

/**
 * One drawn entity: curves one after the other.
 *
 * @param curves its curves, each beginning where the one before ends
 * @param closed whether it closes on itself
 * @param role what its layer or line kind says it is
 * @param label what and where it is, for the person: {@code line on layer 'cut', line 120}
 */
public record Stroke(List<Curve> curves, boolean closed, Role role, String label) {
  /** What a line is for. */
  public enum Role {
    /** To be cut, as far as anybody says. */
    CUT,
    /** Drawn on a layer for bends. */
    BEND,
    /** Drawn broken: a bend where it runs right across, else a help line. */
    BROKEN,
    /** A mark, a dimension, a frame: nothing to be cut. */
    MARK
  }

  /** Copies the list. */
  public Stroke {
    curves = List.copyOf(curves);
  }

  /** One curve by itself. */
  public static Stroke of(Curve curve, Role role, String label) {
    boolean whole = curve instanceof Arc arc && arc.whole();
    return new Stroke(List.of(curve), whole, role, label);
  }

  /** The stroke moved, turned, mirrored or scaled. */
  public Stroke transformed(Affine affine) {
    List<Curve> moved = new ArrayList<>(curves.size());
    for (Curve curve : curves) {
      moved.add(curve.transformed(affine));
    }
    return new Stroke(moved, closed, role, label);
  }

  /** The same stroke as something else. */
  public Stroke as(Role other) {
    return new Stroke(curves, closed, other, label);
  }
}
