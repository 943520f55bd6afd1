package spangle.part;

import spangle.measure.Box;

/**
 * Figures of one piece.
 *
 * @param areaM2 all surface a bath wets: both faces, bores, and cut edges unless left out
 * @param oneSideM2 what a gun paints from one side: one face or the outside, with its cut edges
 * @param cutEdgeM length of cut edge; edge area is this times the thickness
 * @param massKg mass without coating
 * @param envelopeMm outside size
 * @param skinThicknessMm thickness of the metal: sheet, wall, web or least bar size
 * @param enclosedVolumeL litres of inner space, open or closed
 * @param hollow what kind of inner space that is
 * @param working the sum in words, for the person who checks it
 */
public record Measured(
    double areaM2,
    double oneSideM2,
    double cutEdgeM,
    double massKg,
    Box envelopeMm,
    double skinThicknessMm,
    double enclosedVolumeL,
    HollowKind hollow,
    String working) {}
