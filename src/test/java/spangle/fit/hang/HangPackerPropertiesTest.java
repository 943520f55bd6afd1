package spangle.fit.hang;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.TreeMap;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import spangle.fit.hang.CarrierFace.Style;

/** What holds for every carrier and every handful of parts. */
class HangPackerPropertiesTest {

  @Provide
  Arbitrary<CarrierFace> hung() {
    return Combinators.combine(
            Arbitraries.of(Style.ROWS, Style.FREE),
            Arbitraries.integers().between(400, 1500),
            Arbitraries.integers().between(400, 1500),
            Arbitraries.integers().between(1, 3),
            Arbitraries.of(0.0, 12.5, 30.0),
            Arbitraries.of(0.0, 45.0),
            Arbitraries.of(0.0, 37.5, 50.0),
            Arbitraries.of(40.0, 90.0, Double.POSITIVE_INFINITY))
        .as(
            (style, width, height, faces, gap, hook, pitch, kg) ->
                new CarrierFace(width, height, 250, faces, gap, gap, hook, pitch, kg, 90, style));
  }

  @Provide
  Arbitrary<List<HangItem>> parts() {
    return Arbitraries.longs().map(HangPackerPropertiesTest::parts);
  }

  /** Up to six kinds between 40 and 350 mm, some exactly alike, some in tenths of a millimetre. */
  private static List<HangItem> parts(long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    List<HangItem> items = new ArrayList<>();
    int kinds = 1 + random.nextInt(6);
    for (int k = 0; k < kinds; k++) {
      boolean again = k > 0 && random.nextInt(4) == 0;
      HangItem before = again ? items.get(k - 1) : null;
      items.add(
          new HangItem(
              "part" + k,
              1 + random.nextInt(12),
              before != null ? before.acrossMm() : size(random),
              before != null ? before.dropMm() : size(random),
              random.nextInt(250),
              0.1 + random.nextInt(30) / 10.0,
              random.nextInt(3),
              random.nextBoolean()));
    }
    return items;
  }

  private static double size(SplittableRandom random) {
    return 40 + random.nextInt(3100) / 10.0;
  }

  @Property(tries = 300)
  void whateverFitsHasACompleteAndCorrectPattern(
      @ForAll("hung") CarrierFace face, @ForAll("parts") List<HangItem> items) {
    Optional<HangPattern> pattern = HangPacker.pattern(face, items);
    if (HangPacker.fits(face, items)) {
      assertThat(pattern).isPresent();
      assertThat(HangPacker.fewestCarriers(face, items)).isEqualTo(1);
    }
    pattern.ifPresent(found -> PatternProof.prove(face, items, found));
  }

  @Property(tries = 60)
  void allPiecesArePackedAndNeverOnFewerCarriersThanTheBound(
      @ForAll("hung") CarrierFace face, @ForAll("parts") List<HangItem> items) {
    List<HangPattern> quick = HangPacker.packAllQuickly(face, items);
    List<HangPattern> searched = HangPacker.packAll(face, items, HangEffort.rounds(300));
    proveAll(face, items, quick);
    proveAll(face, items, searched);
    assertThat(searched.size()).isLessThanOrEqualTo(quick.size());
    assertThat(searched.size()).isGreaterThanOrEqualTo(HangPacker.fewestCarriers(face, items));
  }

  private static void proveAll(CarrierFace face, List<HangItem> items, List<HangPattern> patterns) {
    Map<String, Integer> wanted = new TreeMap<>();
    Map<String, HangItem> byKey = new TreeMap<>();
    for (HangItem item : items) {
      wanted.merge(item.key(), item.pieces(), Integer::sum);
      byKey.put(item.key(), item);
    }
    Map<String, Integer> packed = new TreeMap<>();
    for (HangPattern pattern : patterns) {
      PatternProof.proveCarrier(face, byKey, pattern);
      pattern.counts().forEach((key, count) -> packed.merge(key, count, Integer::sum));
    }
    assertThat(packed).isEqualTo(wanted);
  }

  @Property(tries = 100)
  void theCountOfOneKindHangsAndMassHooksAndRoomStopTheNext(
      @ForAll("hung") CarrierFace face, @ForAll("parts") List<HangItem> items) {
    HangItem item = items.get(0);
    HangCapacity capacity = HangPacker.capacityOf(face, item);
    assertThat(capacity.pieces())
        .isEqualTo(Math.min(capacity.byRoom(), Math.min(capacity.byMass(), capacity.byHooks())));
    assertThat(HangPacker.fits(face, List.of(item.withPieces(capacity.pieces() + 1)))).isFalse();
    if (capacity.pieces() > 0) {
      List<HangItem> full = List.of(item.withPieces(capacity.pieces()));
      assertThat(HangPacker.fits(face, full)).isTrue();
      PatternProof.prove(face, full, HangPacker.pattern(face, full).orElseThrow());
    }
  }

  @Property(tries = 60)
  void theSameQuestionHasTheSameAnswer(
      @ForAll("hung") CarrierFace face, @ForAll("parts") List<HangItem> items) {
    HangEffort effort = HangEffort.rounds(100);
    assertThat(HangPacker.packAll(face, items, effort))
        .isEqualTo(HangPacker.packAll(face, items, effort));
    assertThat(HangPacker.pattern(face, items)).isEqualTo(HangPacker.pattern(face, items));
  }
}
