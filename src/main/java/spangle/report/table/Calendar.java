package spangle.report.table;

import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import spangle.plan.LineSpec;
import spangle.plan.PlannedBatch;
import spangle.report.PurchaseLine;
import spangle.report.week.LoadPlace;
import spangle.report.week.Printable;
import spangle.report.week.WeekIndex;

/**
 * Oven batches, dips and last order days as a calendar (RFC 5545), in the shop's own local time.
 */
final class Calendar {
  /** RFC 5545, 3.1: no line over 75 octets. */
  private static final int LONGEST_LINE = 75;

  private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("uuuuMMdd", Locale.ROOT);
  private static final DateTimeFormatter MOMENT =
      DateTimeFormatter.ofPattern("uuuuMMdd'T'HHmmss", Locale.ROOT);

  private final StringBuilder out = new StringBuilder();
  private final WeekIndex index;
  private final LocalDate monday;

  private Calendar(WeekIndex index) {
    this.index = index;
    monday = index.report().brief().monday();
  }

  static String of(WeekIndex index) {
    Calendar calendar = new Calendar(index);
    calendar.line("BEGIN:VCALENDAR");
    calendar.line("VERSION:2.0");
    calendar.line("PRODID:-//spangle//finishing week//EN");
    for (LineSpec line : index.report().brief().lines()) {
      for (PlannedBatch batch : index.report().plan().batches()) {
        List<LoadPlace> loads =
            index.loads(line).stream().filter(l -> l.batch().equals(batch)).toList();
        if (!loads.isEmpty() && !index.report().brief().isBeyond(batch.startMin())) {
          calendar.batch(batch, loads);
        }
      }
    }
    index.report().stores().purchases().forEach(calendar::order);
    calendar.line("END:VCALENDAR");
    return calendar.out.toString();
  }

  private void batch(PlannedBatch batch, List<LoadPlace> loads) {
    begin("batch-" + batch.lineId() + "-" + batch.id());
    line("DTSTART:" + monday.atStartOfDay().plusMinutes(batch.startMin()).format(MOMENT));
    line("DTEND:" + monday.atStartOfDay().plusMinutes(batch.endMin()).format(MOMENT));
    LoadPlace first = loads.get(0);
    line(
        "SUMMARY:"
            + escape(
                first.machine().name()
                    + ", "
                    + first.setting()
                    + ": "
                    + String.join(" ", loads.stream().map(LoadPlace::id).toList())));
    line(
        "DESCRIPTION:"
            + escape(
                String.join(
                    "; ",
                    loads.stream().map(l -> l.id() + " " + index.colour(l.finish())).toList())));
    line("END:VEVENT");
  }

  private void order(PurchaseLine purchase) {
    purchase
        .latestOrder()
        .filter(day -> purchase.packs() > 0)
        .ifPresent(
            day -> {
              begin("order-" + purchase.itemId());
              line("DTSTART;VALUE=DATE:" + day.format(DAY));
              line(
                  "SUMMARY:"
                      + escape(
                          "order "
                              + purchase.packs()
                              + " x "
                              + index.say().number(purchase.packSize(), 2)
                              + " "
                              + purchase.unit()
                              + " "
                              + purchase.item()
                              + ", last day"));
              line("END:VEVENT");
            });
  }

  private void begin(String id) {
    line("BEGIN:VEVENT");
    line("UID:" + escape(id).replace(' ', '-') + "-" + monday.format(DAY) + "@spangle.invalid");
    line("DTSTAMP:" + monday.format(DAY) + "T000000Z");
  }

  private static String escape(String text) {
    return Printable.line(text).replace("\\", "\\\\").replace(";", "\\;").replace(",", "\\,");
  }

  private void line(String content) {
    StringBuilder folded = new StringBuilder();
    int octets = 0;
    for (int i = 0; i < content.length(); ) {
      int c = content.codePointAt(i);
      String letter = Character.toString(c);
      int size = letter.getBytes(StandardCharsets.UTF_8).length;
      if (octets + size > LONGEST_LINE) {
        folded.append("\r\n ");
        octets = 1;
      }
      folded.append(letter);
      octets += size;
      i += letter.length();
    }
    out.append(folded).append("\r\n");
  }
}
