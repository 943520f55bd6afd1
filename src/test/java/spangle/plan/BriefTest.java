package spangle.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

/** What a week says of its places and of the ends an earlier plan gave. */
class BriefTest {
  private static final Brief YARD =
      new WeekOf()
          .line(
              "paint",
              LineKind.POWDER,
              List.of(
                  new StationSpec(
                      "st-1",
                      "Hanging",
                      1,
                      WeekOf.always(),
                      SetupTable.none(List.of("any")),
                      0,
                      Integer.MAX_VALUE)),
              List.of(new MachineSpec("ov-1", "Box oven", 1, 500, WeekOf.always(), 0, 0, 0)),
              List.of(
                  new StationSpec(
                      "st-2",
                      "Unloading",
                      1,
                      WeekOf.always(),
                      SetupTable.none(List.of("any")),
                      0,
                      Integer.MAX_VALUE)),
              WeekOf.changes(1, 0))
          .frozen(
              List.of(
                  PlanFixtures.bake(
                      "ov-1 #1",
                      "ov-1",
                      0,
                      100,
                      130,
                      PlanFixtures.load("P1", "rack", "a").visit("st-2", 140, 150),
                      PlanFixtures.load("P2", "rack", "b"))))
          .announced(
              List.of(
                  PlanFixtures.bake(
                      "ov-1 #2", "ov-1", 0, 200, 230, PlanFixtures.load("P3", "rack", "b", "c"))))
          .brief();

  @Test
  void stationsBeforeAndBehindTheOvenAndTheOvenItselfHaveTheirNames() {
    assertThat(YARD.placeName("st-1")).isEqualTo("Hanging");
    assertThat(YARD.placeName("ov-1")).isEqualTo("Box oven");
    assertThat(YARD.placeName("st-2")).isEqualTo("Unloading");
  }

  @Test
  void whatNoLineHasIsCalledByItsId() {
    assertThat(YARD.placeName("st-9")).isEqualTo("st-9");
  }

  @Test
  void aLotEndsWithTheLastStayOfItsLoadAndWhatIsAnnouncedCountsBeforeWhatHangs() {
    assertThat(YARD.announcedEnds())
        .hasSize(3)
        .containsEntry("a", 150)
        .containsEntry("b", 230)
        .containsEntry("c", 230);
  }
}
