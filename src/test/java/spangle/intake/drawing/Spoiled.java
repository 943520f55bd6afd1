package spangle.intake.drawing;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;

/** Drawings as no program writes them: sound ones, spoiled by chance. */
final class Spoiled {
  private static final String[] ODD = {
    "1e308",
    "-1e308",
    "1e9",
    "-999999999",
    "0",
    "-0.0",
    "1e-300",
    "NaN",
    "Infinity",
    "0x1p3",
    "",
    "  ",
    "1,5",
    "1.2.3",
    "--4",
    "2147483648",
    "1000000000",
    "ENDSEC",
    "EOF",
    "BLOCK",
    "\u00e4"
  };

  private static final String[] ENTITIES = {
    "LINE",
    "CIRCLE",
    "ARC",
    "ELLIPSE",
    "LWPOLYLINE",
    "POLYLINE",
    "VERTEX",
    "SEQEND",
    "SPLINE",
    "INSERT",
    "TEXT",
    "MTEXT",
    "HATCH",
    "REGION",
    "SECTION",
    "ENDSEC",
    "ENDBLK",
    "EOF",
    "LAYER"
  };

  private Spoiled() {}

  /** Sound DXF files of several kinds. */
  static List<byte[]> dxf() {
    List<byte[]> files = new ArrayList<>();
    files.add(
        DxfText.mm()
            .layer("OFF", 0, -7, "CONTINUOUS")
            .lineKind("K7", 2)
            .rectangle(0, 0, 160, 120)
            .circle(30, 30, 5.5)
            .on("BEND")
            .line(60, 0, 60, 120)
            .on("T")
            .text(62, 10, "UP 90%%d R2")
            .bytes());
    files.add(
        DxfText.withoutUnit()
            .header(9, "$MEASUREMENT", 70, 1)
            .block("H", 0, 0, DxfText.mm().circle(1, 0, 2))
            .block("R", 0, 0, DxfText.mm().insert("H", 0, 0, 70, 2, 71, 2, 44, 20.0, 45, 10.0))
            .entity(
                "LWPOLYLINE",
                90,
                4,
                70,
                1,
                10,
                0.0,
                20,
                0.0,
                42,
                0.3,
                10,
                90.0,
                20,
                0.0,
                10,
                90.0,
                20,
                60.0,
                10,
                0.0,
                20,
                60.0)
            .insert("R", 40, 30, 41, -0.5, 42, 0.5, 50, 33.0)
            .bytes());
    files.add(
        DxfText.mm()
            .entity(
                "SPLINE", 70, 8, 71, 3, 40, 0.0, 40, 0.0, 40, 0.0, 40, 0.0, 40, 1.0, 40, 2.0, 40,
                2.0, 40, 2.0, 40, 2.0, 10, 0.0, 20, 0.0, 10, 10.0, 20, 40.0, 10, 50.0, 20, 40.0, 10,
                70.0, 20, 40.0, 10, 80.0, 20, 0.0)
            .entity("SPLINE", 70, 0, 71, 3, 11, 0.0, 21, 0.0, 11, 40.0, 21, -9.0, 11, 80.0, 21, 0.0)
            .entity("ELLIPSE", 10, 40.0, 20, 12.0, 11, 8.0, 21, 1.0, 40, 0.5, 41, 0.0, 42, 6.2832)
            .bytes());
    files.add(
        ("0\nSECTION\n2\nENTITIES\n0\nPOLYLINE\n8\n0\n66\n1\n70\n1\n0\nVERTEX\n8\n0\n10\n0\n20\n0\n"
                + "0\nVERTEX\n8\n0\n10\n90\n20\n0\n42\n0.5\n0\nVERTEX\n8\n0\n10\n90\n20\n50\n"
                + "0\nSEQEND\n0\nARC\n8\n0\n10\n20\n20\n20\n40\n5\n50\n0\n51\n180\n"
                + "0\nARC\n8\n0\n10\n20\n20\n20\n40\n5\n50\n180\n51\n0\n0\nENDSEC\n0\nEOF\n")
            .getBytes(StandardCharsets.UTF_8));
    return files;
  }

  /** Sound STL files of both kinds. */
  static List<byte[]> stl() {
    StlText hollow = new StlText().box(0, 0, 0, 90, 40, 30, true).box(9, 9, 9, 20, 20, 10, false);
    return List.of(hollow.ascii(), hollow.binary(), new StlText().ball(30, 8).binary("ball", 48));
  }

  /** One of the files, spoiled in one to six ways. */
  static byte[] bytes(List<byte[]> sound, Random random) {
    byte[] bytes = sound.get(random.nextInt(sound.size())).clone();
    int times = 1 + random.nextInt(6);
    for (int i = 0; i < times; i++) {
      bytes = random.nextInt(3) == 0 ? byteWise(bytes, sound, random) : lineWise(bytes, random);
    }
    return bytes;
  }

  private static byte[] byteWise(byte[] bytes, List<byte[]> sound, Random random) {
    if (bytes.length == 0) {
      return new byte[] {(byte) random.nextInt()};
    }
    int at = random.nextInt(bytes.length);
    switch (random.nextInt(5)) {
      case 0 -> bytes[at] = (byte) random.nextInt();
      case 1 -> {
        return Arrays.copyOf(bytes, at);
      }
      case 2 -> {
        int end = Math.min(bytes.length, at + 4);
        for (int i = at; i < end; i++) {
          bytes[i] = (byte) (random.nextBoolean() ? 0xFF : 0);
        }
      }
      case 3 -> {
        byte[] other = sound.get(random.nextInt(sound.size()));
        ByteArrayOutputStream both = new ByteArrayOutputStream();
        both.write(bytes, 0, at);
        int from = random.nextInt(other.length);
        both.write(other, from, other.length - from);
        return both.toByteArray();
      }
      default -> bytes[at] ^= (byte) (1 << random.nextInt(8));
    }
    return bytes;
  }

  private static byte[] lineWise(byte[] bytes, Random random) {
    String text = new String(bytes, StandardCharsets.ISO_8859_1);
    List<String> lines = new ArrayList<>(List.of(text.split("\n", -1)));
    int at = random.nextInt(lines.size());
    switch (random.nextInt(6)) {
      case 0 -> lines.remove(at);
      case 1 -> lines.add(at, lines.get(random.nextInt(lines.size())));
      case 2 -> lines.set(at, ODD[random.nextInt(ODD.length)]);
      case 3 -> lines.set(at, Integer.toString(random.nextInt(1100) - 20));
      case 4 -> lines.set(at, ENTITIES[random.nextInt(ENTITIES.length)]);
      default -> {
        int count = Math.min(1 + random.nextInt(30), lines.size() - at);
        lines.addAll(at, List.copyOf(lines.subList(at, at + count)));
      }
    }
    return String.join("\n", lines).getBytes(StandardCharsets.ISO_8859_1);
  }
}
