package spangle.report.page;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import spangle.report.Heading;
import spangle.report.picture.Hatch;
import spangle.report.week.OvertimeWords;
import spangle.report.week.WeekIndex;

/** The whole week as one page that needs nothing else. */
public final class WeekPage {
  private static final List<String> CAUTIONS =
      List.of(
          "Local codes, the makers' data sheets and licensed practice decide; these sheets do not.",
          "Nothing hollow goes into zinc unless two people have seen its vents and drains open.",
          "Parts, tools and ingots go into zinc only when they are dry.",
          "Weigh what is lifted: wires, beam and crane carry no more than their plates say.",
          "Parts out of the oven and the kettle are hot until the cooling time is over.",
          "Earth every rack; keep sparks and flames away from powder dust and solvent.",
          "Acid and flux: gloves, face shield, water at hand.");

  private WeekPage() {}

  /** The page, as HTML that is also well-formed XML. */
  public static String of(WeekIndex index) {
    Map<String, Object> model = new HashMap<>();
    Heading heading = index.report().heading();
    model.put("shop", heading.shop());
    model.put("version", heading.version());
    model.put("week", index.time().week());
    model.put("name", index.report().brief().name());
    model.put("findings", index.report().waiting().findings().size());
    model.put("boxes", Glance.boxes(index));
    model.put("figures", Glance.figures(index));
    model.put("bounds", Glance.bounds(index));
    model.put("comparisons", Glance.comparisons(index));
    model.put("method", index.report().plan().solve().method());
    model.put("waiting", ListRows.waiting(index));
    model.put("overtime", new OvertimeWords(index.report().overtime(), index.time()).lines());
    model.put("changes", index.report().yardstick().changes());
    model.put("charts", FloorRows.charts(index));
    model.put("hatches", hatches(index));
    model.put("kits", ListRows.kits(index));
    model.put("days", index.time());
    model.put("purchases", ListRows.purchases(index));
    model.put("allowances", ListRows.allowances(index));
    model.put("baths", ListRows.baths(index));
    model.put("wants", ListRows.wants(index));
    model.put("runs", FloorRows.runs(index));
    model.put("carriers", CarrierRows.of(index));
    model.put("racks", RackSheets.of(index));
    model.put("dips", DipSheets.of(index));
    model.put("cards", OvenCards.of(index));
    model.put("company", CompanyRows.of(index));
    model.put("holds", FloorRows.holds(index));
    model.put("fits", FloorRows.fits(index));
    model.put("drawings", FloorRows.drawings(index));
    model.put(
        "cautions",
        Stream.concat(CAUTIONS.stream(), index.report().facts().cautions().stream()).toList());
    return Page.of("week.ftlh", model);
  }

  /**
   * A line of the charts' key.
   *
   * @param patch colour and hatch
   * @param words the finish
   */
  public record Key(String patch, String words) {}

  private static List<Key> hatches(WeekIndex index) {
    return index.finishes().stream()
        .map(
            f ->
                new Key(
                    Hatch.patch(
                        index.pattern(f),
                        index.swatch(f).map(s -> s.rgb()).orElse("c9ced3"),
                        index.colour(f)),
                    index.colour(f)))
        .toList();
  }
}
