package spangle.audit;

import java.util.List;

/** Before a batch the oven has had the minutes it needs to reach the new setting. */
final class SettingChangeMade extends Rule {
  SettingChangeMade() {
    super(
        "setting-change-made",
        "Before a batch the oven has had the minutes it needs to come to the new setting.",
        "");
  }

  @Override
  void check(PlanView view, Findings findings) {
    for (List<BatchView> row : view.byMachine().values()) {
      int setting = row.get(0).machine().initialSetting();
      for (BatchView batch : row) {
        int needed = batch.line().settingChange().minutes(setting, batch.batch().setting());
        long given = (long) batch.batch().startMin() - batch.batch().setupStartMin();
        if (!batch.frozen() && given < needed) {
          findings.add(
              batch.batch().id(),
              "has " + given + " min of set-up; the change of setting takes " + needed);
        }
        setting = batch.batch().setting();
      }
    }
  }
}
