package spangle.solve;

/** Is told of the first plan and of every better one. Called from searching threads, in turn. */
@FunctionalInterface
public interface ProgressListener {
  /** Nobody listens. */
  ProgressListener NOBODY = progress -> {};

  /** A better plan has been found. */
  void better(Progress progress);
}
