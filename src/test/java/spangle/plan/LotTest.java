package spangle.plan;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class LotTest {
  @Test
  void whatALotDrawsCarriesItsUnit() {
    Finish paint = new Finish(2, "quay", "quay grey", FinishKind.LIQUID, "paint-quay");
    assertThat(new LotBuilder("a").build().drawWords()).isEqualTo("0.40 kg of shelter grey");
    assertThat(new LotBuilder("b").zinc().build().drawWords())
        .isEqualTo("2.00 kg of galvanized, hung");
    assertThat(new LotBuilder("c").finish(paint).build().drawWords())
        .isEqualTo("0.40 l of quay grey");
  }
}
