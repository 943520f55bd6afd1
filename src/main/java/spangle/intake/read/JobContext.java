package spangle.intake.read;

import java.util.Optional;
import java.util.Set;
import spangle.intake.week.Catalogue;
import spangle.intake.week.Shop;

/**
 * What the rows of one job file are read against.
 *
 * @param shop the shop
 * @param catalogue powders, paints, zinc
 * @param refusedFinishes ids that stand in the coatings file and were refused there
 * @param times reading of dates in this file
 * @param decimal what a comma before three digits means in this file, where somebody said so
 * @param gaugeTable gauge table named for this file or the shop
 * @param folder the week folder, for drawings
 * @param drawings drawings read so far
 */
record JobContext(
    Shop shop,
    Catalogue catalogue,
    Set<String> refusedFinishes,
    Times times,
    Optional<ColumnRules.Decimal> decimal,
    Optional<String> gaugeTable,
    WeekFolder folder,
    DrawingShelf drawings) {}
