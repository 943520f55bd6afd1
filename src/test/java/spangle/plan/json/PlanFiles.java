package spangle.plan.json;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.util.List;
import java.util.Optional;
import spangle.plan.Brief;
import spangle.plan.Finding;
import spangle.plan.Kit;
import spangle.plan.Plan;
import spangle.plan.PlanFixtures;
import spangle.plan.PlannedBatch;
import spangle.plan.Supply;
import spangle.plan.bound.WeekBounds;

/** Plan files for tests. */
public final class PlanFiles {
  private PlanFiles() {}

  /** One with something in every list. */
  public static PlanFile full() {
    PlannedBatch frozen = PlanFixtures.simpleBake("oven-1 #1", "P01", 360, "A");
    Brief brief =
        PlanFixtures.yard()
            .lots(
                PlanFixtures.powderLot("A").kits("cabinet"),
                PlanFixtures.powderLot("B").after("Z", 30, Integer.MAX_VALUE),
                PlanFixtures.zincLot("Z").earlierLeg(),
                PlanFixtures.powderLot("C"))
            .kit(
                new Kit(
                    "cabinet",
                    "pump cabinet",
                    2,
                    2280,
                    1,
                    List.of(new Kit.KitLine("p", "j", 2, 0))))
            .supply("powder-grey", new Supply.Arrival(0, 12.5, "K1"))
            .frozen(frozen)
            .announced(frozen)
            .scrapped("A", 3, 2, true)
            .caged("B", 1)
            .retired("P09")
            .build();
    Plan plan =
        PlanFixtures.plan(
            List.of(
                frozen,
                PlanFixtures.simpleBake("oven-1 #2", "P02", 500, "B"),
                PlanFixtures.simpleDip("kettle #1", "Z01", 360, "Z")),
            List.of(PlanFixtures.leftOut("C")));
    return of(brief, plan);
  }

  /** A file of that plan. */
  public static PlanFile of(Brief brief, Plan plan) {
    return new PlanFile(
        PlanFile.FORMAT,
        "A",
        "..",
        List.of(new InputDigest("jobs/monday.csv", 1234, "0a".repeat(32))),
        Optional.of(
            new OverlayDigest(
                "Saturday shift",
                "../saturday.yaml",
                99,
                "1b".repeat(32),
                Optional.of(new StartedFrom("A", "2c".repeat(32), false)))),
        Optional.of(
            new Replanned(
                600,
                "A",
                "2c".repeat(32),
                3,
                List.of(new Replanned.Recalled("P02", "its time has passed")))),
        List.of(
            Gate.shut("J7", "frame", "closed-hollow", 12, "no vent holes told", "design"),
            new Gate(
                "J8",
                "rail",
                "hollows",
                "opened",
                true,
                4,
                "holes in 2 members",
                "design",
                List.of("hanger 1", "kettle lead"),
                "2031-03-02 14:20",
                "light seen through all")),
        brief,
        plan,
        List.of(new Finding("machine-mass", "oven-1 #2", "weighs \"too\" much")),
        Optional.of(estimates("{\"powder_kg\":12.50,\"lots\":[\"K1\",null]}")),
        Optional.of(
            new PlanYardstick(
                WeekBounds.of(brief, plan), plan.figures(), 3, 120.5, 800, 97.2, 900.5)));
  }

  private static JsonNode estimates(String json) {
    try {
      return JsonMapper.builder()
          .enable(DeserializationFeature.USE_BIG_DECIMAL_FOR_FLOATS)
          .build()
          .readTree(json);
    } catch (JsonProcessingException notJson) {
      throw new IllegalArgumentException(notJson);
    }
  }
}
