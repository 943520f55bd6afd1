package spangle.report;

import java.util.List;

/**
 * What the sheets of single lots, loads, batches and parts say beyond the plan.
 *
 * @param lots by lot
 * @param loads by load
 * @param batches by oven batch
 * @param fits how large parts go into the kettle
 * @param drawings what parts that come from a drawing look like
 * @param cautions for the whole week
 */
public record SheetFacts(
    List<LotNote> lots,
    List<LoadNote> loads,
    List<BatchNote> batches,
    List<FitNote> fits,
    List<DrawingNote> drawings,
    List<String> cautions) {
  /** Nothing known. */
  public static final SheetFacts EMPTY =
      new SheetFacts(List.of(), List.of(), List.of(), List.of(), List.of(), List.of());

  /** Copies the lists. */
  public SheetFacts {
    lots = List.copyOf(lots);
    loads = List.copyOf(loads);
    batches = List.copyOf(batches);
    fits = List.copyOf(fits);
    drawings = List.copyOf(drawings);
    cautions = List.copyOf(cautions);
  }
}
