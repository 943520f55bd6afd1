package spangle.report.hangsheet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import spangle.fit.hang.HangPattern;
import spangle.fit.hang.HangPattern.HungPiece;

/** Letter and hatch of every kind of piece of a pattern, in the order of their letters. */
final class PieceMarks {
  /** Marks of the hatches on a square of eight, from plain to busy; the ninth kind starts over. */
  private static final List<String> HATCHES =
      List.of(
          "",
          "<path d=\"M-2 2 2-2M-2 10 10-2M6 10 10 6\"/>",
          "<circle cx=\"2\" cy=\"2\" r=\"1\"/><circle cx=\"6\" cy=\"6\" r=\"1\"/>",
          "<path d=\"M0 4H8\"/>",
          "<path d=\"M-2 6 2 10M-2-2 10 10M6-2 10 2\"/>",
          "<path d=\"M4 0V8\"/>",
          "<path d=\"M0 0 8 8M8 0 0 8\"/>",
          "<path d=\"M0 4H8M4 0V8\"/>");

  /**
   * One kind.
   *
   * @param letter on every piece
   * @param hatch number of its hatch
   * @param pieces how many hang
   * @param turned how many of them hang turned
   * @param acrossMm as described, not as turned
   * @param dropMm as described, not as turned
   */
  record Mark(String letter, int hatch, int pieces, int turned, double acrossMm, double dropMm) {}

  private final Map<String, String> letterByKey = new LinkedHashMap<>();
  private final Map<String, Mark> byLetter = new LinkedHashMap<>();
  private final String prefix;

  /**
   * Marks for the pieces of a pattern.
   *
   * @param letters letters given by the parts table, by key; keys of one letter are one kind, keys
   *     without one get the next free
   * @param prefix begins the names of the hatches; they must be unlike others on the page
   */
  PieceMarks(HangPattern pattern, Map<String, String> letters, String prefix) {
    this.prefix = prefix;
    Set<String> used = new TreeSet<>(letters.values());
    Map<String, List<HungPiece>> pieces = new TreeMap<>(PieceMarks::inOrder);
    for (HungPiece piece : pattern.pieces()) {
      String letter =
          letterByKey.computeIfAbsent(
              piece.key(),
              key -> {
                String given = letters.get(key);
                return given != null ? given : nextFree(used);
              });
      pieces.computeIfAbsent(letter, key -> new ArrayList<>()).add(piece);
    }
    pieces.forEach((letter, alike) -> byLetter.put(letter, mark(letter, alike)));
  }

  /** Z before AA. */
  private static int inOrder(String a, String b) {
    int byLength = Integer.compare(a.length(), b.length());
    return byLength != 0 ? byLength : a.compareTo(b);
  }

  private Mark mark(String letter, List<HungPiece> pieces) {
    HungPiece first = pieces.get(0);
    int turned = (int) pieces.stream().filter(HungPiece::turned).count();
    return new Mark(
        letter,
        byLetter.size() % HATCHES.size(),
        pieces.size(),
        turned,
        first.turned() ? first.heightMm() : first.widthMm(),
        first.turned() ? first.widthMm() : first.heightMm());
  }

  private static String nextFree(Set<String> used) {
    for (int n = 0; ; n++) {
      String letter =
          (n < 26 ? "" : String.valueOf((char) ('A' + n / 26 - 1))) + (char) ('A' + n % 26);
      if (used.add(letter)) {
        return letter;
      }
    }
  }

  List<Mark> all() {
    return List.copyOf(byLetter.values());
  }

  boolean anyTurned() {
    return byLetter.values().stream().anyMatch(mark -> mark.turned() > 0);
  }

  String letter(String key) {
    return letterByKey.getOrDefault(key, key);
  }

  /** What a piece of this kind is filled with. */
  String fill(String key) {
    Mark mark = byLetter.get(letter(key));
    return mark == null ? "#fff" : fill(mark);
  }

  String fill(Mark mark) {
    return mark.hatch() == 0 ? "#fff" : "url(#" + prefix + mark.hatch() + ")";
  }

  /** Definitions of the hatches in use. */
  String definitions() {
    StringBuilder out = new StringBuilder("<defs>");
    for (int hatch = 1; hatch < Math.min(HATCHES.size(), byLetter.size()); hatch++) {
      out.append("<pattern id=\"")
          .append(prefix)
          .append(hatch)
          .append("\" width=\"8\" height=\"8\" patternUnits=\"userSpaceOnUse\"")
          .append(" patternTransform=\"scale(0.75)\">")
          .append("<rect width=\"8\" height=\"8\" fill=\"#fff\"/>")
          .append("<g stroke=\"#000\" stroke-width=\"0.9\" fill=\"none\">")
          .append(HATCHES.get(hatch))
          .append("</g></pattern>");
    }
    return out.append("</defs>").toString();
  }
}
