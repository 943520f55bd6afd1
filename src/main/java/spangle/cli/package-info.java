/** Commands: read arguments, call the desk, print. No rule of the trade lives here. */
@org.jspecify.annotations.NullMarked
package spangle.cli;
