package spangle.fit.gate;

import spangle.measure.Figures;

/** Rubber, plastic, batteries, gas springs and the like in the oven or the kettle. */
final class HeatGate {
  private HeatGate() {}

  static GateState heat(GateCase part) {
    GateCase.Heat heat = part.heat();
    if (heat.sensitive() != Known.YES) {
      return GateState.clear(Gate.HEAT, "nothing heat-sensitive told");
    }
    if (heat.limitC().isPresent() && heat.limitC().getAsDouble() >= heat.hottestC()) {
      return GateState.clear(
          Gate.HEAT, "it bears " + Figures.fixed(heat.limitC().getAsDouble(), 0) + " C");
    }
    String bears =
        heat.limitC().isPresent()
            ? ", it bears " + Figures.fixed(heat.limitC().getAsDouble(), 0) + " C"
            : "";
    return GateState.shutUnless(
        part.record("heat"),
        Gate.HEAT,
        "heat-sensitive",
        (heat.what().isBlank() ? "heat-sensitive" : heat.what())
            + ": it would be heated to "
            + Figures.fixed(heat.hottestC(), 0)
            + " C"
            + bears,
        "the heat-sensitive item taken off, or a liquid paint that dries below its limit");
  }
}
