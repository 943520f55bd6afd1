package spangle.report.fitsheet;

import java.util.Optional;
import spangle.fit.Attitude;
import spangle.fit.FitAnswer;
import spangle.fit.Silhouette.Corner;

/** The section of a part rolled sideways, seen from the end. */
final class Rolled {
  private Rolled() {}

  /** The turned section, in the middle of the kettle and of the height seen from the side. */
  static Optional<Outline> of(FitAnswer answer, double widthMm, Outline side) {
    Optional<Attitude> attitude = answer.whole().filter(w -> w.rollDeg().isPresent());
    if (attitude.isEmpty()) {
      return Optional.empty();
    }
    double deg = attitude.get().rollDeg().orElseThrow().middle();
    Outline turned =
        new Outline(attitude.get().section().stream().map(c -> c.turned(deg)).toList());
    double high = turned.high() - turned.low();
    double middle = (side.high() + side.low()) / 2;
    return Optional.of(
        turned.at((widthMm - (turned.right() - turned.left())) / 2, middle - high / 2));
  }

  /** The middle of an outline. */
  static Corner middle(Outline outline) {
    return new Corner((outline.left() + outline.right()) / 2, (outline.low() + outline.high()) / 2);
  }
}
