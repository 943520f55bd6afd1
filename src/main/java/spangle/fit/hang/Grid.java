package spangle.fit.hang;

/**
 * A carrier face in whole units, so that equality is exact: downwards in micrometres, across in
 * micrometres or, where hooks have a pitch, in hook places. Parts are rounded up and the face down,
 * so whatever fits here fits in millimetres too. Gaps are part of every piece, and the face is one
 * gap larger in return.
 */
final class Grid {
  private static final double UNITS_PER_MM = 1000;

  /** Far below a unit: keeps 300.0 mm from being 300000.00000000001 units. */
  private static final double NOISE = 1e-6;

  final CarrierFace face;
  final int faces;

  /** Right ends never lie beyond this; single kinds may be held to less. */
  final int width;

  final int height;
  final boolean rows;

  Grid(CarrierFace face) {
    this.face = face;
    this.faces = face.faces();
    this.rows = face.style() == CarrierFace.Style.ROWS;
    this.height = down(face.heightMm() * UNITS_PER_MM) + up(face.gapDownMm() * UNITS_PER_MM);
    double pitchMm = face.hookPitchMm();
    double acrossMm = face.widthMm() + face.gapAcrossMm();
    this.width = pitchMm > 0 ? up(acrossMm / pitchMm) : down(face.widthMm() * UNITS_PER_MM) + gap();
  }

  private int gap() {
    return up(face.gapAcrossMm() * UNITS_PER_MM);
  }

  /** Units across that a piece takes with its gap. */
  int across(double sizeMm) {
    double pitchMm = face.hookPitchMm();
    return pitchMm > 0
        ? Math.max(1, up((sizeMm + face.gapAcrossMm()) / pitchMm))
        : up(sizeMm * UNITS_PER_MM) + gap();
  }

  /**
   * Furthest right end, with its gap, of a piece of this size: its own right edge is then still on
   * the face. Negative when it is wider than the face.
   */
  int furthestEnd(double sizeMm) {
    double pitchMm = face.hookPitchMm();
    if (pitchMm <= 0) {
      return width;
    }
    double roomMm = face.widthMm() - sizeMm;
    return roomMm < -NOISE ? -1 : down(Math.max(0, roomMm) / pitchMm) + across(sizeMm);
  }

  /** Units downwards that a piece takes with its hook and the gap below it. */
  int drop(double sizeMm) {
    return up(face.hookDropMm() * UNITS_PER_MM)
        + up(sizeMm * UNITS_PER_MM)
        + up(face.gapDownMm() * UNITS_PER_MM);
  }

  /** Left edge of a piece, millimetres. */
  double leftMm(int x) {
    return face.hookPitchMm() > 0 ? x * face.hookPitchMm() : x / UNITS_PER_MM;
  }

  /** Upper edge of a piece below its hook, millimetres. */
  double topMm(int y) {
    return y / UNITS_PER_MM + face.hookDropMm();
  }

  private static int up(double units) {
    return (int) Math.ceil(units - NOISE);
  }

  private static int down(double units) {
    return (int) Math.floor(units + NOISE);
  }
}
