package spangle.report.picture;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import spangle.equipment.Span;
import spangle.plan.LineSpec;
import spangle.report.Stop;
import spangle.report.week.WeekIndex;
import spangle.report.week.WeekTime;

/**
 * The week of a line on a wall: one block for each day, one lane for each station, tags hung on a
 * wire from the hour they start. Closed times are shaded, frozen days carry the word.
 */
public final class LineChart {
  private static final double WIDTH = 1320;
  private static final double LEFT = 168;
  private static final double LANE = 36;
  private static final double TAG = 28;
  private static final double STRIP = 10;
  private static final double HEAD = 36;
  private static final double GAP = 14;
  private static final double CHARACTER = 7.4;
  private static final int ROWS_ON_A_SHEET = 24;
  private static final int RISING = 0;
  private static final int LEVEL = 4;
  private static final double SHUT_STEP = 9;
  private static final double SETUP_STEP = 5;
  private static final int ROUND_THE_CLOCK = 20 * 60;

  private final WeekIndex index;
  private final LineSpec line;
  private final List<Lane> lanes;
  private final int fromHour;
  private final int toHour;

  /**
   * One sheet of a chart.
   *
   * @param title line and days
   * @param svg the drawing
   */
  public record Sheet(String title, String svg) {}

  private LineChart(WeekIndex index, LineSpec line) {
    this.index = index;
    this.line = line;
    lanes = Lanes.of(index, line);
    int from = 24;
    int to = 0;
    for (Lane lane : lanes) {
      for (Bar bar : lane.bars()) {
        from = Math.min(from, hourDown(bar.startMin()));
        to = Math.max(to, sameDay(bar) ? hourUp(bar.endMin()) : 24);
        from = sameDay(bar) ? from : 0;
      }
      for (Span span : lane.calendar().open()) {
        if (span.minutes() < ROUND_THE_CLOCK && !lane.bars().isEmpty()) {
          from = Math.min(from, hourDown(span.startMin()));
          to = Math.max(to, hourUp(span.endMin()));
        }
      }
    }
    fromHour = from < to ? from : 0;
    toHour = from < to ? to : 24;
  }

  /** The charts of a line; no sheet when nothing runs on it. */
  public static List<Sheet> of(WeekIndex index, LineSpec line) {
    LineChart chart = new LineChart(index, line);
    List<Integer> days = chart.days();
    int daysOnASheet = Math.max(1, ROWS_ON_A_SHEET / Math.max(1, chart.lanes.size()));
    List<Sheet> sheets = new ArrayList<>();
    for (int i = 0; i < days.size(); i += daysOnASheet) {
      sheets.add(chart.sheet(days.subList(i, Math.min(days.size(), i + daysOnASheet))));
    }
    return sheets;
  }

  private static boolean sameDay(Bar bar) {
    return WeekTime.dayOf(bar.startMin())
        == WeekTime.dayOf(Math.max(bar.startMin(), bar.endMin() - 1));
  }

  private static int hourDown(int minute) {
    return Math.floorMod(minute, WeekTime.DAY) / 60;
  }

  private static int hourUp(int minute) {
    int inDay = Math.floorMod(minute, WeekTime.DAY);
    return inDay == 0 ? 24 : (inDay + 59) / 60;
  }

  private List<Integer> days() {
    return lanes.stream()
        .flatMap(l -> l.bars().stream())
        .flatMapToInt(
            b ->
                IntStream.rangeClosed(
                    WeekTime.dayOf(b.startMin()),
                    WeekTime.dayOf(Math.max(b.startMin(), b.endMin() - 1))))
        .distinct()
        .sorted()
        .boxed()
        .toList();
  }

  private Sheet sheet(List<Integer> days) {
    double block = HEAD + lanes.size() * LANE + GAP;
    String title =
        line.name()
            + ", "
            + index.time().day(days.get(0))
            + (days.size() > 1 ? " to " + index.time().day(days.get(days.size() - 1)) : "");
    Svg svg = new Svg(WIDTH, days.size() * block, "chart", title);
    double y = 0;
    for (int day : days) {
      day(svg, day, y);
      y += block;
    }
    return new Sheet(title, svg.done());
  }

  private double x(int minuteOfDay) {
    double share = (minuteOfDay - 60.0 * fromHour) / (60.0 * (toHour - fromHour));
    return LEFT + Math.max(0, Math.min(1, share)) * (WIDTH - LEFT - 2);
  }

  private void day(Svg svg, int day, double top) {
    double lanesTop = top + HEAD;
    double bottom = lanesTop + lanes.size() * LANE;
    int zero = day * WeekTime.DAY;
    svg.text(0, top + 24, "t day", index.time().day(day));
    for (int i = 0; i < lanes.size(); i++) {
      shade(svg, lanes.get(i), zero, lanesTop + i * LANE);
    }
    frozen(svg, zero, lanesTop, bottom);
    for (int hour = fromHour; hour <= toHour; hour++) {
      double x = x(hour * 60);
      svg.line(x, lanesTop - 4, x, bottom, "hour");
      if (hour < toHour) {
        svg.text(x + 3, lanesTop - 6, "t clock", index.time().clock(hour * 60));
      }
    }
    for (int i = 0; i < lanes.size(); i++) {
      lane(svg, lanes.get(i), zero, lanesTop + i * LANE);
    }
    svg.line(0, bottom, WIDTH, bottom, "floor");
    now(svg, zero, lanesTop, bottom);
  }

  private void shade(Svg svg, Lane lane, int zero, double top) {
    int at = fromHour * 60;
    List<Span> open =
        lane.calendar().open().stream()
            .filter(s -> s.endMin() > zero && s.startMin() < zero + WeekTime.DAY)
            .toList();
    for (Span span : open) {
      shut(svg, at, span.startMin() - zero, top, at > fromHour * 60);
      at = Math.max(at, span.endMin() - zero);
    }
    shut(svg, at, toHour * 60, top, false);
  }

  private void shut(Svg svg, int from, int to, double top, boolean betweenShifts) {
    int end = Math.min(to, toHour * 60);
    if (end <= from) {
      return;
    }
    double left = x(from);
    double width = x(end) - left;
    svg.rect(left, top, width, LANE, "shut");
    svg.path(HatchLines.path(RISING, left, top, width, LANE, SHUT_STEP), "shutline");
    if (betweenShifts && width > 48) {
      svg.text(left + width / 2, top + LANE - 6, "t pause", "break");
    }
  }

  private void frozen(Svg svg, int zero, double top, double bottom) {
    int until = index.report().heading().frozenUntilMin() - zero;
    if (until > fromHour * 60) {
      double right = x(Math.min(until, toHour * 60));
      svg.rect(LEFT, top, right - LEFT, bottom - top, "frozen");
      svg.text(
          LEFT - 6, top - 6, "t ice", "frozen to " + index.time().clock(Math.min(until, 1439)));
    }
  }

  private void now(Svg svg, int zero, double top, double bottom) {
    index
        .report()
        .heading()
        .nowMin()
        .ifPresent(
            minute -> {
              int at = minute - zero;
              if (at >= fromHour * 60 && at <= toHour * 60) {
                svg.line(x(at), top - 12, x(at), bottom, "now");
                double clear =
                    Math.max(
                        x(at) + 4,
                        index.report().heading().frozenUntilMin() > zero ? LEFT + 124 : 0);
                svg.text(clear, top - 19, "t nowword", "now " + index.time().clock(minute));
              }
            });
  }

  private void lane(Svg svg, Lane lane, int zero, double top) {
    svg.line(0, top, WIDTH, top, "wire");
    String name = lane.name().length() > 22 ? lane.name().substring(0, 21) + "…" : lane.name();
    svg.text(0, top + 23, "t lane", name);
    for (Stop stop : index.report().stops()) {
      int start = Math.max(stop.startMin() - zero, fromHour * 60);
      int end = Math.min(stop.endMin() - zero, toHour * 60);
      if (stop.stationId().equals(lane.stationId()) && end > start) {
        stop(svg, stop, x(start), x(end), top);
      }
    }
    for (Bar bar : lane.bars()) {
      int start = Math.max(bar.startMin() - zero, 0);
      int end = Math.min(bar.endMin() - zero, WeekTime.DAY);
      if (end > 0 && start < WeekTime.DAY && end > start) {
        bar(svg, bar, x(start), x(end), top);
      }
    }
  }

  /** A block of people's own: white, with dots at its edge instead of a wire it hangs from. */
  private static void stop(Svg svg, Stop stop, double left, double right, double wire) {
    double width = Math.max(2, right - left - 1);
    svg.rect(left, wire + 4, width, TAG, "stop");
    words(svg, left + width / 2, wire + 22, width, "t setupword", stop.words(), "stop");
  }

  private static void bar(Svg svg, Bar bar, double left, double right, double wire) {
    double width = Math.max(2, right - left - 1);
    double top = wire + 4;
    svg.link(bar.place(), bar.title());
    if (bar.setup()) {
      svg.rect(left, top + 6, width, TAG - 12, "setup");
      svg.path(HatchLines.path(LEVEL, left, top + 6, width, TAG - 12, SETUP_STEP), "hd");
      words(svg, left + width / 2, top + 18, width, "t setupword", bar.label(), bar.brief());
    } else {
      svg.rect(left, top, width, TAG, "tag");
      double part = width / bar.fills().size();
      for (int i = 0; i < bar.fills().size(); i++) {
        Bar.Fill fill = bar.fills().get(i);
        double x = left + i * part;
        Hatch.fill(svg, x, top + TAG - STRIP, part, STRIP, fill.hatch(), fill.rgb());
      }
      svg.rect(left, top, width, TAG, "edge");
      words(svg, left + width / 2, top + 14, width, "t tagword", bar.label(), bar.brief());
    }
    svg.unlink();
  }

  private static void words(
      Svg svg, double middle, double y, double width, String kind, String label, String brief) {
    double room = width - 4;
    if (label.length() * CHARACTER <= room) {
      svg.text(middle, y, kind, label);
    } else if (brief.length() * CHARACTER <= room) {
      svg.text(middle, y, kind, brief);
    } else if (!brief.isEmpty() && brief.length() * CHARACTER * 0.72 <= room + 3) {
      svg.text(middle, y, 9.5, kind + " small", brief);
    }
  }
}
