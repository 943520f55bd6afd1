package spangle.desk;

import java.util.Locale;
import java.util.Optional;
import spangle.plan.BathSpec;

/** How far the zinc of a bath stands below what a deep part needs, in words. */
final class ZincWords {
  private ZincWords() {}

  static String of(BathSpec bath, double spareMm) {
    Optional<BathSpec.Mark> filled =
        bath.marks().stream().filter(m -> m.atMin() > 0 && m.downMm() <= spareMm).findFirst();
    return String.format(
        Locale.ROOT,
        "the zinc level: it needs the bath no more than %.0f mm under its mark, which stands %.0f"
            + " mm under it when the week begins%s",
        spareMm,
        bath.markedDownMm(0),
        filled
            .map(m -> ", " + (m.filled() ? "filled up " : "read higher ") + DayWords.of(m.atMin()))
            .orElse(", and no top-up is planned"));
  }
}
