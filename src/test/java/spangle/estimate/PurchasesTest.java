package spangle.estimate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.List;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import spangle.measure.LowLikelyHigh;
import spangle.plan.LeadTime;

class PurchasesTest {
  private static final LocalDate MONDAY = LocalDate.of(2026, 11, 30);
  private static final int DAY = 24 * 60;

  private static StoreItem item(double stock, StoreItem.Coming... coming) {
    return new StoreItem(
        "P",
        "blue",
        "kg",
        20,
        LeadTime.of(4),
        List.of(new StoreItem.StoredLot("A", stock, OptionalInt.empty(), OptionalInt.empty())),
        List.of(coming));
  }

  private static Use use(String job, int day, double kg) {
    return new Use(job, day * DAY + 600, new LowLikelyHigh(kg * 0.9, kg, kg * 1.2), true);
  }

  @Test
  void enoughInStoreBuysNothing() {
    Purchase purchase =
        Purchases.of(item(30), List.of(use("J-1", 0, 10), use("J-2", 3, 20)), MONDAY, 5);

    assertThat(purchase.shortBy()).isZero();
    assertThat(purchase.packs()).isZero();
    assertThat(purchase.latestOrder()).isEmpty();
    assertThat(purchase.need()).isEqualTo(new LowLikelyHigh(27, 30, 36));
    assertThat(purchase.balance()).containsExactly(20.0, 20.0, 20.0, 0.0, 0.0);
  }

  @Test
  void oneKilogramShortIsOnePackOrderedLeadDaysBeforeTheStoreRunsDry() {
    Purchase purchase =
        Purchases.of(item(29), List.of(use("J-1", 0, 10), use("J-2", 3, 20)), MONDAY, 5);

    assertThat(purchase.shortBy()).isCloseTo(1, within(1e-9));
    assertThat(purchase.packs()).isEqualTo(1);
    assertThat(purchase.firstShort()).contains(3 * DAY + 600);
    // Thursday less four working days over a weekend
    assertThat(purchase.latestOrder()).contains(LocalDate.of(2026, 11, 27));
    assertThat(purchase.tooLate()).isTrue();
    assertThat(purchase.jobs()).containsExactly("J-1", "J-2");
  }

  /** Work that waits stands at the week's end; due on Wednesday it wants its powder by then. */
  @Test
  void workThatWaitsWantsItsShareByItsDueDay() {
    Use waits =
        new Use(
            "J-3",
            5 * DAY - 1,
            new LowLikelyHigh(9, 10, 12),
            false,
            new Use.Claim(2 * DAY + 900, "", false));
    Purchase purchase = Purchases.of(item(15), List.of(use("J-1", 0, 10), waits), MONDAY, 5);

    assertThat(purchase.packs()).isEqualTo(1);
    assertThat(purchase.firstShort()).contains(5 * DAY - 1);
    // Wednesday 2 December less four working days
    assertThat(purchase.latestOrder()).contains(LocalDate.of(2026, 11, 26));
    Use overdue =
        new Use(
            "J-3",
            5 * DAY - 1,
            new LowLikelyHigh(9, 10, 12),
            false,
            new Use.Claim(-3 * DAY, "", false));
    // Due before the week: by Monday, less four working days
    assertThat(Purchases.of(item(5), List.of(overdue), MONDAY, 5).latestOrder())
        .contains(LocalDate.of(2026, 11, 24));
    // Work in the plan wants it when it is sprayed, whatever its due day.
    assertThat(Purchases.of(item(5), List.of(use("J-1", 3, 10)), MONDAY, 5).latestOrder())
        .contains(LocalDate.of(2026, 11, 27));
  }

  @Test
  void aDeliveryCountsFromTheMinuteItComes() {
    StoreItem.Coming late = new StoreItem.Coming("B", 20, 4 * DAY);
    Purchase purchase =
        Purchases.of(item(10, late), List.of(use("J-1", 0, 10), use("J-2", 3, 15)), MONDAY, 5);

    assertThat(purchase.packs()).isZero();
    assertThat(purchase.firstShort()).contains(3 * DAY + 600);
    assertThat(purchase.balance()).containsExactly(0.0, 0.0, 0.0, -15.0, 5.0);
  }

  @Test
  void theOldestLotStandsFirst() {
    StoreItem mixed =
        new StoreItem(
            "P",
            "blue",
            "kg",
            20,
            LeadTime.of(4),
            List.of(
                new StoreItem.StoredLot("fresh", 1, OptionalInt.empty(), OptionalInt.empty()),
                new StoreItem.StoredLot("past", 1, OptionalInt.of(395), OptionalInt.of(30)),
                new StoreItem.StoredLot("young", 1, OptionalInt.of(165), OptionalInt.of(-200))),
            List.of());

    assertThat(mixed.lots())
        .extracting(StoreItem.StoredLot::lot)
        .containsExactly("past", "young", "fresh");
  }

  @Test
  void theHighEndMayTakeAnotherPack() {
    Purchase purchase =
        Purchases.of(item(30), List.of(use("J-1", 0, 10), use("J-2", 3, 20)), MONDAY, 5);

    // 36 kg at the high end against 30 in the store
    assertThat(purchase.packsIfHigh()).isEqualTo(1);
    assertThat(Purchases.of(item(36), List.of(use("J-1", 0, 30)), MONDAY, 5).packsIfHigh())
        .isZero();
    assertThat(purchase.shares()).hasSize(2);
  }
}
