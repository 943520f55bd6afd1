package spangle.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import spangle.desk.PlanDesk;
import spangle.plan.LeftOut;
import spangle.plan.Lot;
import spangle.plan.PlanFigures;
import spangle.plan.bound.WeekBounds;
import spangle.plan.json.PlanYardstick;
import spangle.plan.json.StartedFrom;
import spangle.report.TerminalSummary;
import spangle.report.week.KitBoard;
import spangle.report.week.OvertimeWords;
import spangle.report.week.TenAnswers;
import spangle.report.week.WeekIndex;
import spangle.report.week.WeekTime;

/** What the plan command says of a planned week. */
final class PlanWords {
  private PlanWords() {}

  static String screen(PlanDesk.Made made, Path target, List<String> files) {
    StringBuilder text = new StringBuilder(TerminalSummary.of(made.report()));
    text.append(String.format(Locale.ROOT, "%nSheets: %s%n", target.resolve("index.html")));
    text.append("Files: ").append(String.join(", ", files)).append(System.lineSeparator());
    return text.toString();
  }

  static JsonOut json(PlanDesk.Made made, Path target, List<String> files) {
    PlanFigures f = made.plan().figures();
    Map<String, Object> figures = new TreeMap<>();
    figures.put("batches", f.batches());
    figures.put("loads", f.loads());
    figures.put("run_minutes", f.runMinutes());
    figures.put("colour_changes", f.colourChanges());
    figures.put("setting_minutes", f.settingMinutes());
    figures.put("late_lots", f.lateLots());
    figures.put("late_kits", f.lateKits());
    figures.put("kit_minutes", f.kitMinutes());
    figures.put("set_minutes", f.setMinutes());
    figures.put("trips", f.trips());
    figures.put("goal", f.goal());
    JsonOut out = new JsonOut();
    made.yardstick()
        .ifPresent(
            y -> {
              out.put("no_plan_under", floors(y.noPlanUnder()));
              out.put("by_hand", byHand(y));
            });
    return out.put("out", target.toString().replace('\\', '/'))
        .put("files", files)
        .put("figures", figures)
        .put("left_out", made.plan().leftOut().stream().map(l -> l.lotId()).toList())
        .put("left_out_why", leftOut(made))
        .put(
            "overtime",
            new OvertimeWords(made.report().overtime(), new WeekTime(made.week().brief().monday()))
                .lines())
        .put("kits", kits(made))
        .put(
            "held",
            made.week().held().stream()
                .map(h -> h.jobId() + "/" + h.partId() + " " + h.gate())
                .toList())
        .put("answers", answers(made))
        .put("started_from", made.startedFrom().map(StartedFrom::version).orElse(null))
        .put("problems", made.week().input().problems().size())
        .put("findings", made.findings().stream().map(x -> x.words()).toList());
  }

  private static List<JsonOut> leftOut(PlanDesk.Made made) {
    WeekIndex index = new WeekIndex(made.report());
    List<JsonOut> left = new ArrayList<>();
    for (LeftOut each : made.plan().leftOut()) {
      Optional<Lot> lot = index.lot(each.lotId());
      left.add(
          new JsonOut()
              .put("lot", each.lotId())
              .put("job", lot.map(Lot::jobId).orElse(""))
              .put("part", lot.map(Lot::partId).orElse(""))
              .put("pieces", lot.map(Lot::pieces).orElse(0))
              .put("code", each.code())
              .put("reason", each.reason())
              .put("earliest", minute(index, each.earliestMin()))
              .put("condition", each.condition().isEmpty() ? null : each.condition()));
    }
    return left;
  }

  /** Complete sets at the end of each day, Monday first; what holds what is not complete. */
  private static List<JsonOut> kits(PlanDesk.Made made) {
    WeekIndex index = new WeekIndex(made.report());
    return KitBoard.of(index).stream()
        .map(
            k ->
                new JsonOut()
                    .put("id", k.kit().id())
                    .put("name", k.kit().name())
                    .put("state", k.state().words())
                    .put("sets", k.kit().sets())
                    .put("sets_planned", k.setsPlanned())
                    .put("sets_by_day", k.setsByDay())
                    .put("complete", minute(index, k.completeMin()))
                    .put("due", index.time().due(k.kit().dueMin()))
                    .put("spread_min", k.spreadMin().isPresent() ? k.spreadMin().getAsInt() : null)
                    .put("powder_lots", k.powderLots())
                    .put("held_by", k.blocker()))
        .toList();
  }

  private static @Nullable String minute(WeekIndex index, OptionalInt at) {
    return at.isPresent() ? index.time().at(at.getAsInt()) : null;
  }

  private static Map<String, Object> floors(WeekBounds floor) {
    Map<String, Object> floors = new TreeMap<>();
    floors.put("batches", floor.ovenBatches() + floor.dips());
    floors.put("loads", floor.loads());
    floors.put("run_minutes", floor.machineMinutes());
    floors.put("colour_changes", floor.colourChanges());
    floors.put("setting_minutes", floor.settingMinutes());
    floors.put("late_lots", floor.lateLots());
    floors.put("late_kits", floor.lateKits());
    floors.put("set_minutes", floor.setMinutes());
    floors.put("goal", floor.goal());
    return floors;
  }

  private static Map<String, Object> byHand(PlanYardstick yardstick) {
    PlanFigures f = yardstick.byHand();
    Map<String, Object> hand = new TreeMap<>();
    hand.put("batches", f.batches());
    hand.put("loads", f.loads());
    hand.put("run_minutes", f.runMinutes());
    hand.put("colour_changes", f.colourChanges());
    hand.put("late_lots", f.lateLots());
    hand.put("late_kits", f.lateKits());
    hand.put("kit_minutes", f.kitMinutes());
    hand.put("set_minutes", f.setMinutes());
    hand.put("trips", f.trips());
    hand.put("lots_left_out", yardstick.byHandLotsLeftOut());
    hand.put("heat_kwh", yardstick.byHandHeatKwh());
    hand.put("work_kg", yardstick.byHandWorkKg());
    hand.put("plan_work_kg", yardstick.workKg());
    hand.put("plan_heat_kwh", yardstick.heatKwh());
    return hand;
  }

  private static List<JsonOut> answers(PlanDesk.Made made) {
    return TenAnswers.of(new WeekIndex(made.report())).stream()
        .map(
            a ->
                new JsonOut()
                    .put("number", a.number())
                    .put("topic", a.topic())
                    .put("question", a.question())
                    .put("answer", a.answer())
                    .put("details", a.details())
                    .put("needs_you", a.alarm()))
        .toList();
  }
}
