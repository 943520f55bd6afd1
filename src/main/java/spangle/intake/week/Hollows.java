package spangle.intake.week;

import java.util.List;

/**
 * What the file says of welds, hollow spaces and overlaps.
 *
 * @param welded whether the piece is welded together
 * @param told whether there are closed or closable hollow spaces
 * @param members the hollow members
 * @param overlapsTold whether there are overlaps
 * @param overlaps the overlaps
 * @param ventsChecked who has looked through the holes
 * @param pockets whether returns, gutters or stiffeners make pockets that do not drain
 * @param soldered whether joints are soldered or brazed
 */
public record Hollows(
    Told welded,
    Told told,
    List<Hollow> members,
    Told overlapsTold,
    List<Overlap> overlaps,
    List<Signature> ventsChecked,
    Told pockets,
    Told soldered) {
  /** Copies the lists. */
  public Hollows {
    members = List.copyOf(members);
    overlaps = List.copyOf(overlaps);
    ventsChecked = List.copyOf(ventsChecked);
  }
}
