package spangle.report;

/**
 * What an oven hand must know of a batch beyond the plan.
 *
 * @param batchId the batch
 * @param probe lot whose part is heaviest: the probe goes on it
 * @param lightest lot whose part is lightest: it sets the longest stay
 * @param heatUpMin minutes until the probed part is at temperature, from the oven being back at its
 *     setting
 * @param minutesAtHeat minutes after part temperature at least; of a bake without paint, minutes
 *     after the oven is back at its setting
 * @param longestMin minutes in the oven at most
 * @param partCelsius part temperature the clock starts at
 * @param bake whether nothing is cured: a bake that drives gas out of zinc
 * @param words anything more; may be empty
 */
public record BatchNote(
    String batchId,
    String probe,
    String lightest,
    int heatUpMin,
    int minutesAtHeat,
    int longestMin,
    double partCelsius,
    boolean bake,
    String words) {}
