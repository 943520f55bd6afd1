package spangle.coating.liquid;

import java.util.ArrayList;
import java.util.List;
import spangle.measure.Limits;
import spangle.measure.MeasureException;
import spangle.measure.Numbers;

/**
 * Parts of a paint in mix order, base first. A ratio by mass and one by volume are two different
 * things, because the densities differ; which one it is always stands with it.
 *
 * @param parts as the data sheet gives them
 * @param basis by volume or by mass
 * @param densitiesKgL density of each part; needed by mass, may be empty by volume
 */
public record MixRatio(List<Double> parts, Basis basis, List<Double> densitiesKgL) {
  /** What the parts of a ratio are parts of. */
  public enum Basis {
    /** Litres to litres. */
    VOLUME,
    /** Kilograms to kilograms. */
    MASS
  }

  /** Nothing mixed: one pack. */
  public static final MixRatio ONE_PACK = new MixRatio(List.of(1.0), Basis.VOLUME, List.of());

  /** Checks the parts and copies the lists. */
  public MixRatio {
    if (parts.isEmpty() || parts.size() > 6) {
      throw new MeasureException(parts.toString(), "a mix ratio", "write it like 4:1");
    }
    for (double part : parts) {
      Limits.between(part, 0.001, 1000, "a part of a mix", "");
    }
    for (double density : densitiesKgL) {
      Limits.between(density, 0.5, 5, "a paint density", "kg/l");
    }
    boolean each = densitiesKgL.size() == parts.size();
    if (!each && (basis == Basis.MASS || !densitiesKgL.isEmpty())) {
      throw new MeasureException(
          densitiesKgL.toString(),
          "a density for each of " + parts.size() + " parts",
          "a ratio by mass needs them, in kg/l from the data sheets, base first");
    }
    parts = List.copyOf(parts);
    densitiesKgL = List.copyOf(densitiesKgL);
  }

  /**
   * Reads {@code 4:1}.
   *
   * @throws MeasureException when it is no ratio
   */
  public static List<Double> readParts(String text) {
    List<Double> parts = new ArrayList<>();
    for (String part : text.split(":", -1)) {
      parts.add(Numbers.parse(part));
    }
    return parts;
  }

  /** Litres of each part in one litre of the mixture, adding up to 1. */
  public List<Double> volumeShares() {
    return shares(basis == Basis.VOLUME);
  }

  /**
   * Kilograms of each part in one kilogram of the mixture, adding up to 1.
   *
   * @throws MeasureException when the ratio is by volume and no densities are known
   */
  public List<Double> massShares() {
    if (basis == Basis.VOLUME && densitiesKgL.isEmpty()) {
      throw new MeasureException("", "a ratio by mass", "give the density of each part");
    }
    List<Double> masses = new ArrayList<>();
    for (int i = 0; i < parts.size(); i++) {
      masses.add(basis == Basis.MASS ? parts.get(i) : parts.get(i) * densitiesKgL.get(i));
    }
    return normal(masses);
  }

  private List<Double> shares(boolean plain) {
    List<Double> litres = new ArrayList<>();
    for (int i = 0; i < parts.size(); i++) {
      litres.add(plain ? parts.get(i) : parts.get(i) / densitiesKgL.get(i));
    }
    return normal(litres);
  }

  private static List<Double> normal(List<Double> amounts) {
    double sum = amounts.stream().mapToDouble(Double::doubleValue).sum();
    return amounts.stream().map(amount -> amount / sum).toList();
  }
}
