/** Measures the product against public benchmarks, through its own brief, solver and clock. */
@org.jspecify.annotations.NullMarked
package spangle.bench;
