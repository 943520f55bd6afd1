package spangle.plan.bound;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import spangle.fit.hang.CarrierFace;
import spangle.fit.hang.HangItem;
import spangle.plan.CarrierSpec;
import spangle.plan.Dwell;
import spangle.plan.LineSpec;
import spangle.plan.Lot;
import spangle.plan.MachineSpec;
import spangle.plan.Visit;

/** A lot that is not frozen, with the least it takes of a carrier and of a machine. */
final class OpenLot {
  /** Mass, room and hooks of a carrier. */
  static final int RESOURCES = 3;

  /** Share of a basket's volume that thrown-in envelopes fill, as the hanging rules have it. */
  private static final double BULK_FILL = 0.6;

  final Lot lot;
  final LineSpec line;
  final List<CarrierSpec> carriers;
  final List<MachineSpec> machines;

  /** One bit per machine of the line it may go in, and per carrier of the line it may hang on. */
  final long machineBits;

  private final BitSet carrierBits = new BitSet();

  /** Shortest and longest dwell by setting; a shortest of -1 where it cannot run. */
  final int[] dwellMin;

  final int[] dwellMax;

  /** Shortest dwell over all settings. */
  final int dwell;

  /** Least share of a carrier by mass, room and hooks. */
  final double massShare;

  final double roomShare;
  final double hookShare;

  /**
   * Least share of a machine by places and by mass, when a load counts by what it takes of the
   * carrier's mass, room or hooks. The three are never mixed: what one lot takes of the room and
   * another of the mass may add up to more than one carrier.
   */
  final double[] placesShare = {1, 1, 1};

  final double[] machineMassShare = {1, 1, 1};

  /** Least share of a machine that a whole load with this lot in it takes, by places. */
  final double loadPlacesShare;

  OpenLot(Lot lot, LineSpec line, List<CarrierSpec> all) {
    this.lot = lot;
    this.line = line;
    this.carriers =
        all.stream()
            .filter(carrier -> carrier.lineId().equals(line.id()))
            .filter(carrier -> lot.carriers().contains(carrier.id()))
            .toList();
    this.machines = line.machines().stream().filter(m -> lot.machines().contains(m.id())).toList();
    long bits = 0;
    for (int m = 0; m < line.machines().size(); m++) {
      bits |= lot.machines().contains(line.machines().get(m).id()) ? 1L << m : 0;
    }
    this.machineBits = bits;
    for (int c = 0; c < all.size(); c++) {
      carrierBits.set(c, carriers.contains(all.get(c)));
    }
    int settings = line.settings().size();
    dwellMin = new int[settings];
    dwellMax = new int[settings];
    Arrays.fill(dwellMin, -1);
    int shortest = Integer.MAX_VALUE;
    for (Dwell each : lot.dwells()) {
      if (each.setting() >= 0 && each.setting() < settings && each.minMin() <= each.maxMin()) {
        dwellMin[each.setting()] = each.minMin();
        dwellMax[each.setting()] = each.maxMin();
        shortest = Math.min(shortest, each.minMin());
      }
    }
    this.dwell = shortest == Integer.MAX_VALUE ? 0 : shortest;
    double mass = 1;
    double room = 1;
    double hooks = 1;
    double loadPlaces = 1;
    for (CarrierSpec carrier : carriers) {
      double byMass = lot.alone() ? 1 : massOn(carrier);
      double byRoom = lot.alone() ? 1 : roomOn(carrier);
      double byHooks = lot.alone() ? 1 : hooksOn(carrier);
      mass = Math.min(mass, byMass);
      room = Math.min(room, byRoom);
      hooks = Math.min(hooks, byHooks);
      double[] by = {byMass, byRoom, byHooks};
      for (MachineSpec machine : machines) {
        double whole = share(carrier.floorUnits(), machine.capacityUnits());
        loadPlaces = Math.min(loadPlaces, whole);
        for (int k = 0; k < by.length; k++) {
          double kg = lot.massKg() + by[k] * carrier.ownMassKg();
          placesShare[k] = Math.min(placesShare[k], by[k] * whole);
          machineMassShare[k] = Math.min(machineMassShare[k], share(kg, machine.maxMassKg()));
        }
      }
    }
    this.massShare = mass;
    this.roomShare = room;
    this.hookShare = hooks;
    this.loadPlacesShare = loadPlaces;
  }

  private static double share(double part, double whole) {
    if (part <= 0 || Double.isInfinite(whole)) {
      return 0;
    }
    return whole <= 0 ? 1 : Math.min(1, part / whole);
  }

  private double massOn(CarrierSpec carrier) {
    return share(lot.pieces() * lot.item().massKg(), carrier.face().maxMassKg());
  }

  /**
   * Area of the pieces, each with the gap it keeps to the right and below and the hook above it, of
   * the faces with one gap more each way. For a basket the volume.
   */
  private double roomOn(CarrierSpec carrier) {
    CarrierFace face = carrier.face();
    HangItem item = lot.item();
    if (face.style() == CarrierFace.Style.BULK) {
      double volume = item.acrossMm() * item.dropMm() * Math.max(1, item.depthMm());
      return share(
          lot.pieces() * volume, face.widthMm() * face.heightMm() * face.depthMm() * BULK_FILL);
    }
    double piece = roomOf(face, item.acrossMm(), item.dropMm());
    if (item.mayTurn()) {
      piece = Math.min(piece, roomOf(face, item.dropMm(), item.acrossMm()));
    }
    double faces =
        face.faces() * (face.widthMm() + face.gapAcrossMm()) * (face.heightMm() + face.gapDownMm());
    return share(lot.pieces() * piece, faces);
  }

  private static double roomOf(CarrierFace face, double acrossMm, double dropMm) {
    return (acrossMm + face.gapAcrossMm()) * (dropMm + face.hookDropMm() + face.gapDownMm());
  }

  private double hooksOn(CarrierSpec carrier) {
    CarrierFace face = carrier.face();
    if (face.style() == CarrierFace.Style.BULK || face.maxHooks() == Integer.MAX_VALUE) {
      return 0;
    }
    return share((double) lot.pieces() * lot.item().hooksPerPiece(), face.maxHooks());
  }

  /** The largest share of a machine it takes, however it is counted. */
  double largestShare() {
    double most = 0;
    for (int k = 0; k < RESOURCES; k++) {
      most = Math.max(most, Math.max(placesShare[k], machineMassShare[k]));
    }
    return most;
  }

  /** Whether both may hang on a carrier of the same kind. */
  boolean sharesCarrierKind(OpenLot other) {
    return carrierBits.intersects(other.carrierBits);
  }

  /** Whether it stops at that station. */
  boolean visits(String stationId) {
    return minutesAt(stationId) > 0;
  }

  /** Minutes a load with nothing but it needs there; a fuller one needs no fewer. */
  int minutesAt(String stationId) {
    return minutesAt(lot, stationId);
  }

  static int minutesAt(Lot lot, String stationId) {
    int fixed = 0;
    double variable = 0;
    for (Visit visit : lot.visits()) {
      if (visit.stationId().equals(stationId)) {
        fixed = Math.max(fixed, visit.fixedMin());
        variable += visit.variableMin();
      }
    }
    return fixed + (int) Math.ceil(variable - 1e-9);
  }

  /** The settings at which it can run. */
  List<Integer> settings() {
    List<Integer> settings = new ArrayList<>();
    for (int s = 0; s < dwellMin.length; s++) {
      if (dwellMin[s] >= 0) {
        settings.add(s);
      }
    }
    return settings;
  }
}
