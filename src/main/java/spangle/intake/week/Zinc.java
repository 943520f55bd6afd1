package spangle.intake.week;

import java.util.Optional;

/**
 * The zinc the kettle is fed with.
 *
 * @param id name in data, usually {@code zinc}
 * @param name words for the sheet
 * @param yield zinc on work / zinc bought
 * @param stock stock in kg; the pack is one ingot
 * @param strip where rejected work is stripped; empty where the shop says nothing of it
 */
public record Zinc(String id, String name, double yield, Stock stock, Optional<ZincStrip> strip) {}
