package spangle.audit;

/** One rule a plan keeps toward what was reported. */
interface LogRule {
  /** Stable name, as it stands in findings. */
  String name();

  /** What it asks, in one sentence. */
  String words();

  /** Looks for everything that breaks it. */
  void check(LogAudit.Case found, Findings findings);
}
