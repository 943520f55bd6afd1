package spangle.report.page;

import java.util.ArrayList;
import java.util.List;
import spangle.plan.Dwell;
import spangle.plan.Finish;
import spangle.report.Swatch;
import spangle.report.picture.Hatch;
import spangle.report.week.OvenCompany;
import spangle.report.week.WeekIndex;

/** Rows of the list of parts that may and may not share an oven. */
public final class CompanyRows {
  private CompanyRows() {}

  /**
   * Parts of a finish that stay in alike.
   *
   * @param colour the finish; empty where it is that of the row above
   * @param patch colour and hatch; empty with it
   * @param parts the parts
   * @param stay minutes by setting
   * @param never those that may not be in with them
   */
  public record Row(
      String colour, String patch, List<String> parts, List<String> stay, List<String> never) {
    /** Copies the lists. */
    public Row {
      parts = List.copyOf(parts);
      stay = List.copyOf(stay);
      never = List.copyOf(never);
    }
  }

  static List<Row> of(WeekIndex index) {
    List<Row> rows = new ArrayList<>();
    Finish above = null;
    for (OvenCompany company : OvenCompany.of(index)) {
      boolean first = !company.finish().equals(above);
      above = company.finish();
      rows.add(
          new Row(
              first ? index.colour(company.finish()) : "",
              first ? patch(index, company.finish()) : "",
              company.parts(),
              company.dwells().stream().map(d -> stay(company, d)).toList(),
              company.never()));
    }
    return rows;
  }

  private static String stay(OvenCompany company, Dwell dwell) {
    return company.line().settings().get(dwell.setting()).name()
        + ": "
        + dwell.minMin()
        + " to "
        + dwell.maxMin()
        + " min";
  }

  private static String patch(WeekIndex index, Finish finish) {
    return Hatch.patch(
        index.pattern(finish),
        index.swatch(finish).map(Swatch::rgb).orElse("ffffff"),
        index.colour(finish));
  }
}
