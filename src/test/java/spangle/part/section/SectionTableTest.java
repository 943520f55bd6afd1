package spangle.part.section;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SectionTableTest {
  private static final double STEEL = 7850;
  private final SectionTable table = SectionTable.standard();

  /** Mass per metre as the section tables of the standards print it, three figures, from memory. */
  @ParameterizedTest
  @CsvSource({
    // EN 10056-1, equal angles
    "L20x20x3, 0.882",
    "L30x30x3, 1.36",
    "L40x40x4, 2.42",
    "L50x50x5, 3.77",
    "L60x60x6, 5.42",
    "L70x70x7, 7.38",
    "L80x80x8, 9.63",
    "L90x90x9, 12.2",
    "L100x100x10, 15.0",
    "L120x120x12, 21.6",
    "L150x150x15, 33.8",
    "L200x200x20, 59.9",
    // EN 10056-1, unequal angles
    "L30x20x3, 1.12",
    "L60x40x5, 3.76",
    "L75x50x6, 5.65",
    "L80x60x7, 7.36",
    "L100x65x8, 9.94",
    "L100x75x10, 13.0",
    "L120x80x10, 15.0",
    "L150x75x9, 15.4",
    "L200x100x12, 27.3",
    // EN 10365, UPN
    "UPN80, 8.64",
    "UPN100, 10.6",
    "UPN120, 13.4",
    "UPN160, 18.8",
    "UPN200, 25.3",
    "UPN240, 33.2",
    "UPN300, 46.2",
    // EN 10365, UPE
    "UPE80, 7.90",
    "UPE100, 9.82",
    "UPE120, 12.1",
    "UPE160, 17.0",
    "UPE200, 22.8",
    "UPE240, 30.2",
    "UPE300, 44.4",
    // EN 10219-2, square and rectangular
    "SHS20x20x2, 1.05",
    "SHS30x30x3, 2.36",
    "SHS40x40x3, 3.30",
    "SHS50x50x3, 4.25",
    "SHS50x50x5, 6.56",
    "SHS80x80x4, 9.22",
    "SHS100x100x5, 14.4",
    "SHS100x100x8, 21.4",
    "SHS150x150x5, 22.3",
    "RHS40x20x2, 1.68",
    "RHS50x30x3, 3.30",
    "RHS60x40x3, 4.25",
    "RHS80x40x4, 6.71",
    "RHS100x50x3, 6.60",
    "RHS120x80x5, 14.4",
    "RHS150x100x5, 18.3",
    "RHS200x100x6, 26.4",
    // EN 10210-2
    "HFSHS40x40x4, 4.39",
    "HFSHS50x50x5, 6.85",
    "HFSHS80x80x5, 11.6",
    "HFSHS100x100x6.3, 18.2",
    "HFRHS100x50x5, 10.8",
    "HFRHS120x80x5, 14.7",
    // EN 10219-2, round
    "CHS21.3x2.6, 1.20",
    "CHS33.7x3.2, 2.41",
    "CHS48.3x3.2, 3.56",
    "CHS60.3x4, 5.55",
    "CHS114.3x5, 13.5",
    "CHS168.3x6.3, 25.2"
  })
  void massPerMetreIsTheTables(String name, double kg) {
    double computed = table.find(name).orElseThrow().massPerMetreKg(STEEL);
    // Half of the last printed figure, which is at most 0.5 % of it.
    assertThat(computed).isEqualTo(kg, within(0.005 * kg));
  }

  /** Outside surface per metre as the same tables print it, three decimals, from memory. */
  @ParameterizedTest
  @CsvSource({
    "L50x50x5, 0.194",
    "L100x100x10, 0.390",
    "UPN80, 0.312",
    "UPN100, 0.372",
    "UPN200, 0.661",
    "UPN300, 0.950",
    "UPE100, 0.402",
    "UPE200, 0.697",
    "UPE300, 0.968",
    "SHS50x50x3, 0.190",
    "SHS100x100x4, 0.386",
    "HFSHS100x100x8, 0.379",
    "CHS48.3x3.2, 0.152"
  })
  void surfacePerMetreIsTheTables(String name, double m2) {
    assertThat(table.find(name).orElseThrow().outerM2PerMetre()).isEqualTo(m2, within(0.002));
  }

  /** Bore of a cold-formed 40 x 40 x 3 (r = 3): perimeter 4 x 34 - (8 - 2 pi) 3. */
  @Test
  void theBoreHasItsOwnCorners() {
    SectionProfile tube = table.find("SHS40x40x3").orElseThrow();
    assertThat(tube.boreMm()).isEqualTo(136 - (8 - 2 * Math.PI) * 3, within(1e-9));
    assertThat(tube.boreMm2()).isEqualTo(34 * 34 - (4 - Math.PI) * 9, within(1e-9));
    assertThat(tube.wettedM2PerMetre())
        .isEqualTo(tube.outerM2PerMetre() + tube.boreMm() / 1000, within(1e-12));
    assertThat(tube.hollow()).isTrue();
    assertThat(table.find("UPE100").orElseThrow().hollow()).isFalse();
  }

  /** EN 10219-2 (from memory): outer radius 2 t to 6 mm, 2.5 t to 10 mm, 3 t above. */
  @Test
  void coldFormedCornersGrowWithTheWall() {
    assertThat(Outlines.hollow("a", Family.COLD_HOLLOW, 200, 200, 6).outerMm())
        .isEqualTo(800 - (8 - 2 * Math.PI) * 12, within(1e-9));
    assertThat(Outlines.hollow("a", Family.COLD_HOLLOW, 200, 200, 10).outerMm())
        .isEqualTo(800 - (8 - 2 * Math.PI) * 25, within(1e-9));
    assertThat(Outlines.hollow("a", Family.COLD_HOLLOW, 200, 200, 12).outerMm())
        .isEqualTo(800 - (8 - 2 * Math.PI) * 36, within(1e-9));
  }

  @ParameterizedTest
  @CsvSource({
    "l 50 x 50 x 5, L50x50x5",
    "L50*5, L50x50x5",
    "'shs 40x3', SHS40x40x3",
    "'CHS 48,3 x 3,2', CHS48.3x3.2",
    "upn 100, UPN100",
    "L60×40×5, L60x40x5"
  })
  void namesAreReadAsPeopleWriteThem(String written, String name) {
    assertThat(table.find(written).map(SectionProfile::name)).contains(name);
  }

  @Test
  void anUnknownNameFindsNothingButItsNeighboursOfTheSameKind() {
    assertThat(table.find("L51x51x5")).isEmpty();
    assertThat(table.near("L51x51x5")).hasSize(3).allMatch(name -> name.startsWith("L50"));
    assertThat(table.near("UPE110")).containsExactly("UPE100", "UPE120", "UPE80");
    assertThat(table.near("moon")).isEmpty();
    assertThat(table.find("x".repeat(61))).isEmpty();
    assertThat(table.near("CHS...")).hasSize(3);
  }

  @Test
  void everySectionIsSound() {
    assertThat(table.all()).hasSizeGreaterThan(150);
    for (SectionProfile section : table.all()) {
      assertThat(table.find(section.name())).contains(section);
      assertThat(section.metalMm2()).isPositive();
      assertThat(section.thicknessMm()).isLessThan(section.widthMm() / 2);
      // A thin wall of mid-line m has about m t of metal: the outline bounds it from above.
      assertThat(section.metalMm2()).isLessThan(section.outerMm() * section.heightMm() / 4);
    }
  }
}
