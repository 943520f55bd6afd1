package spangle.desk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import spangle.WeekCopy;
import spangle.cli.Spangle;
import spangle.estimate.Purchase;

/**
 * The order of the smallest sample week, every figure worked by hand from its files: areas by plane
 * geometry, powder by film x density / 0.6 with hooks of 0.00377 m2 and 0.8 kg for the colour, zinc
 * by ISO 1461:2009 Table 3 (85 and 55 um, 7.2 g/m2 each), growth by steel class, yield 0.75.
 */
class OrderByHandTest {
  private static final double HOOK = 0.00377;

  /** 200 brackets of 160 x 120 x 3 mm, one hook each. */
  private static final double BRACKETS =
      200 * (2 * 0.16 * 0.12 + 2 * (0.16 + 0.12) * 0.003 + HOOK) * 80 * 1.55 / 1000 / 0.6;

  /** 4 cabinets of 900 x 600 x 300 x 2 mm without front, both sides, two hooks each. */
  private static final double CABINETS =
      4
          * (2 * (0.9 * 0.6 + 2 * 0.9 * 0.3 + 2 * 0.6 * 0.3) + 2 * (0.9 + 0.6) * 0.002 + 2 * HOOK)
          * 80
          * 1.55
          / 1000
          / 0.6;

  /** 20 panels of 600 x 400 x 1.5 mm, two hooks each. */
  private static final double PANELS =
      20 * (2 * 0.6 * 0.4 + 2 * (0.6 + 0.4) * 0.0015 + 2 * HOOK) * 80 * 1.4 / 1000 / 0.6;

  /** A head of 260 x 260 x 180 x 2 mm without front. */
  private static final double HEAD = 2 * (0.26 * 0.26 + 4 * 0.26 * 0.18) + 4 * 0.26 * 0.002;

  private static final double HEADS = 12 * (HEAD + HOOK) * 80 * 1.4 / 1000 / 0.6;

  /** 60 plates of 250 x 200 x 8 mm with four holes of 18 mm: 612 g/m2; class B. */
  private static final double PLATES =
      60
          * (2 * (0.25 * 0.2 - 4 * Math.PI * 0.009 * 0.009)
              + (2 * (0.25 + 0.2) + 4 * Math.PI * 0.018) * 0.008)
          * 85
          * 7.2
          / 1000;

  /** The heads again, 396 g/m2; class A. */
  private static final double HEAD_ZINC = 12 * HEAD * 55 * 7.2 / 1000;

  @TempDir Path week;

  private OrderDesk.Order order(String... changes) throws Exception {
    WeekCopy.unplanned(Path.of("samples/first-steps"), week);
    Path coatings = week.resolve("coatings.yaml");
    String text = Files.readString(coatings);
    for (int i = 0; i < changes.length; i += 2) {
      assertThat(text).contains(changes[i]);
      text = text.replace(changes[i], changes[i + 1]);
    }
    Files.writeString(coatings, text);
    return OrderDesk.order(week, Optional.empty());
  }

  private static Purchase item(OrderDesk.Order order, String id) {
    return order.purchases().stream().filter(p -> p.item().id().equals(id)).findFirst().get();
  }

  private static void near(double value, double byHand) {
    assertThat(value).isCloseTo(byHand, within(1e-6));
  }

  @Test
  void aWeekWithEnoughOfEverything() throws Exception {
    OrderDesk.Order order = order();

    Purchase grey = item(order, "P-LIGHT-GREY");
    double greyKg = BRACKETS + CABINETS + 0.8;
    near(grey.need().likely(), greyKg);
    near(grey.need().low(), 0.85 * (BRACKETS + CABINETS) + 0.8);
    near(grey.need().high(), 1.25 * (BRACKETS + CABINETS) + 0.8);
    near(grey.balance().get(4), 15 - greyKg);
    assertThat(grey.packs()).isZero();
    assertThat(grey.latestOrder()).isEmpty();
    near(item(order, "P-DEEP-BLUE").need().likely(), PANELS + HEADS + 0.8);

    Purchase zinc = item(order, "zinc");
    double onWork = 1.6 * PLATES + 1.2 * HEAD_ZINC;
    near(zinc.need().likely(), onWork / 0.75);
    near(zinc.need().low(), (1.4 * PLATES + 1.1 * HEAD_ZINC) / 0.82);
    near(zinc.need().high(), (1.8 * PLATES + 1.3 * HEAD_ZINC) / 0.65);
    near(zinc.balance().get(4), 250 - onWork / 0.75);

    BathDesk.Bath bath = order.baths().get(0);
    near(bath.zincKg(), onWork);
    near(
        bath.losses().ashKg() + bath.losses().drossKg() + bath.losses().splashKg(),
        onWork / 0.75 - onWork);
    // Middle of 8-15 % ash, 8-15 % dross, 1-5 % splash, from memory.
    near(bath.losses().ashKg(), (onWork / 0.75 - onWork) * 11.5 / 26);
    // The kettle is 4.5 x 1.3 m inside; zinc at 450 C weighs 6590 - 0.97 x 31 kg/m3.
    near(bath.level().dropMm(), onWork / 0.75 / (4.5 * 1.3 * (6590 - 0.97 * 31)) * 1000);
    assertThat(bath.level().topUps()).singleElement().matches(t -> t.ingots() == 1);
    assertThat(bath.level().uncovered()).isEmpty();
  }

  /**
   * Grey for one of its two jobs only, due on Tuesday 1 and Wednesday 2 December: a pack, three
   * working days before the one that waits. Zinc 12.3 kg and 10 are there: an ingot, six days
   * before.
   */
  @Test
  void whatRunsShortIsOrderedInWholePacksInTime() throws Exception {
    OrderDesk.Order order =
        order("kg: 15,", "kg: 3.5,", "{lot: Z-7, kg: 250}", "{lot: Z-7, kg: 10}");

    Purchase grey = item(order, "P-LIGHT-GREY");
    double greyKg = BRACKETS + CABINETS + 0.8;
    near(grey.shortBy(), greyKg - 3.5);
    assertThat(grey.packs()).isEqualTo(1);
    near(grey.balance().get(4), 3.5 - greyKg);
    assertThat(grey.latestOrder().orElseThrow())
        .isIn(
            workingDaysBefore(LocalDate.of(2026, 12, 1), 3),
            workingDaysBefore(LocalDate.of(2026, 12, 2), 3));
    assertThat(grey.tooLate()).isTrue();
    assertThat(grey.shares().stream().mapToDouble(s -> s.missing()).sum())
        .isCloseTo(greyKg - 3.5, within(1e-6));

    Purchase zinc = item(order, "zinc");
    near(zinc.shortBy(), (1.6 * PLATES + 1.2 * HEAD_ZINC) / 0.75 - 10);
    assertThat(zinc.packs()).isEqualTo(1);
    assertThat(zinc.item().pack()).isEqualTo(25);
    assertThat(zinc.tooLate()).isTrue();
  }

  /** Counts back by hand: Saturdays and Sundays do not count. */
  private static LocalDate workingDaysBefore(LocalDate day, int workingDays) {
    LocalDate date = day;
    for (int left = workingDays; left > 0; ) {
      date = date.minusDays(1);
      left -= date.getDayOfWeek().getValue() < 6 ? 1 : 0;
    }
    return date;
  }

  /**
   * Ten frames of 2.4 m2 at 3 mm (55 um) and 0.6 m2 at 8 mm (85 um), each skin at its own row: 24 x
   * 396 + 6 x 612 = 13 176 g at least; class A grows it by 1.1 to 1.3. One row for all of it would
   * say 30 x 396 = 11 880 g.
   */
  @Test
  void everySkinCountsAtItsOwnRow() throws Exception {
    WeekCopy.unplanned(Path.of("samples/first-steps"), week);
    Files.writeString(
        week.resolve("jobs/jobs.csv"),
        """
        job,customer,part,description,qty,material,thickness_mm,skins,length_mm,width_mm,height_mm,route,due,welded,hollow,overlaps,pockets,soldered,moving_parts,certificate,si_pct,p_pct
        F-6,Pilot House,FR-1,frame,10,steel,3,3mm:2.4m2; 8mm:0.6m2,900,600,300,zinc,fri 14:00,no,no,no,no,no,no,C-1,0.02,0.01
        """);
    Purchase zinc = item(OrderDesk.order(week, Optional.empty()), "zinc");

    near(zinc.need().low(), 1.1 * 13.176 / 0.82);
    near(zinc.need().likely(), 1.2 * 13.176 / 0.75);
    near(zinc.need().high(), 1.3 * 13.176 / 0.65);

    // The phone call says the same of the same work.
    StringWriter said = new StringWriter();
    Spangle.run(
        new PrintWriter(said),
        new PrintWriter(said),
        "calc zinc --skin 3mm:24m2 --skin 8mm:6m2 --si 0.02 --p 0.01 --json".split(" "));
    near(
        new ObjectMapper().readTree(said.toString()).at("/zinc_to_buy_kg/likely").asDouble(),
        zinc.need().likely());

    // Every thickness is inspected by itself, on the sheet of its dip.
    String sheets = sheets();
    assertThat(sheets)
        .contains(
            "frame: measure 3 of 10, 3 mm: 3 areas of 10 cm2 on each, 5 readings in it; 8 mm: 1"
                + " area of 10 cm2 on each, 5 readings in it.")
        .contains(
            "3 mm: mean at least 55 um, no place under 45 um; 8 mm: mean at least 85 um, no place"
                + " under 70 um");
  }

  private String sheets() throws IOException {
    StringWriter said = new StringWriter();
    Path out = week.resolve("out");
    Spangle.run(
        new PrintWriter(said),
        new PrintWriter(said),
        "plan",
        week.toString(),
        "--steps",
        "10",
        "--out",
        out.toString());
    return Files.readString(out.resolve("index.html"));
  }
}
