package spangle.intake.brief;

import java.util.List;
import java.util.Optional;
import spangle.intake.week.Job;
import spangle.intake.week.PartLine;
import spangle.intake.week.WeekInput;
import spangle.plan.Held;
import spangle.plan.PartFacts;

/**
 * One part of a week, measured and before its gates, without lots, loads or ovens: what a question
 * about the part alone needs.
 *
 * @param input the week as read
 * @param part the measured part
 * @param gates how its gates stand and how it goes into the kettle
 * @param shut everything that keeps it out of a plan, shut gates among it
 */
public record AskedPart(WeekInput input, PartFacts part, PartGates gates, List<Held> shut) {
  /** Copies the list. */
  public AskedPart {
    shut = List.copyOf(shut);
  }

  /** Measures one row; empty where it gives too little to measure it. */
  public static Optional<AskedPart> of(WeekInput input, Job job, PartLine line) {
    return PartMeasurer.measure(input, job, line)
        .map(
            part -> {
              GateStep.Outcome outcome = new GateStep(input).ask(line, part);
              return new AskedPart(input, part, outcome.gates(), outcome.shut());
            });
  }
}
