/** Does it go in: carriers, ovens and doors, tanks, kettle, vents and gates. */
@org.jspecify.annotations.NullMarked
package spangle.fit;
