package spangle.audit;

import spangle.fit.hang.CarrierFace;
import spangle.plan.Lot;

/** A load takes no more hooks than its carrier has. */
final class HooksEnough extends Rule {
  HooksEnough() {
    super("hooks-enough", "A load takes no more hooks than its carrier has.", "");
  }

  @Override
  void check(PlanView view, Findings findings) {
    for (LoadView load : view.openLoads()) {
      CarrierFace face = load.carrier().face();
      if (face.style() == CarrierFace.Style.BULK) {
        continue;
      }
      long hooks = 0;
      for (Lot lot : load.lots()) {
        hooks += (long) lot.pieces() * lot.item().hooksPerPiece();
      }
      if (hooks > face.maxHooks()) {
        findings.add(
            load.id(),
            "takes " + hooks + " hooks; " + load.carrier().id() + " has " + face.maxHooks());
      }
    }
  }
}
