package spangle.report.picture;

import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import spangle.fit.hang.CarrierFace;
import spangle.fit.hang.HangPattern;
import spangle.fit.hang.HangPattern.HungPiece;

/** The faces of a carrier with every piece where it hangs, as its hanger sees it. */
public final class HangPicture {
  private static final double MARGIN = 40;

  private HangPicture() {}

  /**
   * Draws all faces side by side.
   *
   * @param face the carrier's faces
   * @param pattern where pieces hang
   * @param letters letter of the parts table by item key
   */
  public static String of(CarrierFace face, HangPattern pattern, Map<String, String> letters) {
    double bottom =
        pattern.pieces().stream()
            .mapToDouble(p -> p.yMm() + p.heightMm())
            .reduce(face.heightMm(), Math::max);
    double unit = Math.max(face.widthMm() * usedFaces(face, pattern), bottom) / 100;
    double title = 5 * unit;
    List<Integer> faces =
        IntStream.range(0, face.faces())
            .filter(f -> pattern.pieces().stream().anyMatch(p -> p.face() == f))
            .boxed()
            .toList();
    double width = faces.size() * (face.widthMm() + MARGIN) + MARGIN;
    Svg svg = new Svg(width, bottom + title + MARGIN, "hang", "hang pattern");
    double x = MARGIN;
    for (int f : faces) {
      one(svg, face, pattern, letters, f, x, title, unit);
      x += face.widthMm() + MARGIN;
    }
    return svg.done();
  }

  private static int usedFaces(CarrierFace face, HangPattern pattern) {
    return (int)
        IntStream.range(0, face.faces())
            .filter(f -> pattern.pieces().stream().anyMatch(p -> p.face() == f))
            .count();
  }

  private static void one(
      Svg svg,
      CarrierFace face,
      HangPattern pattern,
      Map<String, String> letters,
      int number,
      double x,
      double y,
      double unit) {
    List<HungPiece> pieces = pattern.pieces().stream().filter(p -> p.face() == number).toList();
    svg.text(
        x,
        y - 1.2 * unit,
        3.4 * unit,
        "t",
        name(number, face.faces()) + ": " + pieces.size() + " pieces");
    svg.rect(x, y, face.widthMm(), face.heightMm(), "rack");
    svg.line(x, y, x + face.widthMm(), y, "bar");
    for (HungPiece piece : pieces) {
      double left = x + piece.xMm();
      double top = y + piece.yMm();
      double middle = left + piece.widthMm() / 2;
      svg.line(middle, Math.max(y, top - face.hookDropMm()), middle, top, "hook");
      svg.rect(left, top, piece.widthMm(), piece.heightMm(), piece.turned() ? "piece on" : "piece");
      double size = Math.min(piece.widthMm(), piece.heightMm());
      if (size > 1.6 * unit) {
        svg.text(
            middle,
            top + piece.heightMm() / 2 + 0.35 * letterSize(size, unit),
            letterSize(size, unit),
            "t mid",
            letters.getOrDefault(piece.key(), ""));
      }
    }
  }

  private static double letterSize(double room, double unit) {
    return Math.min(0.7 * room, 4 * unit);
  }

  private static String name(int face, int faces) {
    if (faces == 1) {
      return "front";
    }
    if (faces == 2) {
      return face == 0 ? "front" : "back";
    }
    return "row " + (face + 1);
  }
}
