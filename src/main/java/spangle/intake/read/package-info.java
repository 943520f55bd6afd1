/**
 * Readers of the files of a week folder: each takes a tree of text and gives records or problems,
 * all problems of all files at once. A refused row never takes another one with it.
 */
@org.jspecify.annotations.NullMarked
package spangle.intake.read;
