package spangle.intake.source;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import spangle.intake.problem.Place;

/** Looks over a spreadsheet's package before anything in it is parsed. */
final class XlsxPackage {
  private static final int SMALL = 1 << 20;
  private static final int LOOKED_AT = 400;

  /** First bytes of a compound file (MS-CFB 2.2). */
  private static final byte[] OLD_CONTAINER = {
    (byte) 0xd0, (byte) 0xcf, 0x11, (byte) 0xe0, (byte) 0xa1, (byte) 0xb1, 0x1a, (byte) 0xe1
  };

  private XlsxPackage() {}

  /** Refuses what is no package, or one that unpacks to more than a week's list can be. */
  static void check(String file, byte[] bytes) throws UnreadableException {
    Place place = Place.file(file);
    if (bytes.length < 4 || bytes[0] != 'P' || bytes[1] != 'K') {
      throw otherKind(place, bytes);
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

  /** What a file is that has the name of a workbook. */
  private static UnreadableException otherKind(Place place, byte[] bytes) {
    if (startsWith(bytes, OLD_CONTAINER)) {
      // MS-OFFCRYPTO 2.3: a locked workbook is a stream of that name in a container of the old
      // kind.
      boolean locked = new String(bytes, StandardCharsets.UTF_16LE).contains("EncryptedPackage");
      return UnreadableException.grammar(
          place,
          locked
              ? "the workbook has a password and cannot be read"
              : "this is a workbook of the old .xls kind under the name of a new one",
          locked ? "save it without a password, or as .csv" : "save it as .xlsx, or as .csv");
    }
    String start = new String(bytes, 0, Math.min(bytes.length, LOOKED_AT), StandardCharsets.UTF_8);
    if (!start.isBlank()
        && start.chars().noneMatch(c -> c < ' ' && c != '\t' && c != '\r' && c != '\n')) {
      return UnreadableException.grammar(
          place,
          "this is text, not a workbook, whatever its name says",
          "give its name the ending .csv if it is a table, or save it as .xlsx");
    }
    return UnreadableException.grammar(
        place, "this is not an .xlsx workbook", "save it as .xlsx without a password, or as .csv");
  }

  private static boolean startsWith(byte[] bytes, byte[] start) {
    return bytes.length >= start.length
        && Arrays.equals(bytes, 0, start.length, start, 0, start.length);
  }

  /** Refuses a workbook under the name of a text file. */
  static void requireText(String file, String text) throws UnreadableException {
    if (text.startsWith("PK\u0003\u0004")) {
      throw UnreadableException.grammar(
          Place.file(file),
          "this is a workbook or another packed file under the name of a text file",
          "give its name the ending .xlsx, or save it as .csv");
    }
  }

  static UnreadableException damaged(Place place) {
    return UnreadableException.grammar(
        place, "the workbook is damaged", "open it in a spreadsheet program and save it again");
  }
}
