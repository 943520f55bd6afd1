package spangle.estimate;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import spangle.coating.zinc.ZincBath;

/**
 * What a week of dips does to the level of a bath, and when it must be topped up.
 *
 * @param dropMm fall by the week's dips when nobody tops up, ash and dross counted
 * @param lowestMm deepest fall with the top-ups that are planned
 * @param dropByDayMm fall at the end of each day, with those top-ups
 * @param topUps when to fill up, and with how many ingots; with what it stood too low before
 * @param uncovered first part that is no longer covered; empty where all are
 */
public record BathWeek(
    double dropMm,
    double lowestMm,
    List<Double> dropByDayMm,
    List<TopUp> topUps,
    Optional<Uncovered> uncovered) {
  private static final int DAY_MIN = 24 * 60;

  /**
   * One dip.
   *
   * @param atMin minute the work enters the zinc
   * @param zincKg zinc the bath loses by it, ash and dross counted
   * @param spareMm zinc over its deepest part at the week's first level; empty where unknown
   * @param name words for the part
   */
  public record Dip(int atMin, double zincKg, OptionalDouble spareMm, String name) {}

  /** Whole ingots at the end of a stop for filling up, or after the week's last dip. */
  public record TopUp(int atMin, int ingots) {}

  /** A part the zinc no longer covers when it is dipped. */
  public record Uncovered(int atMin, String name, double missingMm) {}

  /** Copies the lists. */
  public BathWeek {
    dropByDayMm = List.copyOf(dropByDayMm);
    topUps = List.copyOf(topUps);
  }

  /** A level that is known: read by somebody, or 0 because it is filled up then. */
  public record Mark(int atMin, double downMm, boolean filled) {}

  /**
   * Follows the level.
   *
   * @param bath the kettle's zinc
   * @param dips in any order
   * @param marks in the order of time
   * @param days days of the plan
   * @param ingotKg one ingot
   */
  public static BathWeek of(
      ZincBath bath, List<Dip> dips, List<Mark> marks, int days, double ingotKg) {
    List<Dip> inOrder = new ArrayList<>(dips);
    inOrder.sort(Comparator.comparingInt(Dip::atMin).thenComparing(Dip::name));
    List<Mark> known = new ArrayList<>(marks);
    int lastDip = inOrder.isEmpty() ? 0 : inOrder.get(inOrder.size() - 1).atMin();
    if (known.stream().noneMatch(mark -> mark.filled() && mark.atMin() >= lastDip)) {
      known.add(new Mark(lastDip + 1, 0, true));
    }
    List<TopUp> topUps = new ArrayList<>();
    Optional<Uncovered> uncovered = Optional.empty();
    double drop = 0;
    double lowest = 0;
    int next = 0;
    for (Dip dip : inOrder) {
      for (; next < known.size() && known.get(next).atMin() <= dip.atMin(); next++) {
        drop = mark(bath, drop, known.get(next), ingotKg, topUps);
        lowest = Math.max(lowest, drop);
      }
      double missing = drop - dip.spareMm().orElse(Double.POSITIVE_INFINITY);
      if (missing > 0 && uncovered.isEmpty()) {
        uncovered = Optional.of(new Uncovered(dip.atMin(), dip.name(), missing));
      }
      drop += bath.levelDropMm(dip.zincKg());
      lowest = Math.max(lowest, drop);
    }
    for (; next < known.size(); next++) {
      drop = mark(bath, drop, known.get(next), ingotKg, topUps);
    }
    double all = bath.levelDropMm(inOrder.stream().mapToDouble(Dip::zincKg).sum());
    return new BathWeek(all, lowest, byDay(bath, inOrder, marks, days), topUps, uncovered);
  }

  /** The level behind a mark. */
  private static double mark(
      ZincBath bath, double dropMm, Mark mark, double ingotKg, List<TopUp> topUps) {
    if (mark.filled()) {
      addTopUp(bath, dropMm, mark.atMin(), ingotKg, topUps);
    }
    return mark.downMm();
  }

  private static void addTopUp(
      ZincBath bath, double dropMm, int atMin, double ingotKg, List<TopUp> topUps) {
    int ingots = bath.ingots(dropMm, ingotKg);
    if (ingots > 0) {
      topUps.add(new TopUp(atMin, ingots));
    }
  }

  private static List<Double> byDay(ZincBath bath, List<Dip> dips, List<Mark> marks, int days) {
    List<Double> drops = new ArrayList<>();
    for (int day = 1; day <= days; day++) {
      int end = day * DAY_MIN;
      Mark last = new Mark(Integer.MIN_VALUE, 0, false);
      for (Mark mark : marks) {
        last = mark.atMin() < end ? mark : last;
      }
      int from = last.atMin();
      drops.add(
          last.downMm()
              + bath.levelDropMm(
                  dips.stream()
                      .filter(d -> d.atMin() >= from && d.atMin() < end)
                      .mapToDouble(Dip::zincKg)
                      .sum()));
    }
    return drops;
  }
}
