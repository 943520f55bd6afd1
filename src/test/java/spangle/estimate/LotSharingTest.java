package spangle.estimate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import spangle.measure.LowLikelyHigh;
import spangle.plan.LeadTime;

class LotSharingTest {
  private static final int DAY = 24 * 60;

  private static StoreItem item(List<StoreItem.StoredLot> lots, StoreItem.Coming... coming) {
    return new StoreItem("P", "blue", "kg", 20, LeadTime.of(4), lots, List.of(coming));
  }

  private static StoreItem.StoredLot lot(String name, double kg, int oldDays) {
    return new StoreItem.StoredLot(
        name, kg, OptionalInt.of(365 + oldDays), OptionalInt.of(oldDays));
  }

  private static Use use(String job, double kg, int dueDay, String kit, boolean oneLot) {
    return new Use(
        job, 600, LowLikelyHigh.exactly(kg), true, new Use.Claim(dueDay * DAY, kit, oneLot));
  }

  private static LotSharing.Share of(List<LotSharing.Share> shares, String job) {
    return shares.stream().filter(s -> s.jobId().equals(job)).findFirst().orElseThrow();
  }

  @Test
  void aKitGetsAShortColourBeforeWorkThatIsDueSooner() {
    List<LotSharing.Share> shares =
        LotSharing.of(
            item(List.of(lot("A", 10, -100))),
            List.of(use("J-1", 6, 1, "", false), use("J-2", 7, 4, "K", false)));

    assertThat(shares).extracting(LotSharing.Share::jobId).containsExactly("J-2", "J-1");
    assertThat(of(shares, "J-2").missing()).isZero();
    assertThat(of(shares, "J-1").missing()).isCloseTo(3, within(1e-9));
    assertThat(of(shares, "J-1").draws()).containsExactly(new LotSharing.Draw("A", 3));
  }

  @Test
  void withoutKitsTheFirstDueIsServedFirst() {
    List<LotSharing.Share> shares =
        LotSharing.of(
            item(List.of(lot("A", 10, -100))),
            List.of(use("J-9", 6, 1, "", false), use("J-2", 7, 4, "", false)));

    assertThat(of(shares, "J-9").missing()).isZero();
    assertThat(of(shares, "J-2").missing()).isCloseTo(3, within(1e-9));
  }

  @Test
  void theLotThatExpiresFirstIsOpenedFirst() {
    List<LotSharing.Share> shares =
        LotSharing.of(
            item(List.of(lot("young", 5, -200), lot("old", 5, -10))),
            List.of(use("J-1", 6, 1, "", false)));

    assertThat(of(shares, "J-1").draws())
        .containsExactly(new LotSharing.Draw("old", 5), new LotSharing.Draw("young", 1));
  }

  /** Both lots hold the kit's 4 kg; the older would be opened first. */
  @Test
  void theLotThePlanKeepsForAKitIsTheOneItGets() {
    Use.Claim planned = new Use.Claim(2 * DAY, "K", true, "young");
    List<LotSharing.Share> shares =
        LotSharing.of(
            item(List.of(lot("old", 5, -10), lot("young", 8, -200))),
            List.of(new Use("J-1", 600, LowLikelyHigh.exactly(4), true, planned)));

    assertThat(of(shares, "J-1").draws()).containsExactly(new LotSharing.Draw("young", 4));
    assertThat(
            LotSharing.of(
                    item(List.of(lot("old", 5, -10), lot("young", 8, -200))),
                    List.of(use("J-1", 4, 2, "K", true)))
                .get(0)
                .draws())
        .containsExactly(new LotSharing.Draw("old", 4));
  }

  @Test
  void visiblePartsOfAKitComeFromOneLotEvenWhenAnOlderOneIsOpen() {
    List<Use> uses =
        List.of(
            use("J-1", 4, 2, "K", true), use("J-2", 4, 3, "K", true), use("J-3", 3, 1, "", false));
    List<LotSharing.Share> shares =
        LotSharing.of(item(List.of(lot("old", 5, -10), lot("young", 8, -200))), uses);

    assertThat(of(shares, "J-1").draws()).containsExactly(new LotSharing.Draw("young", 4));
    assertThat(of(shares, "J-2").draws()).containsExactly(new LotSharing.Draw("young", 4));
    assertThat(of(shares, "J-1").oneLotBroken()).isFalse();
    assertThat(of(shares, "J-3").draws()).containsExactly(new LotSharing.Draw("old", 3));
  }

  @Test
  void aLotKeptForAKitIsNotGivenAwayByHoseLossOrAnotherKit() {
    List<Use> uses =
        List.of(
            new Use(Use.COLOUR_LOSS, 10, LowLikelyHigh.exactly(1), true),
            use("J-1", 8, 2, "K", true),
            use("J-2", 5, 3, "L", true));
    List<LotSharing.Share> shares =
        LotSharing.of(item(List.of(lot("old", 8, -10), lot("young", 7, -200))), uses);

    assertThat(of(shares, Use.COLOUR_LOSS).draws())
        .containsExactly(new LotSharing.Draw("young", 1));
    assertThat(of(shares, "J-1").draws()).containsExactly(new LotSharing.Draw("old", 8));
    assertThat(of(shares, "J-2").draws()).containsExactly(new LotSharing.Draw("young", 5));
  }

  @Test
  void aKitThatNoOneLotServesIsSaid() {
    List<LotSharing.Share> shares =
        LotSharing.of(
            item(List.of(lot("old", 5, -10), lot("young", 5, -200))),
            List.of(use("J-1", 8, 2, "K", true)));

    assertThat(of(shares, "J-1").draws()).hasSize(2);
    assertThat(of(shares, "J-1").oneLotBroken()).isTrue();
  }

  @Test
  void aDeliveryServesOnlyWhatComesAfterIt() {
    StoreItem item = item(List.of(lot("A", 1, -10)), new StoreItem.Coming("B", 10, 2 * DAY));
    Use early = new Use("J-1", DAY, LowLikelyHigh.exactly(3), true);
    Use late = new Use("J-2", 3 * DAY, LowLikelyHigh.exactly(3), true);
    List<LotSharing.Share> shares = LotSharing.of(item, List.of(early, late));

    assertThat(of(shares, "J-1").missing()).isCloseTo(2, within(1e-9));
    assertThat(of(shares, "J-2").draws()).containsExactly(new LotSharing.Draw("B", 3));
  }

  @Test
  void whatIsDrawnAndWhatIsMissingComeToTheNeed() {
    List<Use> uses =
        List.of(
            use("J-1", 4.5, 2, "K", true),
            use("J-1", 2.5, 2, "K", true),
            use("J-2", 9, 3, "", false),
            use("J-3", 2, 1, "M", false));
    List<LotSharing.Share> shares =
        LotSharing.of(item(List.of(lot("old", 5, -10), lot("young", 8, -200))), uses);

    double drawn =
        shares.stream().flatMap(s -> s.draws().stream()).mapToDouble(LotSharing.Draw::amount).sum();
    double missing = shares.stream().mapToDouble(LotSharing.Share::missing).sum();
    assertThat(drawn + missing).isCloseTo(18, within(1e-9));
    assertThat(drawn).isCloseTo(13, within(1e-9));
    assertThat(of(shares, "J-1").amount()).isEqualTo(7);
  }

  @Test
  void aLotPastItsShelfLifeAsksForAPanel() {
    assertThat(lot("A", 1, 0).pastShelfLife()).isTrue();
    assertThat(lot("A", 1, -1).pastShelfLife()).isFalse();
    assertThat(
            new StoreItem.StoredLot("A", 1, OptionalInt.empty(), OptionalInt.empty())
                .pastShelfLife())
        .isFalse();
  }
}
