package spangle.report;

/**
 * What the week does to a kettle.
 *
 * @param machineId the kettle
 * @param steelKg black steel dipped
 * @param zincOnPartsKg zinc that leaves on the work, likely
 * @param pickupPct that zinc per cent of the steel
 * @param levelDropMm how far the bath sinks without top-up
 * @param topUpWords when and how much to top up
 */
public record BathLevel(
    String machineId,
    double steelKg,
    double zincOnPartsKg,
    double pickupPct,
    double levelDropMm,
    String topUpWords) {}
