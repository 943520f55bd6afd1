package spangle.plan;

/**
 * What a plan comes to; each term of the goals before weighing.
 *
 * @param runMinutes minutes ovens and kettles of the shop hold batches; days with another firm are
 *     none
 * @param lateLots weighted late lots of last legs
 * @param lateMinutes weighted minutes late
 * @param settingCost cost of setting changes
 * @param settingMinutes minutes of setting changes
 * @param colourCost cost of colour changes
 * @param colourChanges number of colour changes with minutes or cost above zero
 * @param loads carriers filled
 * @param batches oven batches and dips
 * @param lateKits weighted late kits
 * @param kitMinutes minutes the average set of each kit waits from its first finished line to its
 *     last, summed over the kits
 * @param setMinutes minutes from the week's zero until the average set of each kit is whole, times
 *     the kit's weight, summed; a set the plan does not make counts as whole at the week's horizon
 * @param trips trips to another firm
 * @param leftOut weighted lots left out
 * @param moved loads of announced work that are otherwise now, as {@link Goals#moved} counts them;
 *     one of the first day announced counts {@link Goals#STICKY}, a kit complete on a later day
 *     than announced {@link Goals#KIT_DAY}
 * @param goal the weighed sum
 */
public record PlanFigures(
    long runMinutes,
    long lateLots,
    long lateMinutes,
    long settingCost,
    long settingMinutes,
    long colourCost,
    int colourChanges,
    int loads,
    int batches,
    long lateKits,
    long kitMinutes,
    long setMinutes,
    int trips,
    long leftOut,
    int moved,
    long goal) {}
