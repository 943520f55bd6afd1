package spangle.part;

/**
 * The surface of one thickness: an article of several thicknesses has several. Insides, bores and
 * edges belong to their wall.
 *
 * @param thicknessMm wall, mm
 * @param areaM2 all of its surface on one piece, both faces, m2
 */
public record WallArea(double thicknessMm, double areaM2) {}
