package spangle.desk;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import spangle.intake.brief.PreparedWeek;
import spangle.intake.week.Hauling;
import spangle.intake.week.ShopLine;
import spangle.plan.Lot;
import spangle.plan.Plan;
import spangle.plan.json.PlanFile;

/**
 * What another firm asks for the work a plan sends to it.
 *
 * @param lineId its line in the shop file
 * @param firm whose line it is, in words; may be empty
 * @param kg mass of the work on its trucks, pallets not counted
 * @param perKg money for a kilogram; 0 where the shop file does not say
 */
public record Charge(String lineId, String firm, double kg, double perKg) {
  private static final String KEY = "sent_out";

  /** Money for all of it; 0 where no price is known. */
  public double money() {
    return kg * perKg;
  }

  /** Charges of a plan, one for each line of another firm that gets work. */
  static List<Charge> of(PreparedWeek week, Plan plan) {
    Map<String, Double> mass = new HashMap<>();
    for (Lot lot : week.brief().lots()) {
      mass.put(lot.id(), lot.massKg());
    }
    List<Charge> charges = new ArrayList<>();
    for (ShopLine line : week.input().shop().lines()) {
      Optional<Hauling> hauling = line.hauling();
      double kg =
          plan.batches().stream()
              .filter(b -> b.lineId().equals(line.id()))
              .flatMap(b -> b.loads().stream())
              .flatMap(l -> l.lotIds().stream())
              .mapToDouble(id -> mass.getOrDefault(id, 0.0))
              .sum();
      if (hauling.isPresent() && kg > 0) {
        charges.add(new Charge(line.id(), hauling.get().firm(), kg, hauling.get().chargePerKg()));
      }
    }
    return charges;
  }

  /** As it is kept in a plan file; empty where nothing is sent out. */
  static Optional<JsonNode> kept(List<Charge> charges) {
    if (charges.isEmpty()) {
      return Optional.empty();
    }
    ObjectNode kept = JsonNodeFactory.instance.objectNode();
    ArrayNode all = kept.putArray(KEY);
    for (Charge charge : charges) {
      all.addObject()
          .put("line", charge.lineId())
          .put("firm", charge.firm())
          .put("kg", charge.kg())
          .put("charge_per_kg", charge.perKg());
    }
    return Optional.of(kept);
  }

  /** The charges a plan file keeps; none where it was made by a version that kept none. */
  static List<Charge> of(PlanFile file) {
    List<Charge> charges = new ArrayList<>();
    for (JsonNode each : file.estimates().map(e -> e.path(KEY)).map(List::of).orElse(List.of())) {
      for (JsonNode charge : each) {
        charges.add(
            new Charge(
                charge.path("line").asText(),
                charge.path("firm").asText(),
                charge.path("kg").asDouble(),
                charge.path("charge_per_kg").asDouble()));
      }
    }
    return charges;
  }
}
