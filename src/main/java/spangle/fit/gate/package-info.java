/**
 * Conditions that stop a part before it is hung for zinc or heat: shut where the data are silent,
 * opened only by a person's record of who looked, when, and what was seen. A date never opens one,
 * and some never open. Sizes of holes are the business of {@code vent}; nothing is read or printed
 * here. Steam in a sealed hollow bursts it with people in reach of the kettle: local codes and the
 * galvanizer's written release decide, these rules only ask.
 */
@org.jspecify.annotations.NullMarked
package spangle.fit.gate;
