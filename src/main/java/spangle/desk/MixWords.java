package spangle.desk;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import spangle.coating.liquid.MixRatio;
import spangle.coating.liquid.PotLife;
import spangle.intake.week.Paint;

/** What the sprayer mixes for a load of liquid paint. */
final class MixWords {
  private MixWords() {}

  /**
   * One sentence for the sheet.
   *
   * @param paint the paint
   * @param litres ready mixture for the load, thinner included
   */
  static String of(Paint paint, double litres) {
    double unthinned = litres / (1 + paint.thinnerPct() / 100);
    MixRatio ratio = new MixRatio(paint.mix(), MixRatio.Basis.VOLUME, List.of());
    String parts =
        ratio.volumeShares().stream()
            .map(share -> String.format(Locale.ROOT, "%.2f", unthinned * share))
            .collect(Collectors.joining(" + "));
    String thinner =
        paint.thinnerPct() > 0 ? String.format(Locale.ROOT, " + %.2f", litres - unthinned) : "";
    String potLife =
        paint.potLifeMin().isPresent()
            ? String.format(
                Locale.ROOT,
                "; use within %d min at %.0f C, %.0f at 30 C",
                paint.potLifeMin().getAsInt(),
                PotLife.USUAL_C,
                new PotLife(paint.potLifeMin().getAsInt(), PotLife.USUAL_C).minutesAt(30))
            : "";
    return String.format(
        Locale.ROOT,
        "%s%s l by volume, base first%s%s",
        parts,
        thinner,
        thinner.isEmpty() ? "" : ", thinner last",
        potLife);
  }
}
