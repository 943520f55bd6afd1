package spangle.report.hangsheet;

import java.util.List;
import spangle.fit.hang.CarrierFace;
import spangle.fit.hang.HangPattern.HungPiece;
import spangle.fit.hang.HungRow;
import spangle.measure.Figures;

/** One face of a carrier: bars, hooks, pieces, and its measures around it. */
final class FaceDrawing {
  /** Room for heights at the left of the face. */
  static final double LEFT = 66;

  /** Room for row numbers at the right of the face. */
  static final double RIGHT = 36;

  static final double ABOVE = 34;
  static final double BELOW = 36;

  private static final double TITLE = 20;
  private static final double FIGURES = 15;
  private static final double SMALL = 13;
  private static final double LEAST_LETTER = 8;
  private static final double LARGEST_LETTER = 30;
  private static final double LETTER_SHARE = 0.66;

  private final Ink ink;
  private final CarrierFace face;
  private final PieceMarks marks;
  private final double scale;

  FaceDrawing(Ink ink, CarrierFace face, PieceMarks marks, double scale) {
    this.ink = ink;
    this.face = face;
    this.marks = marks;
    this.scale = scale;
  }

  /** Draws the face with its surroundings, upper left corner at the given place. */
  void draw(int number, List<HungPiece> pieces, List<HungRow> rows, double left, double top) {
    double x = left + LEFT;
    double y = top + ABOVE;
    double width = face.widthMm() * scale;
    double height = face.heightMm() * scale;
    String title = RowWords.faceName(number, face.faces()) + ": " + pieces.size();
    ink.bold(x, top + ABOVE / 2 - 2, TITLE, title + (pieces.size() == 1 ? " piece" : " pieces"));
    ink.box(x, y, width, height, "none", 1.2);
    if (face.style() == CarrierFace.Style.ROWS) {
      for (HungRow row : rows) {
        double bar = y + barMm(row) * scale;
        ink.line(x, bar, x + width, bar, 3);
      }
    }
    pieces.forEach(piece -> piece(piece, x, y));
    heights(rows, x, y);
    rowNumbers(rows, x + width, y);
    double below = y + height + BELOW / 2;
    ink.line(x, below, x + width, below, 1);
    ink.line(x, below - 6, x, below + 6, 1);
    ink.line(x + width, below - 6, x + width, below + 6, 1);
    String measure = Figures.upTo(face.widthMm(), 1) + " mm";
    ink.wordsAround(x + width / 2, below, FIGURES, measure);
  }

  private double barMm(HungRow row) {
    return row.topMm() - face.hookDropMm();
  }

  private void piece(HungPiece piece, double x, double y) {
    double left = x + piece.xMm() * scale;
    double top = y + piece.yMm() * scale;
    double width = piece.widthMm() * scale;
    double height = piece.heightMm() * scale;
    double middle = left + width / 2;
    ink.line(middle, top - face.hookDropMm() * scale, middle, top, 1);
    ink.hatched(left, top, width, height, marks.hatch(piece.key()), 1.2);
    String letter = marks.letter(piece.key());
    double size = Math.min(LARGEST_LETTER, LETTER_SHARE * Math.min(width, height));
    size /= Math.max(1, 0.7 * letter.length());
    if (size >= LEAST_LETTER) {
      ink.letter(middle, top + height / 2, size, piece.turned(), letter);
    }
    if (face.style() == CarrierFace.Style.FREE && width >= 84 && height >= 60) {
      String place = Figures.upTo(piece.xMm(), 0) + " / " + Figures.upTo(piece.yMm(), 0);
      ink.rimmedWords(left + 4, top + SMALL * 0.8, SMALL, place);
    }
  }

  /** Heights of the bars below the top, as many as can be read; the face's own height last. */
  private void heights(List<HungRow> rows, double x, double y) {
    double bottom = y + face.heightMm() * scale;
    double last = Double.NEGATIVE_INFINITY;
    for (HungRow row : rows) {
      double bar = y + barMm(row) * scale;
      if (bar - last >= FIGURES + 1 && bottom - bar >= FIGURES + 1) {
        ink.line(x - 7, bar, x, bar, 1);
        ink.wordsUpTo(x - 9, bar, FIGURES, Figures.upTo(barMm(row), 0));
        last = bar;
      }
    }
    ink.line(x - 7, bottom, x, bottom, 1);
    ink.wordsUpTo(x - 9, bottom, FIGURES, Figures.upTo(face.heightMm(), 1));
  }

  private void rowNumbers(List<HungRow> rows, double x, double y) {
    if (face.style() != CarrierFace.Style.ROWS) {
      return;
    }
    double last = Double.NEGATIVE_INFINITY;
    int number = 0;
    for (HungRow row : rows) {
      number++;
      double middle = y + (row.topMm() + row.heightMm() / 2) * scale;
      if (middle - last >= FIGURES + 3) {
        ink.bold(x + 9, middle, FIGURES + 2, String.valueOf(number));
        last = middle;
      }
    }
  }
}
