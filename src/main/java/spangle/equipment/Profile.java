package spangle.equipment;

/** What is known of a kind of equipment, whoever owns how many of it. */
public sealed interface Profile
    permits CarrierProfile, StationProfile, OvenProfile, KettleProfile, CraneProfile {
  /** Name by which the shop file refers to it; also its file's name. */
  String name();

  /** Words for the sheet. */
  String title();
}
