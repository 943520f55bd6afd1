package spangle.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The first line of the change list says what falls out, where anything does. */
class ChangeSheetTest {
  private static String page(int moved, int dropped, String... kinds) {
    List<ChangeSheet.Row> rows =
        List.of(kinds).stream()
            .map(k -> new ChangeSheet.Row(k, "P1", "4 x step", "Monday", "Friday", "", "oven", ""))
            .toList();
    return new String(
        ChangeSheet.of(
            new ChangeSheet.Content(
                "Yard", "B", "A", "Monday 08:00", moved, dropped, 30, 0, List.of(), rows)),
        StandardCharsets.UTF_8);
  }

  @Test
  void droppedLoadsAreSaid() {
    assertThat(page(2, 2, "moved", "dropped", "moved", "dropped"))
        .contains("<b>2</b> loads moved, <b>2</b> dropped, <b>30</b> minutes");
  }

  @Test
  void whereNothingIsDroppedNothingIsSaidOfIt() {
    assertThat(page(1, 0, "moved")).contains("<b>1</b> load moved, <b>30</b> minutes");
  }
}
