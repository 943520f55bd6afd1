package spangle.coating.heat;

import java.util.Locale;

/** The two metals of a finishing shop, with what heating them takes. */
public enum Metal {
  /**
   * Carbon steel: 7850 kg/m3; specific heat by EN 1993-1-2, 3.4.1.2; constant 490 J/kg K is its
   * mean from 20 to 200 C.
   */
  STEEL(7850, 490) {
    @Override
    public double specificHeatJKgK(double celsius) {
      if (celsius < STEEL_FIRST_RANGE_ENDS_C) {
        return 425 + celsius * (0.773 + celsius * (-1.69e-3 + celsius * 2.22e-6));
      }
      return 666 + 13002 / (738 - celsius);
    }

    @Override
    double enthalpyJKg(double celsius) {
      double low = Math.min(celsius, STEEL_FIRST_RANGE_ENDS_C);
      double first = low * (425 + low * (0.773 / 2 + low * (-1.69e-3 / 3 + low * (2.22e-6 / 4))));
      return celsius <= STEEL_FIRST_RANGE_ENDS_C
          ? first
          : first
              + 666 * (celsius - STEEL_FIRST_RANGE_ENDS_C)
              + 13002 * Math.log((738 - STEEL_FIRST_RANGE_ENDS_C) / (738 - celsius));
    }
  },
  /**
   * Aluminium: 2700 kg/m3; specific heat 903 + 0.41 T by EN 1999-1-2 (from memory); constant 948
   * J/kg K is its mean from 20 to 200 C.
   */
  ALUMINIUM(2700, 948) {
    @Override
    public double specificHeatJKgK(double celsius) {
      return 903 + 0.41 * celsius;
    }

    @Override
    double enthalpyJKg(double celsius) {
      return celsius * (903 + 0.41 / 2 * celsius);
    }
  };

  /** Above this the steel polynomial of EN 1993-1-2 gives way to its second branch. */
  private static final double STEEL_FIRST_RANGE_ENDS_C = 600;

  private final double densityKgM3;
  private final double constantHeatJKgK;

  Metal(double densityKgM3, double constantHeatJKgK) {
    this.densityKgM3 = densityKgM3;
    this.constantHeatJKgK = constantHeatJKgK;
  }

  /** Density, kg/m3. */
  public double densityKgM3() {
    return densityKgM3;
  }

  /** One specific heat for the whole range of a cure oven, J/kg K. */
  public double constantHeatJKgK() {
    return constantHeatJKgK;
  }

  /** Specific heat at a temperature, J/kg K; steel up to 735 C. */
  public abstract double specificHeatJKgK(double celsius);

  /** Heat above 0 C, J/kg. */
  abstract double enthalpyJKg(double celsius);

  /** Heat to bring one kg from one temperature to another, J/kg; below zero when it cools. */
  public double heatJKg(double fromC, double toC) {
    return enthalpyJKg(toC) - enthalpyJKg(fromC);
  }

  /** Mean specific heat between two different temperatures, J/kg K. */
  public double meanHeatJKgK(double fromC, double toC) {
    return heatJKg(fromC, toC) / (toC - fromC);
  }

  /** The metal in lower case, as people write it. */
  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }
}
