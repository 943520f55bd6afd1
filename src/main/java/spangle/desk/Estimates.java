package spangle.desk;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import spangle.report.Allowance;
import spangle.report.Overtime;
import spangle.report.week.OvertimeWords;
import spangle.report.week.WeekTime;

/**
 * What a plan file keeps beside the plan: work sent out, material kept ready for rejects, and what
 * overtime would buy.
 */
final class Estimates {
  private Estimates() {}

  /** All of them; empty where there is nothing of the kind. */
  static Optional<JsonNode> kept(
      List<Charge> charges, List<Allowance> allowances, Overtime overtime, WeekTime time) {
    ObjectNode kept = JsonNodeFactory.instance.objectNode();
    Charge.kept(charges).ifPresent(sent -> kept.setAll((ObjectNode) sent));
    if (overtime.state() != Overtime.State.NOT_NEEDED) {
      kept.set("overtime", node(overtime, new OvertimeWords(overtime, time)));
    }
    ArrayNode rejects = JsonNodeFactory.instance.arrayNode();
    for (Allowance each : allowances) {
      rejects
          .addObject()
          .put("job", each.jobId())
          .put("part", each.partId())
          .put("ordered", each.ordered())
          .put("allowance_pct", each.percent())
          .put("allowance_pieces", each.pieces())
          .put("rework_planned", each.again())
          .put("left", each.left());
    }
    if (!rejects.isEmpty()) {
      kept.set("reject_allowance", rejects);
    }
    return kept.isEmpty() ? Optional.empty() : Optional.of(kept);
  }

  private static ObjectNode node(Overtime overtime, OvertimeWords words) {
    ObjectNode node = JsonNodeFactory.instance.objectNode();
    node.put("state", overtime.state().name().toLowerCase(Locale.ROOT).replace('_', '-'))
        .put("tried", overtime.tried())
        .put("lots_left_out", overtime.lotsOut())
        .put("lots_no_hours_help", overtime.beyondHours())
        .put("jobs_late_or_left_out", overtime.jobsLate());
    ArrayNode offers = node.putArray("offers");
    for (Overtime.Offer offer : overtime.offers()) {
      ObjectNode one = offers.addObject();
      one.put("words", words.offer(offer)).put("person_minutes", offer.costMin());
      ArrayNode hours = one.putArray("hours");
      for (Overtime.Hours each : offer.hours()) {
        ObjectNode stretch = hours.addObject();
        stretch.put("start_min", each.startMin()).put("end_min", each.endMin());
        each.lines().forEach(stretch.putArray("lines")::add);
        stretch.put("people", each.people());
      }
      one.put("lots_in", offer.lotsIn());
      ArrayNode gains = one.putArray("parts_in");
      for (Overtime.Gain gain : offer.gains()) {
        gains
            .addObject()
            .put("job", gain.jobId())
            .put("part", gain.label())
            .put("pieces", gain.pieces())
            .put("end_min", gain.endMin())
            .put("in_time", gain.inTime());
      }
      offer.jobsInTime().forEach(one.putArray("jobs_then_in_time")::add);
    }
    words.lines().forEach(node.putArray("words")::add);
    return node;
  }
}
