package spangle.desk;

import java.util.List;
import java.util.Optional;
import spangle.equipment.KettleProfile;
import spangle.fit.FitAnswer;
import spangle.fit.gate.GateState;
import spangle.fit.vent.HolePlace;
import spangle.fit.vent.VentAnswer;

/**
 * Does a part of a week go through its stations, and how.
 *
 * @param job the order
 * @param part the part
 * @param name words
 * @param answer the whole way; for duplex work the kettle line's
 * @param kettle the kettle; empty for painted work
 * @param stations every station alone
 * @param gates how the gates stand
 * @param questions what else keeps it out of a plan: a doubt about its row nobody has answered
 * @param hollows holes of every hollow member, for the attitude it hangs in
 * @param validity until when and for which bath it holds
 */
public record PartFit(
    String job,
    String part,
    String name,
    FitAnswer answer,
    Optional<KettleProfile> kettle,
    List<StationFit> stations,
    List<GateState> gates,
    List<String> questions,
    List<HollowHoles> hollows,
    String validity) {
  /** Copies the lists. */
  public PartFit {
    stations = List.copyOf(stations);
    gates = List.copyOf(gates);
    questions = List.copyOf(questions);
    hollows = List.copyOf(hollows);
  }

  /** Whether it may not be hung yet: a gate is shut or a question open. */
  public boolean shut() {
    return !questions.isEmpty() || gates.stream().anyMatch(GateState::isShut);
  }

  /** Whether a person must act: it does not go in, a gate is shut, or a question is open. */
  public boolean waits() {
    return answer.dips() == 0 || shut();
  }

  /**
   * One station alone.
   *
   * @param name its name in the shop
   * @param answer whether the part goes into it
   */
  public record StationFit(String name, FitAnswer answer) {}

  /**
   * What one kind of hollow member needs.
   *
   * @param count members alike
   * @param lengthMm length of one
   * @param need all rules
   * @param places where the holes go as it hangs
   */
  public record HollowHoles(int count, double lengthMm, VentAnswer need, List<HolePlace> places) {
    /** Copies the list. */
    public HollowHoles {
      places = List.copyOf(places);
    }
  }
}
