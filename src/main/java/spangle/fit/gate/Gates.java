package spangle.fit.gate;

import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;

/** Asks every gate. No due date opens one. */
public final class Gates {
  private static final List<Function<GateCase, GateState>> ZINC =
      List.of(
          SteelGates::material,
          WeldGates::unknown,
          HollowGates::hollow,
          WeldGates::overlaps,
          WeldGates::pockets,
          HollowGates::floating,
          WeldGates::movingParts,
          WeldGates::soldered,
          SteelGates::strong,
          SteelGates::tightBend,
          SteelGates::ratio,
          SteelGates::distortion);

  private Gates() {}

  /** The states of all gates that concern a part, in the order of {@link Gate}. */
  public static List<GateState> of(GateCase part) {
    Stream<Function<GateCase, GateState>> asked =
        part.zinc()
            ? Stream.concat(ZINC.stream(), Stream.of(HeatGate::heat))
            : Stream.of(HeatGate::heat);
    return asked.map(gate -> gate.apply(part)).toList();
  }
}
