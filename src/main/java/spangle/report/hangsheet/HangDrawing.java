package spangle.report.hangsheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import spangle.fit.hang.CarrierFace;
import spangle.fit.hang.HangPattern;
import spangle.fit.hang.HangPattern.HungPiece;
import spangle.fit.hang.HungRow;
import spangle.measure.Figures;
import spangle.report.picture.Mark;

/**
 * The hang pattern of one carrier as a drawing: each face with its pieces, hatched and lettered by
 * kind, a letter on its side where the piece hangs turned, heights of the bars, and below it the
 * letters with counts and sizes and the rows in words. Stands alone and prints in black and white.
 */
public final class HangDrawing {
  /**
   * How faces and words share the drawing.
   *
   * @param width of the whole drawing
   * @param facesWidth room for the faces
   * @param facesHeight room for the faces
   * @param wordsLeft where the words begin
   * @param beside whether they stand beside the faces, not below them
   * @param size of the words
   */
  private record Form(
      double width,
      double facesWidth,
      double facesHeight,
      double wordsLeft,
      boolean beside,
      double size) {
    double line() {
      return size * 1.4;
    }

    /** Characters in a line that begins so far right of the words' left edge. */
    int characters(double indent) {
      return (int) ((width - wordsLeft - indent) / (CHARACTER_WIDTH * size));
    }
  }

  private static final Form UPRIGHT = new Form(760, 760, 520, 12, false, 27);
  private static final Form WIDE = new Form(800, 530, 420, 540, true, 20);

  /** Mean width of a character of ordinary text in a sans serif face, of its size. */
  private static final double CHARACTER_WIDTH = 0.5;

  /** More lines than this are left out on a carrier with free places: the drawing says it all. */
  private static final int MOST_FREE_ROWS = 6;

  private final CarrierFace face;
  private final HangPattern pattern;
  private final PieceMarks marks;
  private final Form form;
  private final Ink ink = new Ink();
  private double y = 4;

  private HangDrawing(CarrierFace face, HangPattern pattern, PieceMarks marks, Form form) {
    this.face = face;
    this.pattern = pattern;
    this.marks = marks;
    this.form = form;
  }

  /**
   * Draws a pattern for a page or a slot that is taller than wide: the words stand below the faces.
   *
   * @param pattern what hangs where
   * @param face the carrier
   * @param letters letter of each kind in the parts table beside the drawing, by the key of its
   *     pieces; a kind without one gets the next free letter
   * @return one svg element
   */
  public static String svg(HangPattern pattern, CarrierFace face, Map<String, String> letters) {
    return draw(pattern, face, letters, UPRIGHT);
  }

  /** The same for a slot that is wider than tall: the words stand at the right of the faces. */
  public static String wideSvg(HangPattern pattern, CarrierFace face, Map<String, String> letters) {
    return draw(pattern, face, letters, WIDE);
  }

  private static String draw(
      HangPattern pattern, CarrierFace face, Map<String, String> letters, Form form) {
    PieceMarks marks = new PieceMarks(pattern, letters);
    return new HangDrawing(face, pattern, marks, form).draw();
  }

  private String draw() {
    boolean bulk = face.style() == CarrierFace.Style.BULK;
    if (bulk) {
      basket();
    } else {
      faces();
    }
    double drawn = y;
    if (form.beside()) {
      y = 4;
    }
    letters();
    if (!bulk) {
      rows();
      notes();
    }
    y = Math.max(y, drawn);
    return "<svg xmlns=\"http://www.w3.org/2000/svg\" class=\"hang\" viewBox=\"0 0 "
        + Mark.num(form.width())
        + " "
        + Mark.num(y + 4)
        + "\" role=\"img\" aria-label=\"hang pattern, "
        + pattern.pieces().size()
        + " pieces\" font-family=\"sans-serif\">"
        + ink.content()
        + "</svg>";
  }

  private void basket() {
    double side = 110;
    ink.line(20, y + 10, 20 + side / 8, y + side, 3);
    ink.line(20 + side, y + 10, 20 + side * 7 / 8, y + side, 3);
    ink.line(20 + side / 8, y + side, 20 + side * 7 / 8, y + side, 3);
    ink.line(20 + side * 0.03, y + 32, 20 + side * 0.97, y + 32, 1);
    double x = 2 * 20 + side + 10;
    int pieces = pattern.pieces().size();
    ink.bold(x, y + 26, 22, "basket: " + pieces + (pieces == 1 ? " piece" : " pieces"));
    double first = y + 26 + form.line();
    ink.words(x, first, form.size(), "thrown in, filled no higher");
    ink.words(
        x, first + form.line(), form.size(), "than " + Figures.upTo(face.heightMm(), 0) + " mm");
    y += side + 16;
  }

  /** All faces that carry something, arranged so that they come out largest. */
  private void faces() {
    List<Integer> used =
        pattern.pieces().stream().map(HungPiece::face).distinct().sorted().toList();
    int count = Math.max(1, used.size());
    int columns = 1;
    double scale = 0;
    for (int c = 1; c <= count; c++) {
      double fits = scale(c, (count + c - 1) / c);
      if (fits > scale) {
        scale = fits;
        columns = c;
      }
    }
    double across = face.widthMm() * scale + FaceDrawing.LEFT + FaceDrawing.RIGHT;
    double down = face.heightMm() * scale + FaceDrawing.ABOVE + FaceDrawing.BELOW;
    double margin = (form.facesWidth() - columns * across) / 2;
    FaceDrawing one = new FaceDrawing(ink, face, marks, scale);
    List<HungRow> rows = pattern.rows();
    for (int i = 0; i < used.size(); i++) {
      int number = used.get(i);
      int column = i % columns;
      int line = i / columns;
      one.draw(
          number,
          pattern.pieces().stream().filter(piece -> piece.face() == number).toList(),
          rows.stream().filter(row -> row.face() == number).toList(),
          margin + column * across,
          y + line * down);
    }
    int lines = (count + columns - 1) / columns;
    y += lines * down;
    if (used.size() < face.faces()) {
      ink.words(FaceDrawing.LEFT, y + form.line() / 2, form.size(), empty(used));
      y += form.line();
    }
  }

  private String empty(List<Integer> used) {
    List<String> names = new ArrayList<>();
    for (int f = 0; f < face.faces(); f++) {
      if (!used.contains(f)) {
        names.add(RowWords.faceName(f, face.faces()));
      }
    }
    return "nothing hangs on: " + String.join(", ", names);
  }

  private double scale(int columns, int lines) {
    double across =
        (form.facesWidth() / columns - FaceDrawing.LEFT - FaceDrawing.RIGHT) / face.widthMm();
    double down =
        (form.facesHeight() / lines - FaceDrawing.ABOVE - FaceDrawing.BELOW) / face.heightMm();
    return Math.max(0, Math.min(across, down));
  }

  /** Per kind its hatch and letter, number and size. */
  private void letters() {
    y += 6;
    for (PieceMarks.Mark mark : marks.all()) {
      double swatch = 46;
      ink.hatched(form.wordsLeft(), y + 1, swatch, form.line() - 3, mark.hatch(), 1.2);
      ink.letter(
          form.wordsLeft() + swatch / 2, y + form.line() / 2, form.size(), false, mark.letter());
      paragraph(count(mark), swatch + 12);
    }
  }

  private static String count(PieceMarks.Mark mark) {
    String turned =
        mark.turned() == 0
            ? ""
            : mark.turned() == mark.pieces() ? ", all turned" : ", " + mark.turned() + " turned";
    return mark.pieces()
        + " x "
        + mark.letter()
        + turned
        + "; "
        + Figures.upTo(mark.acrossMm(), 1)
        + " x "
        + Figures.upTo(mark.dropMm(), 1)
        + " mm";
  }

  private void rows() {
    List<String> lines = RowWords.of(pattern, marks, face.faces());
    if (face.style() == CarrierFace.Style.FREE && lines.size() > MOST_FREE_ROWS) {
      return;
    }
    y += 6;
    double half = (form.width() - form.wordsLeft()) / 2;
    int characters = form.characters(half);
    boolean paired = lines.size() > 2 && lines.stream().allMatch(l -> l.length() <= characters);
    if (!paired) {
      lines.forEach(line -> paragraph(line, 0));
      return;
    }
    int first = (lines.size() + 1) / 2;
    for (int i = 0; i < lines.size(); i++) {
      double x = i < first ? form.wordsLeft() : form.wordsLeft() + half;
      ink.words(x, y + (i % first) * form.line() + form.line() / 2, form.size(), lines.get(i));
    }
    y += first * form.line();
  }

  private void paragraph(String text, double indent) {
    for (String line : Ink.wrap(text, form.characters(indent))) {
      ink.words(form.wordsLeft() + indent, y + form.line() / 2, form.size(), line);
      y += form.line();
    }
  }

  private void notes() {
    y += 6;
    StringBuilder note = new StringBuilder("Show face out.");
    if (marks.anyTurned()) {
      note.append(" Letter on its side: hang it a quarter turned.");
    }
    if (face.hookDropMm() > 0) {
      note.append(" Hook ").append(Figures.upTo(face.hookDropMm(), 1)).append(" mm.");
    }
    if (face.hookPitchMm() > 0) {
      note.append(" Left edges at hook places, every ")
          .append(Figures.upTo(face.hookPitchMm(), 1))
          .append(" mm.");
    }
    note.append(" At least ")
        .append(Figures.upTo(face.gapAcrossMm(), 1))
        .append(" mm between pieces, ")
        .append(Figures.upTo(face.gapDownMm(), 1))
        .append(" mm below them.");
    if (face.style() == CarrierFace.Style.FREE) {
      note.append(" Figures on pieces: mm from the left / from the top.");
    }
    paragraph(note.toString(), 0);
  }
}
