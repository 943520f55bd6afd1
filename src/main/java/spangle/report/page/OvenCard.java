package spangle.report.page;

import java.util.List;

/**
 * An oven batch's card, half a sheet; all words.
 *
 * @param id batch
 * @param oven oven
 * @param setting setting
 * @param change set-up before it; empty where none
 * @param in time in
 * @param loads what goes in
 * @param probe where the probe goes; empty where not known
 * @param heatUp about how long until the part is hot; empty where not known
 * @param heat minutes after that; empty where not known
 * @param bake whether the minutes run from the oven being back at its setting: a bake without paint
 * @param out planned out
 * @param latest out at the latest; empty where not known
 * @param words anything more
 */
public record OvenCard(
    String id,
    String oven,
    String setting,
    String change,
    String in,
    List<CardLoad> loads,
    String probe,
    String heatUp,
    String heat,
    boolean bake,
    String out,
    String latest,
    String words) {
  /** Copies the list. */
  public OvenCard {
    loads = List.copyOf(loads);
  }

  /**
   * A load on the card.
   *
   * @param id load
   * @param colour in words
   * @param patch colour and hatch
   * @param mass parts
   */
  public record CardLoad(String id, String colour, String patch, String mass) {}
}
