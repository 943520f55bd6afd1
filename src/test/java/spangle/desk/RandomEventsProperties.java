package spangle.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import spangle.intake.week.GateRecord;
import spangle.intake.week.Job;
import spangle.intake.week.PartLine;
import spangle.intake.week.WeekInput;
import spangle.plan.LoadTimes;
import spangle.plan.PlannedBatch;
import spangle.plan.PlannedLoad;
import spangle.plan.event.Stage;

/**
 * Events by chance, sensible and foolish ones, again and again: whatever is reported, no piece is
 * lost, nothing that hangs moves, no gate opens by itself, and every plan passes the audit.
 */
class RandomEventsProperties {
  private static final String[] DAYS = {"mon", "tue", "wed", "thu", "fri"};
  @TempDir Path folder;

  @Test
  void aFewDozenSequencesInASmallWeek() {
    for (int seed = 1; seed <= 12; seed++) {
      sequence(Path.of("samples/first-steps"), seed, 4, 20);
    }
  }

  @Test
  void someSequencesInTheDemoWeek() {
    for (int seed = 1001; seed <= 1002; seed++) {
      sequence(Path.of("samples/harbour-week"), seed, 3, 20);
    }
  }

  @Test
  @Tag("thorough")
  void fiveHundredSequencesInTheDemoWeek() {
    int first = Integer.getInteger("sequence", 1);
    int sequences = Integer.getInteger("sequences", 500);
    assertThat(sequences).as("sequences to run").isPositive();
    for (int seed = first; seed < first + sequences; seed++) {
      sequence(Path.of("samples/harbour-week"), seed, 5, 100);
    }
  }

  private void sequence(Path sample, int seed, int replans, long steps) {
    Random random = new Random(seed);
    LivingWeek week =
        new LivingWeek(sample, folder.resolve(sample.getFileName() + "-" + seed), steps);
    int now = 300 + random.nextInt(200);
    for (int turn = 0; turn < replans; turn++) {
      int events = 1 + random.nextInt(4);
      for (int e = 0; e < events; e++) {
        week.event(event(week, random, now));
      }
      String what = "seed " + seed + ", replan " + turn + " of " + sample + " at " + words(now);
      ReplanDesk.Rest rest = week.sound(now, what);
      assertThat(oneLineForEachSheet(rest.changes())).as(what + rest.changes()).isTrue();
      now += 20 + random.nextInt(500);
      if (now >= 4 * 1440 + 800) {
        return;
      }
    }
  }

  /** No load stands twice on a change list, and every line says whom to tell. */
  private static boolean oneLineForEachSheet(ChangeList changes) {
    List<String> loads =
        changes.lines().stream().map(ChangeList.Line::load).filter(l -> !l.isEmpty()).toList();
    return new HashSet<>(loads).size() == loads.size()
        && changes.lines().stream()
            .noneMatch(l -> l.tell().isEmpty() || l.before().isEmpty() || l.after().isEmpty());
  }

  private static String words(int minute) {
    return String.format(
        Locale.ROOT, "%s %02d:%02d", DAYS[minute / 1440], minute % 1440 / 60, minute % 60);
  }

  private static <T> T any(List<T> list, Random random) {
    return list.get(random.nextInt(list.size()));
  }

  /** One line of the log; about one in six is foolish. */
  private static String event(LivingWeek week, Random random, int now) {
    String when = "when: " + words(Math.max(0, now - random.nextInt(30))) + ", what: ";
    String until = ", until: " + words(Math.min(4 * 1440 + 1000, now + 60 + random.nextInt(900)));
    WeekInput input = week.input();
    Job job = any(input.jobs(), random);
    PartLine part = any(job.parts(), random);
    String about = "job: " + job.id() + ", part: " + part.id();
    int count = 1 + random.nextInt(Math.max(1, part.qty()));
    List<String> stations = new ArrayList<>();
    input.shop().lines().forEach(l -> l.stations().forEach(s -> stations.add(s.id())));
    List<String> materials = new ArrayList<>();
    input.catalogue().coatings().forEach(c -> materials.add(c.id()));
    String station = any(stations, random);
    String material = any(materials, random);
    int earlier = 1 + random.nextInt(Math.max(1, input.events().last()));
    return switch (random.nextInt(36)) {
      case 0, 1, 2, 3, 4, 5 -> when + "as-planned";
      case 6 -> when + "arrived, " + about + ", count: " + count;
      case 7 -> when + "expected, " + about + ", count: " + count + until;
      case 8, 9 -> when + "rejected, " + rejected(week, random, about);
      case 10 -> when + "stripped, " + about + ", count: " + (1 + random.nextInt(20));
      case 11, 12 -> when + "broken, station: " + station + until;
      case 13 -> when + "broken, station: " + station;
      case 14 -> when + "broken, station: " + station + ", count: 1" + until;
      case 15 -> when + "repaired, station: " + station;
      case 16 -> when + "slow, station: " + station + ", factor: 2";
      case 17 -> when + "absent, station: " + station + ", factor: 3" + until;
      case 18 -> when + "slipped, material: " + material + until;
      case 19 ->
          when + "delivered, material: " + material + ", amount: " + (1 + random.nextInt(20));
      case 20 -> when + "certificate, " + about + ", si_pct: 0.09, p_pct: 0.02";
      case 21 -> when + "cancelled, job: " + job.id();
      case 22 -> when + "cancelled, " + about;
      case 23 -> when + "priority-changed, job: " + job.id() + ", priority: 9";
      case 24 -> when + "priority-changed, " + about + ", due: fri 18:00";
      case 25 -> when + "level, station: kettle, level_down_mm: " + 100 * random.nextInt(9);
      case 26 -> when + "gate-opened, " + about + ", gate: " + gate(random) + ", opened_by: [A, B]";
      case 27 -> when + "struck, event: " + earlier;
      case 28 ->
          when + "scrapped, " + about + ", count: " + (1 + random.nextInt(12)) + ", of: waiting";
      case 29 ->
          when
              + "scrapped, "
              + rejected(week, random, about).replaceAll(", coats.*", "")
              + ", of: rejected";
      case 30, 31 -> when + "taken-down, load: " + hanging(week, random);
      default -> when + ofLoad(week, random, now);
    };
  }

  /** A load that hung at the last replan and had not begun, or any. */
  private static String hanging(LivingWeek week, Random random) {
    List<String> hang = new ArrayList<>();
    week.lastState()
        .ifPresent(
            state ->
                state.loads().values().stream()
                    .filter(l -> l.stage() == Stage.HUNG)
                    .forEach(l -> hang.add(l.load())));
    week.plan().plan().batches().stream()
        .flatMap(b -> b.loads().stream())
        .limit(hang.isEmpty() ? 5 : 0)
        .forEach(l -> hang.add(l.id()));
    return hang.isEmpty() ? "P99" : any(hang, random);
  }

  private static String gate(Random random) {
    GateRecord.Gate[] gates = GateRecord.Gate.values();
    return gates[random.nextInt(gates.length)].word();
  }

  /** Pieces of a part that is finished, where one is; one in three times with two coats. */
  private static String rejected(LivingWeek week, Random random, String other) {
    List<String> finished = new ArrayList<>();
    week.lastState()
        .ifPresent(
            state ->
                state.pieces().stream()
                    .filter(p -> p.good() > 0)
                    .forEach(p -> finished.add("job: " + p.jobId() + ", part: " + p.partId())));
    String about = finished.isEmpty() ? other : any(finished, random);
    String coats = random.nextInt(3) == 0 ? ", coats: 2" : "";
    return about + ", count: " + (1 + random.nextInt(20)) + coats;
  }

  /** Of a load that could be where it is said to be, or of any. */
  private static String ofLoad(LivingWeek week, Random random, int now) {
    String[] kinds = {
      "released", "withdrawn", "hung", "started", "done", "inspected", "taken-down"
    };
    List<String> near = new ArrayList<>();
    List<String> all = new ArrayList<>();
    for (PlannedBatch batch : week.plan().plan().batches()) {
      for (PlannedLoad load : batch.loads()) {
        all.add(load.id());
        if (Math.abs(LoadTimes.first(batch, load) - now) < 90) {
          near.add(load.id());
        }
      }
    }
    boolean foolish = near.isEmpty() || random.nextInt(6) == 0;
    String load = all.isEmpty() ? "P99" : any(foolish ? all : near, random);
    return kinds[foolish ? random.nextInt(7) : random.nextInt(3)] + ", load: " + load;
  }
}
