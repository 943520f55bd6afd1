package spangle.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import spangle.intake.week.WeekInput;
import spangle.plan.LeadTime;

/** Where nobody gives a lead time, five working days are counted and said to be assumed. */
class LeadTimeTest {
  @TempDir Path folder;

  private static List<LeadTime> leads(WeekInput input) {
    return input.catalogue().coatings().map(c -> c.stock().lead()).toList();
  }

  @Test
  void whatIsGivenIsCountedAndWhatIsNotIsSaid() throws IOException {
    Path own = folder.resolve("week");
    LivingWeek week = new LivingWeek(Path.of("samples/first-steps"), own, 1);
    assertThat(leads(week.input())).contains(LeadTime.of(4)).noneMatch(LeadTime::assumed);

    Path coatings = own.resolve("coatings.yaml");
    String text = Files.readString(coatings);
    assertThat(text).contains("    lead_days: 4\n");
    Files.writeString(coatings, text.replace("    lead_days: 4\n", ""));
    assertThat(leads(week.input())).contains(LeadTime.usual(), LeadTime.of(3));
    assertThat(LeadTime.of(3).words()).isEqualTo("3 working days");
    assertThat(LeadTime.of(1).words()).isEqualTo("1 working day");
    assertThat(LeadTime.usual().words()).isEqualTo("5 working days assumed, no lead_days given");
  }
}
