package spangle.desk;

import java.io.IOException;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import spangle.intake.read.WeekReader;
import spangle.intake.week.WeekInput;
import spangle.plan.PlannedBatch;
import spangle.plan.PlannedLoad;
import spangle.plan.event.EventLog;
import spangle.plan.event.LoadState;
import spangle.plan.event.Stage;
import spangle.plan.event.WeekState;
import spangle.plan.json.PlanFile;
import spangle.plan.json.PlanFileException;
import spangle.report.ChangeSheet;

/** Goes back to an earlier plan, sheets and all; the plan left behind stays as well. */
public final class BackDesk {
  private BackDesk() {}

  /**
   * Goes back.
   *
   * @param week the week folder, for what has been reported
   * @param history the plan people work by and those before it
   * @param letter the version wanted
   * @return why it cannot be; empty when it is done
   * @throws PlanFileException when the earlier plan cannot be read as one
   * @throws IOException when the disk refuses; what was there before is still there
   */
  public static List<String> back(Path week, PlanHistory history, String letter)
      throws IOException, PlanFileException {
    if (!history.earlier().contains(letter)) {
      return List.of(
          history.earlier().isEmpty()
              ? "there is no earlier plan to go back to"
              : "there is no version "
                  + letter
                  + " to go back to, only "
                  + String.join(", ", history.earlier()));
    }
    EventLog log = WeekReader.read(week).input().map(WeekInput::events).orElse(EventLog.EMPTY);
    List<String> against = against(history.current(), history.read(letter), log);
    if (against.isEmpty()) {
      Map<String, byte[]> files = new TreeMap<>(history.filesOf(letter));
      files.put("changes.html", sheet(history, letter));
      files.putAll(history.keptFiles());
      WholeFolder.replace(history.folder(), files);
    }
    return against;
  }

  private static byte[] sheet(PlanHistory history, String letter) {
    String left = history.current().version();
    return ChangeSheet.of(
        new ChangeSheet.Content(
            history.current().brief().name(),
            letter,
            left,
            "now on",
            0,
            0,
            0,
            0,
            List.of(),
            List.of(
                new ChangeSheet.Row(
                    "back",
                    "all",
                    "every load that does not hang",
                    "version " + left,
                    "version " + letter + " again",
                    "",
                    "everybody with a sheet " + left,
                    letter))));
  }

  /** Loads the floor has taken up by the sheets of today that the earlier plan has otherwise. */
  private static List<String> against(PlanFile now, PlanFile then, EventLog log) {
    int known = Heard.known(now, log);
    int last = Math.max(0, log.events().stream().mapToInt(e -> e.atMin()).max().orElse(0));
    WeekState state = WeekState.of(now.brief(), now.plan(), log, known, last);
    Map<String, Set<String>> before = new HashMap<>();
    for (PlannedBatch batch : then.plan().batches()) {
      for (PlannedLoad load : batch.loads()) {
        before.put(load.id() + " " + batch.machineId(), new HashSet<>(load.lotIds()));
      }
    }
    return now.plan().batches().stream()
        .flatMap(
            b ->
                b.loads().stream()
                    .filter(
                        l ->
                            state.load(l.id()).map(LoadState::stage).orElse(Stage.PLANNED)
                                != Stage.PLANNED)
                    .filter(
                        l ->
                            !new HashSet<>(l.lotIds())
                                .equals(before.get(l.id() + " " + b.machineId())))
                    .map(l -> l.id()))
        .map(
            id ->
                id
                    + " is on the floor by version "
                    + now.version()
                    + " and is another load in version "
                    + then.version()
                    + ": replan instead")
        .toList();
  }
}
