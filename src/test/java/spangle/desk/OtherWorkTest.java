package spangle.desk;

import static org.assertj.core.api.Assertions.assertThat;
import static spangle.plan.PlanFixtures.powderLot;
import static spangle.plan.PlanFixtures.yard;

import org.junit.jupiter.api.Test;
import spangle.plan.Finish;
import spangle.plan.FinishKind;
import spangle.plan.Lot;
import spangle.plan.LotBuilder;
import spangle.plan.Visit;

/** A grey lot that hangs 10 minutes, and what may become of it. */
class OtherWorkTest {
  private static final OtherWork WORK = new OtherWork(yard().lots(powderLot("A")).build());

  private static Lot made(LotBuilder lot) {
    return yard().lots(lot).build().lots().get(0);
  }

  private static Lot hanging(int fixedMin, double more) {
    return made(
        powderLot("A")
            .visits(
                new Visit("hang", fixedMin, more),
                new Visit("booth", 5, 0),
                new Visit("unload", 5, 0)));
  }

  @Test
  void theStationAndItsMinutesAreNamed() {
    assertThat(WORK.words(hanging(10, 0), hanging(10, 14.6)))
        .isEqualTo("hang takes longer now (25 min for it, 10 before)");
    assertThat(WORK.words(hanging(25, 0), hanging(10, 0)))
        .isEqualTo("hang takes less time now (10 min for it, 25 before)");
  }

  @Test
  void anotherFinishIsNamed() {
    Lot grey = made(powderLot("A"));
    Finish was = grey.finish();
    Finish blue = new Finish(9, "blue", "deep blue", FinishKind.POWDER, "powder-blue");
    assertThat(WORK.words(grey, made(powderLot("A").finish(blue))))
        .isEqualTo("its pieces need other work now: deep blue");
    Finish again = new Finish(9, "grey-2", was.name(), was.kind(), was.materialId());
    assertThat(WORK.words(grey, made(powderLot("A").finish(again))))
        .isEqualTo("its pieces need other work now");
  }
}
