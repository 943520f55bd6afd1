package spangle.bench.plain;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.optaplanner.core.api.domain.entity.PlanningEntity;
import org.optaplanner.core.api.domain.lookup.PlanningId;
import org.optaplanner.core.api.domain.variable.PlanningListVariable;
import spangle.plan.clock.LineFacts;
import spangle.plan.clock.MachineFacts;

/** An oven with the lots it takes, in order. */
@PlanningEntity
public class PlainOven {
  @PlanningListVariable(valueRangeProviderRefs = "lots")
  private List<PlainLot> lots = new ArrayList<>();

  private @Nullable LineFacts line;
  private @Nullable MachineFacts machine;
  private @Nullable String id;

  /** For cloning. */
  PlainOven() {}

  PlainOven(LineFacts line, MachineFacts machine) {
    this.line = line;
    this.machine = machine;
    this.id = machine.spec.id();
  }

  /** Its name. */
  @PlanningId
  public @Nullable String getId() {
    return id;
  }

  /** Its lots. */
  public List<PlainLot> getLots() {
    return lots;
  }

  /** Called by OptaPlanner only. */
  public void setLots(List<PlainLot> lots) {
    this.lots = lots;
  }

  LineFacts line() {
    return Objects.requireNonNull(line);
  }

  MachineFacts machine() {
    return Objects.requireNonNull(machine);
  }
}
