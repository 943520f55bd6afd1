/**
 * Does it go in: ovens, booths, doors, tanks and the kettle, each station on the way and the crane;
 * straight, tilted, in two dips, or not. Plane geometry on working sizes; no file is read here and
 * nothing is drawn. How parts hang on a carrier is the business of {@code hang}, what stops a part
 * of {@code gate}, where zinc runs in and out of {@code vent}.
 *
 * <h2>Goes in whole</h2>
 *
 * L, W, D are the usable length, width and depth; w is the part's side across; l and h are seen
 * from the side; a is the angle of l above level. The box touches its upright strip with two
 * opposite corners, so it needs {@code l cos a + h sin a} along and {@code l sin a + h cos a} down.
 * It goes in at a when w &lt;= W and both are within L and D. With R = sqrt(l^2 + h^2) and p =
 * atan(h / l) the two are R cos(a - p) and R sin(a + p): each cuts one piece out of the middle of 0
 * to 90 degrees, and what is left are at most three separate ranges, known in closed form. A convex
 * outline is treated the same way between the angles at which one of its edges stands level or
 * upright. Roll turns the part about l first: w and h become w cos r + h sin r and w sin r + h cos
 * r. Less height never hinders, so there is one greatest height that goes in beside l at some tilt,
 * and the rolls that do are again the angles of a box w by h in W by that height.
 *
 * <h2>Two dips, turned over</h2>
 *
 * Level, the part lies with h upright. The first dip reaches some height r from its lower face, the
 * second, after turning it over, the same from the other. The two meet and overlap by v once when r
 * + r = h + v; the bath allows r &lt;= D. Hence {@code (h + v) / 2 <= D}, with w &lt;= W and l
 * &lt;= L.
 *
 * <p><img src="doc-files/turned-over.svg" alt="two level dips, the part turned over between them">
 *
 * <h2>Two dips, end out</h2>
 *
 * The part slopes at a with its low end on the floor of the usable space and the other end out over
 * the rim. The low end face is not a point: from its lowest corner A it leans back by h sin a, so A
 * stands at least h sin a from the end wall. From A the underside climbs with the slope tan a, and
 * at the far wall, L - h sin a further on, it has to be above the rim, f over the surface: {@code
 * (L - h sin a) tan a >= D + f}. The zinc covers the underside for D / sin a, but the top side only
 * for {@code (D - h cos a) / sin a}, because the top begins h cos a above A. The shorter of the two
 * counts: every face must be covered past the middle by half the overlap, so {@code (l + v) / 2 <=
 * (D - h cos a) / sin a}. Swung end for end the second dip does the same from the other end.
 * Setting h = 0 gives the thin bar's rule tan a = (D + f) / L, reach D / sin a; for a box it
 * promises too much on both counts and is never used. The part is thought of as lowered to the full
 * depth; lowered less it would need less angle and reach less far, and that is not counted: the
 * answer errs on the side of no. A part whose convex outline is known is tried by it where its box
 * does not do, rolled and end out; the derivation stands in the project's page on fit.
 *
 * <p><img src="doc-files/end-out.svg" alt="a box sloping over the rim, with the measures above">
 */
@org.jspecify.annotations.NullMarked
package spangle.fit;
