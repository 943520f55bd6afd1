/**
 * Pages of the project's docs that are made from what the program ships, and the proof that they
 * are current.
 */
package spangle.docs;
