package spangle.intake.source;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import spangle.intake.problem.Place;

/** Looks over a spreadsheet's package before anything in it is parsed. */
final class XlsxPackage {
  private static final int SMALL = 1 << 20;

  private XlsxPackage() {}

  /** Refuses what is no package, or one that unpacks to more than a week's list can be. */
  static void check(String file, byte[] bytes) throws UnreadableException {
    Place place = Place.file(file);
    if (bytes.length < 4 || bytes[0] != 'P' || bytes[1] != 'K') {
      throw UnreadableException.grammar(
          place,
          "this is not an .xlsx workbook; it may be the old .xls format or have a password",
          "save it as .xlsx without a password, or as .csv");
    }
    byte[] buffer = new byte[1 << 16];
    long all = 0;
    int parts = 0;
    try (ZipInputStream zip = new ZipInputStream(new ByteArrayInputStream(bytes))) {
      for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
        parts++;
        long one = 0;
        for (int n = zip.read(buffer); n >= 0; n = zip.read(buffer)) {
          one += n;
          all += n;
          boolean grows = one > SMALL && one > bytes.length * Limits.SHEET_GROWTH;
          if (all > Limits.SHEET_UNPACKED_BYTES || grows) {
            throw UnreadableException.tooLarge(
                place,
                "the workbook unpacks to far more than it holds",
                Limits.SHEET_UNPACKED_BYTES / (1 << 20)
                    + " MB, "
                    + (int) Limits.SHEET_GROWTH
                    + " times its size");
          }
        }
        if (parts > Limits.SHEET_PARTS) {
          throw UnreadableException.tooLarge(
              place, "the workbook has too many parts", Limits.SHEET_PARTS + " parts");
        }
      }
    } catch (IOException | IllegalArgumentException broken) {
      throw damaged(place);
    }
    if (parts == 0) {
      throw damaged(place);
    }
  }

  static UnreadableException damaged(Place place) {
    return UnreadableException.grammar(
        place, "the workbook is damaged", "open it in a spreadsheet program and save it again");
  }
}
