package spangle.report.week;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import spangle.plan.Lot;

/**
 * A part of a job that is finished past its due time.
 *
 * @param jobId the order
 * @param partId the part
 * @param label the part in words
 * @param pieces how many pieces are late
 * @param dueMin wanted
 * @param endMin planned end of the last of them
 * @param loads loads they are on
 */
public record LateWork(
    String jobId,
    String partId,
    String label,
    int pieces,
    int dueMin,
    int endMin,
    List<String> loads) {
  /** Copies the list. */
  public LateWork {
    loads = List.copyOf(loads);
  }

  /** All late work, due first at the top. */
  public static List<LateWork> of(WeekIndex index) {
    Map<String, LateWork> found = new LinkedHashMap<>();
    for (LoadPlace place : index.loads()) {
      for (Lot lot : place.lots()) {
        if (lot.lastLeg() && place.endMin() > lot.dueMin()) {
          found.merge(
              lot.jobId() + "\u0000" + lot.partId() + "\u0000" + lot.dueMin(),
              new LateWork(
                  lot.jobId(),
                  lot.partId(),
                  lot.label(),
                  lot.pieces(),
                  lot.dueMin(),
                  place.endMin(),
                  List.of(place.id())),
              LateWork::plus);
        }
      }
    }
    return found.values().stream()
        .sorted(
            Comparator.comparingInt(LateWork::dueMin)
                .thenComparing(LateWork::jobId)
                .thenComparing(LateWork::label))
        .toList();
  }

  /** What holds it, in words; empty where nobody looked for it. */
  public Optional<String> cause(WeekIndex index) {
    return Optional.ofNullable(index.report().lateCauses().get(jobId + "/" + partId));
  }

  private LateWork plus(LateWork more) {
    List<String> all = new ArrayList<>(loads);
    more.loads.stream().filter(l -> !all.contains(l)).forEach(all::add);
    return new LateWork(
        jobId, partId, label, pieces + more.pieces, dueMin, Math.max(endMin, more.endMin), all);
  }
}
