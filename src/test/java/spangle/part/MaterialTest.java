package spangle.part;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

class MaterialTest {
  @ParameterizedTest
  @CsvSource({
    "steel, STEEL",
    "' S235JR ', STEEL",
    "DC01, STEEL",
    "mild steel, STEEL",
    "MS, STEEL",
    "CR4, STEEL",
    "hot rolled, STEEL",
    "Stahl, STEEL",
    "stainless, STAINLESS",
    "1.4301, STAINLESS",
    "316L, STAINLESS",
    "SS, STAINLESS",
    "Aluminum, ALUMINIUM",
    "aluminium, ALUMINIUM",
    "alu, ALUMINIUM",
    "Alum., ALUMINIUM",
    "5052-H32, ALUMINIUM",
    "cast iron, CAST_IRON",
    "EN-GJL-250, CAST_IRON",
    "Al, ALUMINIUM",
    "DX51D+Z275, GALVANIZED_STEEL",
    "DC01+ZE25/25, GALVANIZED_STEEL",
    "S350GD+Z275, GALVANIZED_STEEL",
    "galvanised steel, GALVANIZED_STEEL",
    "brass, BRASS",
    "copper, COPPER",
    "zamak 5, ZINC_CASTING",
    "other, OTHER"
  })
  void readsTheWordsPeopleWrite(String word, Material material) {
    assertThat(Material.parse(word)).contains(material);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "  ",
        "plastic",
        "steelish",
        "non-steel",
        "xs235",
        "Ms",
        "S235 galv",
        "S355 stainless",
        "S235JR+Z",
        "A5005"
      })
  void guessesNothing(String word) {
    assertThat(Material.parse(word)).isEmpty();
  }

  @ParameterizedTest
  @EnumSource(Material.class)
  void everyMaterialReadsItsOwnWord(Material material) {
    assertThat(Material.parse(material.word())).contains(material);
  }

  @Test
  void aVeryLongWordIsNotRead() {
    assertThat(Material.parse("s235" + "j".repeat(57))).isEmpty();
    assertThat(Material.parse("s235" + "j".repeat(56))).contains(Material.STEEL);
  }

  /** EN 1993-1-1, 3.2.6; EN 1999-1-1, 3.2.5. */
  @Test
  void densities() {
    assertThat(Material.STEEL.densityKgM3()).hasValue(7850);
    assertThat(Material.ALUMINIUM.densityKgM3()).hasValue(2700);
    assertThat(Material.OTHER.densityKgM3()).isEmpty();
  }
}
