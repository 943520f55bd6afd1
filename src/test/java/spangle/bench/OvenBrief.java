package spangle.bench;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import spangle.equipment.Span;
import spangle.equipment.WorkCalendar;
import spangle.fit.hang.CarrierFace;
import spangle.fit.hang.HangItem;
import spangle.plan.Brief;
import spangle.plan.CarrierSpec;
import spangle.plan.Dwell;
import spangle.plan.Finish;
import spangle.plan.FinishKind;
import spangle.plan.Goals;
import spangle.plan.LineKind;
import spangle.plan.LineSpec;
import spangle.plan.Lot;
import spangle.plan.MachineSpec;
import spangle.plan.Setting;
import spangle.plan.SetupTable;

/**
 * Writes an oven instance as a brief of the shop: each job a lot that travels alone on a carrier of
 * its size, each attribute a setting of the ovens.
 */
final class OvenBrief {
  private static final String LINE = "ovens";
  private final OvenInstance instance;
  private final int attributes;
  private final int jobs;
  private final int ovens;

  private OvenBrief(OvenInstance instance) {
    this.instance = instance;
    this.attributes = instance.number("a");
    this.jobs = instance.number("n");
    this.ovens = instance.number("m");
  }

  static Brief of(String name, OvenInstance instance) {
    return new OvenBrief(instance).brief(name);
  }

  private Brief brief(String name) {
    List<Setting> settings =
        IntStream.range(0, attributes)
            .mapToObj(a -> new Setting(a, "attribute " + (a + 1), 0))
            .toList();
    LineSpec line =
        new LineSpec(
            LINE,
            "ovens",
            LineKind.POWDER,
            List.of(),
            machines(),
            List.of(),
            settings,
            new SetupTable(
                settings.stream().map(Setting::name).toList(),
                square("setup_times"),
                square("setup_costs")));
    return new Brief(
        name,
        LocalDate.of(2026, 1, 5),
        instance.number("l"),
        List.of(line),
        carriers(),
        lots(),
        List.of(),
        List.of(),
        goals(),
        List.of(),
        List.of(),
        List.of());
  }

  private Goals goals() {
    return new Goals(
        instance.number("mult_factor_total_runtime"),
        instance.number("mult_factor_finished_toolate"),
        0,
        instance.number("mult_factor_total_setupcosts"),
        instance.number("mult_factor_total_setuptimes"),
        0,
        0,
        0,
        0,
        0,
        0,
        1,
        0);
  }

  private List<List<Integer>> square(String name) {
    return instance.rows(name).stream()
        .limit(attributes)
        .map(row -> Arrays.stream(row).boxed().toList())
        .toList();
  }

  private List<MachineSpec> machines() {
    List<MachineSpec> machines = new ArrayList<>();
    for (int m = 0; m < ovens; m++) {
      int[] open = instance.rows("m_a_s").get(m);
      int[] close = instance.rows("m_a_e").get(m);
      List<Span> spans = new ArrayList<>();
      for (int k = 0; k < open.length; k++) {
        if (close[k] > open[k]) {
          spans.add(new Span(open[k], close[k]));
        }
      }
      machines.add(
          new MachineSpec(
              oven(m),
              "oven " + (m + 1),
              instance.array("max_cap")[m],
              Double.POSITIVE_INFINITY,
              new WorkCalendar(spans),
              instance.array("initState")[m] - 1,
              0,
              0));
    }
    return machines;
  }

  private static String oven(int m) {
    return "oven-" + (m + 1);
  }

  private static String carrier(int size) {
    return "size-" + size;
  }

  private List<CarrierSpec> carriers() {
    return Arrays.stream(instance.array("size"))
        .distinct()
        .sorted()
        .mapToObj(
            size ->
                new CarrierSpec(
                    carrier(size),
                    "size " + size,
                    LINE,
                    CarrierFace.plain(1, 1, CarrierFace.Style.FREE),
                    jobs,
                    size,
                    0,
                    0,
                    0))
        .toList();
  }

  private List<Lot> lots() {
    List<Lot> lots = new ArrayList<>();
    for (int j = 0; j < jobs; j++) {
      int attribute = instance.array("attribute")[j] - 1;
      String id = Integer.toString(j + 1);
      lots.add(
          new Lot(
              id,
              id,
              id,
              "job " + id,
              1,
              0,
              Optional.empty(),
              LINE,
              new Finish(0, "attribute-" + attribute, "attribute", FinishKind.POWDER, "none"),
              true,
              "all",
              instance.array("earliest_start")[j],
              instance.array("latest_end")[j],
              1,
              true,
              List.of(
                  new Dwell(
                      attribute, instance.array("min_time")[j], instance.array("max_time")[j])),
              Arrays.stream(instance.rows("eligible_machine").get(j))
                  .mapToObj(m -> oven(m - 1))
                  .toList(),
              List.of(carrier(instance.array("size")[j])),
              new HangItem(id, 1, 1, 1, 0, 0, 0, false),
              List.of(),
              0,
              0,
              0,
              List.of()));
    }
    return lots;
  }
}
