package spangle.fit.gate;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import spangle.fit.gate.GateCase.Build;
import spangle.fit.gate.GateCase.Contact;
import spangle.fit.gate.GateCase.Heat;
import spangle.fit.gate.GateCase.HoleSet;
import spangle.fit.gate.GateCase.Member;
import spangle.fit.gate.GateCase.OpenFront;
import spangle.fit.gate.GateCase.Steel;
import spangle.fit.vent.Hollow.HollowSection;
import spangle.fit.vent.Hollow.Overlap;
import spangle.measure.Box;
import spangle.part.Material;

/** One case that shuts each gate and one that does not; limits of trade design guides. */
class GatesTest {
  private static final Steel PLAIN = steel(Material.STEEL, 4, 4);
  private static final Build WELDED = BuildOf.welded().build();
  private static final GateOpening SIGNED =
      new GateOpening(List.of("kettle lead"), "2026-11-26 10:00", "seen open");

  @Test
  void soundWeldedWorkWithAllAnswersPassesEveryGate() {
    assertThat(Gates.of(part(PLAIN, WELDED)))
        .hasSize(Gate.values().length)
        .allMatch(s -> s.standing() == GateState.Standing.CLEAR);
  }

  @Test
  void paintedWorkMeetsTheHeatGateOnly() {
    GateCase painted =
        new GateCase(
            false,
            steel(Material.ALUMINIUM, 1, 1),
            WELDED,
            new Heat(Known.YES, "rubber seal", OptionalDouble.of(90), 190),
            Map.of());
    assertThat(Gates.of(painted)).singleElement().matches(GateState::isShut);
    assertThat(Gates.of(painted).get(0).words()).contains("rubber seal", "190 C", "90 C");
  }

  @Test
  void heatGateIsClearWhereThePartBearsTheOven() {
    GateCase painted =
        new GateCase(
            false,
            PLAIN,
            WELDED,
            new Heat(Known.YES, "seal", OptionalDouble.of(190), 190),
            Map.of());
    assertThat(Gates.of(painted).get(0).isShut()).isFalse();
  }

  @Test
  void onlyPlainSteelAndIronEnterAndNoSignatureChangesThat() {
    GateCase aluminium =
        new GateCase(
            true,
            steel(Material.ALUMINIUM, 4, 4),
            WELDED,
            cold(),
            Map.of("material", List.of(SIGNED)));
    assertThat(state(aluminium, Gate.MATERIAL).code()).isEqualTo("material-not-for-zinc");
    assertThat(state(part(steel(Material.CAST_IRON, 8, 8), WELDED), Gate.MATERIAL).isShut())
        .isFalse();
  }

  @Test
  void silenceOnWeldedWorkShutsAndNamesEveryQuestion() {
    Build silent =
        BuildOf.welded()
            .hollow(Known.SILENT)
            .overlaps(Known.SILENT)
            .pockets(Known.SILENT)
            .movingParts(Known.SILENT)
            .soldered(Known.SILENT)
            .build();
    assertThat(state(part(PLAIN, silent), Gate.UNKNOWN).opens())
        .contains("overlaps", "pockets", "moving_parts", "soldered");
    assertThat(state(part(PLAIN, silent), Gate.HOLLOW).code()).isEqualTo("hollow-unknown");
  }

  @Test
  void silenceAboutWeldingItselfShutsUnlessTheFormIsOnePiece() {
    assertThat(state(part(PLAIN, welded(Known.SILENT, false)), Gate.UNKNOWN).isShut()).isTrue();
    assertThat(state(part(PLAIN, welded(Known.SILENT, true)), Gate.UNKNOWN).isShut()).isFalse();
  }

  @Test
  void closedHollowIsShutAndTheHolesItNeedsAreNamed() {
    GateState shut = state(part(PLAIN, member(Optional.empty(), Optional.empty())), Gate.HOLLOW);
    // Bore 44 x 44: a quarter of 62.2 mm is 15.6, so 16 mm (trade design guides).
    assertThat(shut.code()).isEqualTo("hollow-closed");
    assertThat(shut.words()).contains("44 mm x 44 mm", "1 x 16 mm");
  }

  @Test
  void hollowToldWithoutAMemberIsShut() {
    Build told = BuildOf.welded().hollow(Known.YES).build();
    assertThat(state(part(PLAIN, told), Gate.HOLLOW).code()).isEqualTo("hollow-closed");
  }

  @Test
  void holesBelowTheLargestRuleAreShutUntilTheGalvanizerReleasesThem() {
    Build small = member(holes(1, 15.9), holes(1, 15.9));
    Map<String, List<GateOpening>> looked = Map.of("vents", List.of(two()));
    assertThat(state(part(PLAIN, small, looked), Gate.HOLLOW).code()).isEqualTo("holes-too-small");
    Map<String, List<GateOpening>> released =
        Map.of("vents", List.of(two()), "holes", List.of(SIGNED));
    assertThat(state(part(PLAIN, small, released), Gate.HOLLOW).isOpened()).isTrue();
    // The plant table after ISO 14713-2 asks 16 mm below 50 mm of inside size.
    Build enough = member(holes(1, 16), holes(1, 16));
    assertThat(state(part(PLAIN, enough, looked), Gate.HOLLOW).isOpened()).isTrue();
  }

  @Test
  void ventsNeedTwoDifferentNamesATimeAndWhatWasSeen() {
    Build holes = member(holes(1, 16), holes(1, 16));
    assertThat(looked(holes, SIGNED).code()).isEqualTo("vents-not-signed");
    assertThat(looked(holes, SIGNED).whoAnswers()).isEqualTo("kettle lead");
    GateOpening same = new GateOpening(List.of("Kettle lead", "kettle lead "), "mon", "open");
    assertThat(looked(holes, same).isShut()).isTrue();
    GateOpening noTime = new GateOpening(List.of("hanger 1", "kettle lead"), "", "open");
    assertThat(looked(holes, noTime).isShut()).isTrue();
    GateOpening nothingSeen = new GateOpening(List.of("hanger 1", "kettle lead"), "mon", " ");
    assertThat(looked(holes, nothingSeen).isShut()).isTrue();
    GateState opened = looked(holes, two());
    assertThat(opened.isOpened()).isTrue();
    assertThat(opened.line()).contains("hanger 1, kettle lead", "2026-11-26 10:00", "both open");
  }

  @Test
  void floatsAboveOneFifthOfTheSteelsVolume() {
    // Bore 44 x 44 x 1000 holds 1.936 l; 7.85/6.56 - 1 = 0.197 of the steel's volume is the limit.
    double limitKg = 1.936 / 0.197 * 7.85;
    Build sinks = member(Optional.empty(), Optional.empty(), limitKg + 0.1);
    Build floats = member(Optional.empty(), Optional.empty(), limitKg - 0.1);
    assertThat(state(part(PLAIN, sinks), Gate.FLOATING).isShut()).isFalse();
    assertThat(state(part(PLAIN, floats), Gate.FLOATING).code()).isEqualTo("would-float");
    Build vented = member(holes(1, 16), holes(1, 16), 1);
    assertThat(state(part(PLAIN, vented), Gate.FLOATING).isShut()).isFalse();
  }

  @Test
  void sealedContactOverOneHundredSquareCentimetresIsShut() {
    assertThat(contact(100, true, OptionalDouble.empty()).isShut()).isFalse();
    assertThat(contact(100.1, true, OptionalDouble.empty()).code()).isEqualTo("overlap-sealed");
    assertThat(contact(100.1, false, OptionalDouble.empty()).isShut()).isFalse();
    // Relief: the larger of 10 mm and both thicknesses, 3 + 8 = 11 mm.
    assertThat(contact(180, true, OptionalDouble.of(10.9)).isShut()).isTrue();
    assertThat(contact(180, true, OptionalDouble.of(11)).isShut()).isFalse();
  }

  @Test
  void pocketsToldOrATroughInTheHungAttitudeAreShut() {
    assertThat(pockets(Known.YES, Optional.empty()).code()).isEqualTo("blind-pocket");
    assertThat(pockets(Known.NO, Optional.of(new OpenFront(false, 400))).isShut()).isTrue();
    assertThat(pockets(Known.NO, Optional.of(new OpenFront(true, 400))).words())
        .contains("400 mm across");
  }

  @Test
  void movingPartsOpenWithARecordSolderedJointsNever() {
    Build moving = questions(Known.YES, Known.NO);
    assertThat(state(part(PLAIN, moving), Gate.MOVING_PARTS).isShut()).isTrue();
    assertThat(
            state(part(PLAIN, moving, Map.of("moving-parts", List.of(SIGNED))), Gate.MOVING_PARTS)
                .isOpened())
        .isTrue();
    Build soldered = questions(Known.NO, Known.YES);
    assertThat(
            state(part(PLAIN, soldered, Map.of("soldered", List.of(SIGNED))), Gate.SOLDER).isShut())
        .isTrue();
  }

  @Test
  void strongSteelIsShutAboveOneThousandMegapascal() {
    assertThat(strong(1000).isShut()).isFalse();
    assertThat(strong(1000.1).isShut()).isTrue();
  }

  @Test
  void thickSteelBentUnderThreeThicknessesIsShut() {
    assertThat(bent(6, 18).isShut()).isFalse();
    assertThat(bent(6, 17.9).isShut()).isTrue();
    assertThat(bent(2.9, 1).isShut()).isFalse();
  }

  @Test
  void weldedThicknessesOverFourToOneAreShut() {
    assertThat(ratio(3, 12).isShut()).isFalse();
    assertThat(ratio(3, 12.1).isShut()).isTrue();
    GateCase bolted = part(steel(Material.STEEL, 3, 20), welded(Known.NO, false));
    assertThat(state(bolted, Gate.THICKNESS_RATIO).isShut()).isFalse();
  }

  @Test
  void wideFlatSheetUnderThreeMillimetresIsShut() {
    assertThat(flat(2.9, 500).isShut()).isTrue();
    assertThat(flat(3, 500).isShut()).isFalse();
    assertThat(flat(2.9, 499).isShut()).isFalse();
  }

  /**
   * A frame 1000 x 800 of 40 x 40 x 2 tube, 3.6 m of it: (40 x 40 - 36 x 36) mm2 x 3600 mm x 7850
   * kg/m3 = 8.59 kg. A sheet of 500 x 500 x 2 would weigh 3.93 kg more.
   */
  @Test
  void aFrameOfTubesIsJudgedByItsTubesWhereTheMassLeavesNoSheet() {
    assertThat(frame(8.6).isShut()).isFalse();
    assertThat(frame(8.6).words()).contains("flat 40 mm wide");
    assertThat(frame(12.5).isShut()).isFalse();
    assertThat(frame(12.6).isShut()).isTrue();
    assertThat(frame(12.6).words()).contains("1000 x 800 mm");
    // Members heavier than the part: something told is wrong, so nothing is proven.
    assertThat(frame(8.1).isShut()).isTrue();
  }

  private static GateState frame(double massKg) {
    HollowSection bore =
        new HollowSection(
            36, 36, false, OptionalDouble.of(900), OptionalDouble.of(2), HollowSection.Use.PLAIN);
    Build build =
        BuildOf.welded()
            .hollow(Known.YES, new Member(4, bore, 900, Optional.empty(), Optional.empty()))
            .size(new Box(1000, 800, 40))
            .massKg(massKg)
            .build();
    return state(part(steel(Material.STEEL, 2, 2), build), Gate.DISTORTION);
  }

  /** What the form tells goes before the outside box of 2000 x 600 x 600. */
  @Test
  void aFormIsJudgedByItsOwnFaces() {
    assertThat(formed(0).isShut()).isFalse();
    assertThat(formed(0).words()).contains("no flat face");
    assertThat(formed(499).isShut()).isFalse();
    assertThat(formed(500).isShut()).isTrue();
  }

  private static GateState formed(double flatMm) {
    Build build = BuildOf.onePiece().size(new Box(2000, 600, 600)).flatMm(flatMm).build();
    return state(part(steel(Material.STEEL, 2, 2), build), Gate.DISTORTION);
  }

  private static GateState flat(double thick, double side) {
    Build build = BuildOf.onePiece().size(new Box(2000, side, 3)).build();
    return state(part(steel(Material.STEEL, thick, thick), build), Gate.DISTORTION);
  }

  private static GateState ratio(double thin, double thick) {
    return state(part(steel(Material.STEEL, thin, thick), WELDED), Gate.THICKNESS_RATIO);
  }

  private static GateState strong(double mpa) {
    Steel steel = new Steel(Material.STEEL, 4, 4, OptionalDouble.of(mpa), OptionalDouble.empty());
    return state(part(steel, WELDED), Gate.STRONG_STEEL);
  }

  private static GateState bent(double thick, double radius) {
    Steel steel =
        new Steel(Material.STEEL, thick, thick, OptionalDouble.empty(), OptionalDouble.of(radius));
    return state(part(steel, WELDED), Gate.TIGHT_BEND);
  }

  private static GateState looked(Build holes, GateOpening opening) {
    return state(part(PLAIN, holes, Map.of("vents", List.of(opening))), Gate.HOLLOW);
  }

  private static GateOpening two() {
    return new GateOpening(
        List.of("hanger 1", "kettle lead"), "2026-11-26 10:00", "light seen through, both open");
  }

  private static GateState contact(double cm2, boolean sealed, OptionalDouble holeMm) {
    Build build =
        BuildOf.welded()
            .overlaps(
                Known.YES,
                new Contact(new Overlap(cm2, 3, 8, OptionalDouble.empty()), sealed, holeMm))
            .build();
    return state(part(PLAIN, build), Gate.OVERLAP);
  }

  private static GateState pockets(Known pockets, Optional<OpenFront> front) {
    Build build = BuildOf.welded().pockets(pockets).front(front).build();
    return state(part(PLAIN, build), Gate.POCKETS);
  }

  private static Build questions(Known moving, Known soldered) {
    return BuildOf.onePiece().movingParts(moving).soldered(soldered).build();
  }

  private static Build welded(Known welded, boolean onePiece) {
    return BuildOf.of(welded, onePiece).build();
  }

  private static Build member(Optional<HoleSet> vents, Optional<HoleSet> drains) {
    return member(vents, drains, 20);
  }

  private static Build member(Optional<HoleSet> vents, Optional<HoleSet> drains, double kg) {
    return BuildOf.welded()
        .hollow(Known.YES, new Member(1, HollowSection.bore(44, 44), 1000, vents, drains))
        .massKg(kg)
        .build();
  }

  private static Optional<HoleSet> holes(int count, double mm) {
    return Optional.of(new HoleSet(count, mm));
  }

  private static Steel steel(Material material, double thin, double thick) {
    return new Steel(material, thin, thick, OptionalDouble.empty(), OptionalDouble.empty());
  }

  private static Heat cold() {
    return new Heat(Known.NO, "", OptionalDouble.empty(), 450);
  }

  private static GateCase part(Steel steel, Build build) {
    return part(steel, build, Map.of());
  }

  private static GateCase part(Steel steel, Build build, Map<String, List<GateOpening>> records) {
    return new GateCase(true, steel, build, cold(), records);
  }

  private static GateState state(GateCase part, Gate gate) {
    return Gates.of(part).stream().filter(s -> s.gate() == gate).findFirst().orElseThrow();
  }
}
