package spangle.plan;

/**
 * How long a delivery takes.
 *
 * @param workingDays from order to door
 * @param assumed nobody said so: counted with {@link #USUAL_DAYS}
 */
public record LeadTime(int workingDays, boolean assumed) {
  /** Working days where none are given (common practice). */
  public static final int USUAL_DAYS = 5;

  /** As given. */
  public static LeadTime of(int workingDays) {
    return new LeadTime(workingDays, false);
  }

  /** Where nobody gives one. */
  public static LeadTime usual() {
    return new LeadTime(USUAL_DAYS, true);
  }

  /** Such as "4 working days", or "5 working days assumed, no lead_days given". */
  public String words() {
    String days = workingDays + (workingDays == 1 ? " working day" : " working days");
    return assumed ? days + " assumed, no lead_days given" : days;
  }
}
