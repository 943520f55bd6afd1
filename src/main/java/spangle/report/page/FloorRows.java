package spangle.report.page;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import spangle.plan.FinishKind;
import spangle.plan.LineKind;
import spangle.plan.LineSpec;
import spangle.report.FitNote;
import spangle.report.LotNote;
import spangle.report.picture.LineChart;
import spangle.report.week.KitBoard;
import spangle.report.week.KitStatus;
import spangle.report.week.LoadPlace;
import spangle.report.week.WeekIndex;

/** Rows for the floor: the order of the loads, hold points, fit answers, charts. */
public final class FloorRows {
  private FloorRows() {}

  /**
   * The loads of a line in order.
   *
   * @param name the line
   * @param machine what holds its batches, in one word
   * @param rows loads
   */
  public record RunLine(String name, String machine, List<RunRow> rows) {
    /** Copies the list. */
    public RunLine {
      rows = List.copyOf(rows);
    }
  }

  /**
   * One load in its order.
   *
   * @param id load
   * @param start hanging begins
   * @param newDay true for the first of a day
   * @param carrier what it hangs on
   * @param colour finish in words
   * @param patch colour and hatch
   * @param parts what hangs on it
   * @param oven oven and setting
   * @param in time in
   * @param minutes minutes in it
   * @param done finished
   * @param due wanted
   * @param late true when finished past due
   */
  public record RunRow(
      String id,
      String start,
      boolean newDay,
      String carrier,
      String colour,
      String patch,
      String parts,
      String oven,
      String in,
      String minutes,
      String done,
      String due,
      boolean late) {}

  static List<RunLine> runs(WeekIndex index) {
    List<RunLine> lines = new ArrayList<>();
    for (LineSpec line : index.report().brief().lines()) {
      List<RunRow> rows = new ArrayList<>();
      String day = "";
      for (LoadPlace place : index.loads(line)) {
        String start = index.time().at(place.startMin());
        String today = start.substring(0, Math.max(0, start.length() - 6));
        rows.add(run(index, place, start, !today.equals(day)));
        day = today;
      }
      if (!rows.isEmpty()) {
        lines.add(new RunLine(line.name(), machineWord(line.kind()), rows));
      }
    }
    return lines;
  }

  private static boolean ovens(LineKind kind) {
    return kind == LineKind.POWDER || kind == LineKind.LIQUID;
  }

  private static String machineWord(LineKind kind) {
    return switch (kind) {
      case POWDER, LIQUID -> "oven";
      case ZINC -> "kettle";
      case OUTSIDE -> "truck";
    };
  }

  private static RunRow run(WeekIndex index, LoadPlace place, String start, boolean newDay) {
    return new RunRow(
        place.id(),
        start,
        newDay,
        place.carrier().name() + " " + place.load().carrierNumber(),
        index.colour(place.finish()),
        new LoadHeads(index).patch(place),
        String.join(
            ", ",
            place.lots().stream()
                .map(l -> l.pieces() + " " + l.label() + " " + l.jobId())
                .toList()),
        ovens(place.line().kind())
            ? place.machine().name() + " " + place.setting()
            : place.machine().name(),
        index.clockOf(place.batch().startMin()),
        Integer.toString(place.batch().dwellMin()),
        index.ends(place.endMin()),
        index.time().due(place.dueMin()),
        place.lots().stream().anyMatch(l -> l.lastLeg() && place.endMin() > l.dueMin()));
  }

  /**
   * A hold point: signed before the next step.
   *
   * @param load load or kit
   * @param when about when
   * @param check what is looked at
   * @param limit what must be true
   * @param two true when two people sign
   */
  public record Hold(String load, String when, String check, String limit, boolean two) {}

  static List<Hold> holds(WeekIndex index) {
    List<Hold> holds = new ArrayList<>();
    Set<String> colours = new LinkedHashSet<>();
    for (LoadPlace place : index.loads()) {
      String when = index.begins(place.batch().startMin());
      if (place.finish().kind() == FinishKind.ZINC) {
        boolean away = place.line().kind() == LineKind.OUTSIDE;
        if (place.lots().stream()
            .anyMatch(
                l -> index.note(l).flatMap(LotNote::zinc).map(z -> z.hollow()).orElse(true))) {
          holds.add(
              new Hold(
                  place.id(),
                  (away ? "before it leaves, " : "before ") + when,
                  "vents and drains of every hollow",
                  "light seen through, holes high and low as hung; else it stays out",
                  true));
        }
        holds.add(
            new Hold(
                place.id(),
                index.ends(place.batch().endMin()),
                "zinc thickness",
                (away ? "as on the sheet" : "as on the dip sheet")
                    + "; the mean counts, not one reading",
                false));
      } else if (place.finish().kind() != FinishKind.DEGAS
          && colours.add(place.finish().materialId())) {
        holds.add(
            new Hold(
                place.id(),
                index.ends(place.batch().endMin()),
                "first film of " + index.colour(place.finish()),
                "inside the film wanted, before the second load is sprayed",
                false));
      }
      if (ovens(place.line().kind())) {
        boolean firstOfBatch = place.batch().loads().get(0).id().equals(place.id());
        index
            .note(place.batch())
            .filter(n -> firstOfBatch)
            .ifPresent(
                n ->
                    holds.add(
                        new Hold(
                            place.id(),
                            index.ends(place.batch().endMin()),
                            (n.bake() ? "degassing" : "cure")
                                + " of the heaviest part, "
                                + index.lot(n.probe()).map(l -> l.label()).orElse(n.probe()),
                            n.minutesAtHeat()
                                + " min at "
                                + index.say().number(n.partCelsius(), 0)
                                + (n.bake()
                                    ? " °C of the oven, the part as hot before it leaves"
                                    : " °C on the part; solvent rub as the data sheet says"),
                            false)));
      }
    }
    for (KitStatus kit : KitBoard.of(index)) {
      kit.completeMin()
          .ifPresent(
              at ->
                  holds.add(
                      new Hold(
                          kit.kit().name(),
                          index.time().at(at),
                          "count into the kit",
                          kit.kit().sets() + " sets, every line",
                          false)));
    }
    return holds;
  }

  /**
   * How a part goes into the kettle.
   *
   * @param job the order
   * @param part the part
   * @param verdict in capitals on the sheet
   * @param no true when it does not fit
   * @param words margins and angles
   * @param svg drawing; empty where there is none that can be trusted
   * @param cautions what to mind
   */
  public record Fit(
      String job,
      String part,
      String verdict,
      boolean no,
      String words,
      String svg,
      List<String> cautions) {
    /** Copies the list. */
    public Fit {
      cautions = List.copyOf(cautions);
    }
  }

  static List<Fit> fits(WeekIndex index) {
    return index.report().facts().fits().stream()
        .map(
            (FitNote f) ->
                new Fit(
                    f.jobId(),
                    f.partName(),
                    f.verdict().equals("no") ? "does not fit" : f.verdict().replace('-', ' '),
                    f.verdict().equals("no"),
                    f.words(),
                    SafeDrawing.of(f.svg()),
                    f.cautions()))
        .toList();
  }

  /**
   * A part's drawing.
   *
   * @param job the order
   * @param part the part
   * @param words the file and its doubts
   * @param svg the picture
   */
  public record Drawn(String job, String part, String words, String svg) {}

  static List<Drawn> drawings(WeekIndex index) {
    return index.report().facts().drawings().stream()
        .map(
            d ->
                new Drawn(
                    d.jobId(),
                    d.partName().isBlank() ? d.partId() : d.partId() + " " + d.partName(),
                    d.words(),
                    SafeDrawing.of(d.svg())))
        .filter(d -> !d.svg().isEmpty())
        .toList();
  }

  static List<LineChart.Sheet> charts(WeekIndex index) {
    return index.report().brief().lines().stream()
        .flatMap(line -> LineChart.of(index, line).stream())
        .toList();
  }
}
