package spangle.intake.week;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * What the shop can put on metal.
 *
 * @param powders powders
 * @param paints liquid paints
 * @param zinc zinc; empty where there is no kettle
 */
public record Catalogue(List<Powder> powders, List<Paint> paints, Optional<Zinc> zinc) {
  /** Copies the lists. */
  public Catalogue {
    powders = List.copyOf(powders);
    paints = List.copyOf(paints);
  }

  /** Powders and paints. */
  public Stream<Coating> coatings() {
    return Stream.concat(powders.stream(), paints.stream());
  }

  /** The powder or paint of that id. */
  public Optional<Coating> coating(String id) {
    return coatings().filter(c -> c.id().equals(id)).findFirst();
  }
}
