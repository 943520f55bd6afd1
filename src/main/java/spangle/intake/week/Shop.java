package spangle.intake.week;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * The shop in one week.
 *
 * @param name words for the sheet
 * @param weekStart the Monday whose 00:00 is minute zero
 * @param horizonDays days the plan may use
 * @param standard the standard zinc is judged by
 * @param shifts who works when, every week
 * @param exceptions dates worked besides the shifts, and closed ones
 * @param overtime hours that may be worked besides; no plan uses them by itself
 * @param maintenance when a station is not to be had
 * @param lines the lines
 * @param colourChange minutes between colours
 * @param clearances air around work
 * @param defaults what stands in where data are silent
 * @param gaugeTable named table by which gauge numbers may be read
 */
public record Shop(
    String name,
    LocalDate weekStart,
    int horizonDays,
    ZincStandard standard,
    List<Shift> shifts,
    List<DayException> exceptions,
    List<Overtime> overtime,
    List<Maintenance> maintenance,
    List<ShopLine> lines,
    ColourChange colourChange,
    Clearances clearances,
    Defaults defaults,
    Optional<String> gaugeTable) {

  /** Minutes of a day. */
  public static final int DAY_MIN = 24 * 60;

  /** A plan looks no further ahead than four weeks. */
  public static final int LONGEST_DAYS = 28;

  /** Copies the lists. */
  public Shop {
    shifts = List.copyOf(shifts);
    exceptions = List.copyOf(exceptions);
    overtime = List.copyOf(overtime);
    maintenance = List.copyOf(maintenance);
    lines = List.copyOf(lines);
  }

  /** End of the plan, minutes from the week's zero. */
  public int horizonMin() {
    return horizonDays * DAY_MIN;
  }

  /** The line of that id. */
  public Optional<ShopLine> line(String id) {
    return lines.stream().filter(l -> l.id().equals(id)).findFirst();
  }

  /** The same shop, looked at for so many days. */
  public Shop lasting(int days) {
    return with(days, exceptions, maintenance, lines);
  }

  /** The same shop with other blocks of maintenance and other lines. */
  public Shop with(List<Maintenance> blocks, List<ShopLine> others) {
    return with(horizonDays, exceptions, blocks, others);
  }

  /** The same shop on whose dates there is more work, looked at for so many days. */
  public Shop working(List<DayException> dates, int days) {
    return with(days, dates, maintenance, lines);
  }

  private Shop with(
      int days, List<DayException> dates, List<Maintenance> blocks, List<ShopLine> others) {
    return new Shop(
        name,
        weekStart,
        days,
        standard,
        shifts,
        dates,
        overtime,
        blocks,
        others,
        colourChange,
        clearances,
        defaults,
        gaugeTable);
  }
}
