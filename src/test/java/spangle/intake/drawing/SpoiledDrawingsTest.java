package spangle.intake.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import spangle.intake.problem.Problems;
import spangle.part.Measured;

/** Any bytes give figures of this world or a reason, never an exception. */
class SpoiledDrawingsTest {
  private static final Asked STEEL = Asked.of(2, 7850);
  private static final int FEW = 400;
  private static final int MANY = 100_000;
  private static final long LONGEST_MS = 5_000;

  private static void flat(byte[] bytes) {
    Problems problems = new Problems();
    Optional<FlatRead> read = FlatFile.read("f.dxf", bytes, STEEL, problems);
    Optional<Measured> measured =
        read.flatMap(FlatRead::shape).map(s -> s.measure(STEEL.densityKgM3()));
    sane(measured, problems);
    read.ifPresent(r -> assertThat(Sketch.svg(r.layout(), List.of())).endsWith("</svg>\n"));
  }

  private static void body(byte[] bytes) {
    Problems problems = new Problems();
    Optional<SolidRead> read = SolidFile.read("b.stl", bytes, STEEL, problems);
    sane(read.flatMap(SolidRead::shape).map(s -> s.measure(STEEL.densityKgM3())), problems);
  }

  private static void sane(Optional<Measured> measured, Problems problems) {
    if (measured.isEmpty()) {
      assertThat(problems.list()).isNotEmpty();
      return;
    }
    assertThat(measured.get().areaM2()).isPositive().isFinite();
    assertThat(measured.get().massKg()).isPositive().isFinite();
    problems.list().forEach(p -> assertThat(p.why()).isNotBlank());
  }

  private static long spoil(int times, int from, boolean flat) {
    List<byte[]> sound = flat ? Spoiled.dxf() : Spoiled.stl();
    long slowest = 0;
    for (int i = 0; i < times; i++) {
      byte[] bytes = Spoiled.bytes(sound, new Random(from + i));
      long start = System.nanoTime();
      try {
        if (flat) {
          flat(bytes);
        } else {
          body(bytes);
        }
      } catch (RuntimeException | AssertionError | StackOverflowError broken) {
        throw new AssertionError("input of chance number " + (from + i), broken);
      }
      slowest = Math.max(slowest, (System.nanoTime() - start) / 1_000_000);
    }
    return slowest;
  }

  @Test
  void soundFilesAreRead() {
    for (byte[] bytes : Spoiled.dxf()) {
      assertThat(FlatFile.read("f.dxf", bytes, STEEL, new Problems()).flatMap(FlatRead::shape))
          .isPresent();
    }
    for (byte[] bytes : Spoiled.stl()) {
      assertThat(SolidFile.read("b.stl", bytes, STEEL, new Problems()).flatMap(SolidRead::shape))
          .isPresent();
    }
  }

  @Test
  void aFewSpoiledFlatPatterns() {
    spoil(FEW, 0, true);
  }

  @Test
  void aFewSpoiledBodies() {
    spoil(FEW, 0, false);
  }

  @Test
  @Tag("thorough")
  void manySpoiledFlatPatterns() {
    assertThat(spoil(MANY, 1_000, true)).isLessThan(LONGEST_MS);
  }

  @Test
  @Tag("thorough")
  void manySpoiledBodies() {
    assertThat(spoil(MANY, 1_000, false)).isLessThan(LONGEST_MS);
  }
}
