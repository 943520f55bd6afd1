package spangle.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import spangle.intake.week.Job;
import spangle.intake.week.PartLine;
import spangle.intake.week.WeekInput;
import spangle.plan.PlannedBatch;
import spangle.plan.PlannedLoad;
import spangle.plan.event.LoadTimes;

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
    for (int seed = 1; seed <= 500; seed++) {
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
      ReplanDesk.Rest rest = week.replan(now);
      assertThat(rest.findings()).as(what).isEmpty();
      assertThat(week.everyLotOnce()).as(what).isTrue();
      assertThat(week.sums())
          .as(what)
          .allSatisfy((part, sum) -> assertThat(sum.holds()).as(part + " " + sum).isTrue());
      now += 20 + random.nextInt(500);
      if (now >= 4 * 1440 + 800) {
        return;
      }
    }
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
    return switch (random.nextInt(20)) {
      case 0, 1, 2, 3 -> when + "as-planned";
      case 4 -> when + "arrived, " + about + ", count: " + count;
      case 5 -> when + "expected, " + about + ", count: " + count + until;
      case 6 -> when + "rejected, " + about + ", count: " + (1 + random.nextInt(20));
      case 7, 8 -> when + "broken, station: " + any(stations, random) + until;
      case 9 -> when + "broken, station: " + any(stations, random);
      case 10 -> when + "repaired, station: " + any(stations, random);
      case 11 -> when + "slow, station: " + any(stations, random) + ", factor: 2";
      case 12 -> when + "absent, station: " + any(stations, random) + ", factor: 3" + until;
      case 13 -> when + "slipped, material: " + any(materials, random) + until;
      case 14 -> when + "certificate, " + about + ", si_pct: 0.09, p_pct: 0.02";
      case 15 -> when + "cancelled, job: " + job.id();
      case 16 -> when + "priority-changed, job: " + job.id() + ", priority: 9";
      default -> when + ofLoad(week, random, now);
    };
  }

  /** Of a load that could be where it is said to be, or of any. */
  private static String ofLoad(LivingWeek week, Random random, int now) {
    String[] kinds = {"released", "withdrawn", "hung", "started", "done", "inspected"};
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
    return kinds[foolish ? random.nextInt(6) : random.nextInt(3)] + ", load: " + load;
  }
}
