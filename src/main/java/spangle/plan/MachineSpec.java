package spangle.plan;

import spangle.equipment.WorkCalendar;

/**
 * An oven or a kettle: takes one batch at a time, each a set of loads. A set-up and the batch after
 * it lie together inside one span of the calendar.
 *
 * @param id unique in the week
 * @param name words for the sheet
 * @param capacityUnits floor or hook places; every carrier takes {@link CarrierSpec#floorUnits()}
 * @param maxMassKg parts and carriers together
 * @param calendar when it works
 * @param initialSetting index of the setting it stands at when the week begins
 * @param turnaroundMin minutes between the end of a batch and the earliest start of the next
 *     (doors, skimming, hoisting), besides set-ups
 * @param kgPerHour steel the heating can take; after a batch of m kg the next starts no sooner than
 *     60 m / kgPerHour minutes after that batch's start; 0 where heat is no limit
 */
public record MachineSpec(
    String id,
    String name,
    int capacityUnits,
    double maxMassKg,
    WorkCalendar calendar,
    int initialSetting,
    int turnaroundMin,
    double kgPerHour) {
  /** The same with other hours. */
  public MachineSpec during(WorkCalendar hours) {
    return new MachineSpec(
        id, name, capacityUnits, maxMassKg, hours, initialSetting, turnaroundMin, kgPerHour);
  }
}
