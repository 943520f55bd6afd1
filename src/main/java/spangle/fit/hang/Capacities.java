package spangle.fit.hang;

/** Pieces of one kind per carrier: the least of what room, mass and hooks allow. */
final class Capacities {
  private Capacities() {}

  static HangCapacity of(CarrierFace face, HangItem item) {
    boolean bulk = face.style() == CarrierFace.Style.BULK;
    int byRoom = bulk ? byVolume(face, item) : byRoom(face, item);
    int byMass = Limits.times(face.maxMassKg(), item.massKg());
    int byHooks =
        bulk || item.hooksPerPiece() == 0 || face.maxHooks() == Integer.MAX_VALUE
            ? Integer.MAX_VALUE
            : face.maxHooks() / item.hooksPerPiece();
    int pieces = Math.min(byRoom, Math.min(byMass, byHooks));
    HangLimit limit;
    if (byRoom == 0) {
      limit = HangLimit.DOES_NOT_HANG;
    } else if (pieces == byRoom) {
      limit = bulk ? HangLimit.VOLUME : HangLimit.ROOM;
    } else {
      limit = pieces == byMass ? HangLimit.MASS : HangLimit.HOOKS;
    }
    return new HangCapacity(pieces, limit, byRoom, byMass, byHooks);
  }

  private static int byVolume(CarrierFace face, HangItem item) {
    return Limits.goesIn(face, item)
        ? Limits.times(Limits.usableVolumeMm3(face), Limits.envelopeMm3(item))
        : 0;
  }

  private static int byRoom(CarrierFace face, HangItem item) {
    Grid grid = new Grid(face);
    Kind kind = new Kind(grid, item);
    return kind.hangs() ? OneKind.perCarrier(grid, kind) : 0;
  }
}
