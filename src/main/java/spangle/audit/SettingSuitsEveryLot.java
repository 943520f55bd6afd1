package spangle.audit;

import spangle.plan.Lot;

/** Every lot of a batch may run at the batch's setting. */
final class SettingSuitsEveryLot extends Rule {
  SettingSuitsEveryLot() {
    super(
        "setting-suits-every-lot",
        "Every lot of a batch may run at the batch's setting.",
        "The dwell windows of a batch meet and its kinds of work may");
  }

  @Override
  void check(PlanView view, Findings findings) {
    for (BatchView batch : view.openBatches()) {
      int setting = batch.batch().setting();
      for (Lot lot : batch.lots()) {
        if (lot.dwells().stream().noneMatch(dwell -> dwell.setting() == setting)) {
          findings.add(
              lot.id(),
              "cannot run at "
                  + batch.line().settings().stream()
                      .filter(s -> s.index() == setting)
                      .findFirst()
                      .orElseThrow()
                      .name()
                  + ", the setting of "
                  + batch.batch().id());
        }
      }
    }
  }
}
