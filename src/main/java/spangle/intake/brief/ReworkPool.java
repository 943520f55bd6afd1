package spangle.intake.brief;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.ToIntFunction;
import spangle.intake.event.Happened.Rework;
import spangle.plan.Scrapped;

/**
 * Rejected pieces of one part: how many of each report go round again and how many wait to be
 * stripped. Scrapped ones are taken off those that wait to be stripped, then off the oldest report
 * of which pieces do not hang again.
 */
final class ReworkPool {
  private final List<Rework> again = new ArrayList<>();
  private final ToIntFunction<Rework> hung;
  private int toStrip;

  private ReworkPool(ToIntFunction<Rework> hung) {
    this.hung = hung;
  }

  /**
   * Counts them in the order of time.
   *
   * @param reworks rejected and stripped pieces of the part, in the order of time
   * @param scrapped rejected pieces of the part that are beyond saving
   * @param mostCoats coats a piece may bear: those that bear them are stripped
   * @param hung pieces of a report whose second round hangs or is done
   */
  static ReworkPool of(
      List<Rework> reworks, List<Scrapped> scrapped, int mostCoats, ToIntFunction<Rework> hung) {
    ReworkPool pool = new ReworkPool(hung);
    List<Scrapped> gone = new ArrayList<>(scrapped);
    gone.sort(Comparator.comparingInt(Scrapped::atMin).thenComparingInt(Scrapped::event));
    for (Rework each : reworks) {
      while (!gone.isEmpty() && before(gone.get(0), each)) {
        pool.scrap(gone.remove(0).pieces());
      }
      if (each.stripped()) {
        int pieces = Math.min(pool.toStrip, each.pieces());
        pool.toStrip -= pieces;
        if (pieces > 0) {
          pool.again.add(with(each, pieces));
        }
      } else if (each.coats() < mostCoats) {
        pool.again.add(each);
      } else {
        pool.toStrip += each.pieces();
      }
    }
    gone.forEach(s -> pool.scrap(s.pieces()));
    return pool;
  }

  private static boolean before(Scrapped scrapped, Rework rework) {
    return scrapped.atMin() < rework.fromMin()
        || (scrapped.atMin() == rework.fromMin() && scrapped.event() < rework.event());
  }

  private void scrap(int pieces) {
    int stripped = Math.min(toStrip, pieces);
    toStrip -= stripped;
    int left = pieces - stripped;
    for (int i = 0; i < again.size() && left > 0; i++) {
      Rework each = again.get(i);
      int taken = Math.max(0, Math.min(left, each.pieces() - hung.applyAsInt(each)));
      left -= taken;
      again.set(i, with(each, each.pieces() - taken));
    }
  }

  private static Rework with(Rework rework, int pieces) {
    return new Rework(rework.part(), rework.event(), pieces, rework.fromMin(), rework.coats());
  }

  /** What goes round again, those that hang again among them; a report may come to nothing. */
  List<Rework> again() {
    return List.copyOf(again);
  }

  /** Pieces that wait to be stripped. */
  int toStrip() {
    return toStrip;
  }
}
