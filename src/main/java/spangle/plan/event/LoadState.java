package spangle.plan.event;

import java.util.OptionalInt;

/**
 * Where a load stands.
 *
 * @param load number of the load
 * @param batch the batch or dip it belongs to
 * @param stage how far it has come
 * @param hungMin when it was reported hung
 * @param startedMin when it was reported in the machine
 * @param doneMin when it was reported finished
 * @param suspect why it must be looked at before it counts as good; empty where nothing is wrong
 */
public record LoadState(
    String load,
    String batch,
    Stage stage,
    OptionalInt hungMin,
    OptionalInt startedMin,
    OptionalInt doneMin,
    String suspect) {

  static LoadState planned(String load, String batch) {
    return new LoadState(
        load,
        batch,
        Stage.PLANNED,
        OptionalInt.empty(),
        OptionalInt.empty(),
        OptionalInt.empty(),
        "");
  }

  LoadState at(Stage next, int minute) {
    OptionalInt when = OptionalInt.of(minute);
    return new LoadState(
        load,
        batch,
        next,
        next == Stage.HUNG ? when : hungMin,
        next == Stage.IN_PROCESS ? when : startedMin,
        next == Stage.DONE ? when : doneMin,
        suspect);
  }

  /** Off its carrier again, as if it had never hung. */
  LoadState takenDown() {
    return planned(load, batch);
  }

  LoadState suspected(String why) {
    return new LoadState(load, batch, stage, hungMin, startedMin, doneMin, why);
  }
}
