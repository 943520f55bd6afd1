package spangle.desk;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import spangle.estimate.BathWeek;

/** What the kettle crew reads of a week's bath. */
final class BathWords {
  private BathWords() {}

  static String of(BathDesk.Bath bath) {
    BathWeek level = bath.level();
    List<String> words = new ArrayList<>();
    for (BathWeek.TopUp topUp : level.topUps()) {
      words.add(
          String.format(
              Locale.ROOT,
              "top up by %s: %d dry ingots of %.0f kg, ash and dross counted",
              DayWords.of(topUp.atMin()),
              topUp.ingots(),
              bath.ingotKg()));
    }
    words.add(
        level
            .uncovered()
            .map(
                u ->
                    String.format(
                        Locale.ROOT,
                        "NOT COVERED: %s on %s, %.0f mm too low; top up before it",
                        u.name(),
                        DayWords.of(u.atMin()),
                        u.missingMm()))
            .orElse("every planned part stays covered"));
    bath.heaviest()
        .ifPresent(
            h ->
                words.add(
                    String.format(
                        Locale.ROOT,
                        "heaviest dip %s costs %.1f C with the burners off",
                        h.batchId(),
                        h.dropK())));
    return String.join("; ", words);
  }
}
