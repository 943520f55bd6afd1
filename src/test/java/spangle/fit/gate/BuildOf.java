package spangle.fit.gate;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import spangle.fit.gate.GateCase.Build;
import spangle.fit.gate.GateCase.Contact;
import spangle.fit.gate.GateCase.Member;
import spangle.fit.gate.GateCase.OpenFront;
import spangle.measure.Box;

/** How a part is put together: 1200 x 400 x 300 mm of 20 kg, every question answered with no. */
final class BuildOf {
  private final Known welded;
  private final boolean onePiece;
  private Known hollow = Known.NO;
  private List<Member> members = List.of();
  private Known overlaps = Known.NO;
  private List<Contact> contacts = List.of();
  private Known pockets = Known.NO;
  private Optional<OpenFront> front = Optional.empty();
  private Known movingParts = Known.NO;
  private Known soldered = Known.NO;
  private Box size = new Box(1200, 400, 300);
  private double massKg = 20;
  private OptionalDouble flatMm = OptionalDouble.empty();

  private BuildOf(Known welded, boolean onePiece) {
    this.welded = welded;
    this.onePiece = onePiece;
  }

  static BuildOf welded() {
    return new BuildOf(Known.YES, false);
  }

  static BuildOf onePiece() {
    return new BuildOf(Known.NO, true);
  }

  static BuildOf of(Known welded, boolean onePiece) {
    return new BuildOf(welded, onePiece);
  }

  BuildOf hollow(Known value, Member... its) {
    hollow = value;
    members = List.of(its);
    return this;
  }

  BuildOf overlaps(Known value, Contact... its) {
    overlaps = value;
    contacts = List.of(its);
    return this;
  }

  BuildOf pockets(Known value) {
    pockets = value;
    return this;
  }

  BuildOf front(Optional<OpenFront> value) {
    front = value;
    return this;
  }

  BuildOf movingParts(Known value) {
    movingParts = value;
    return this;
  }

  BuildOf soldered(Known value) {
    soldered = value;
    return this;
  }

  BuildOf size(Box value) {
    size = value;
    return this;
  }

  BuildOf massKg(double value) {
    massKg = value;
    return this;
  }

  BuildOf flatMm(double value) {
    flatMm = OptionalDouble.of(value);
    return this;
  }

  Build build() {
    return new Build(
        welded,
        onePiece,
        hollow,
        members,
        overlaps,
        contacts,
        pockets,
        front,
        movingParts,
        soldered,
        size,
        massKg,
        flatMm);
  }
}
