/**
 * A week's job files written anew: every accepted part in one table with the program's own
 * headings, units and words, every refused row in another with its reason. Nothing here reads
 * files, and nothing here writes over them: the copy goes into a folder of its own.
 */
@NullMarked
package spangle.intake.copy;

import org.jspecify.annotations.NullMarked;
