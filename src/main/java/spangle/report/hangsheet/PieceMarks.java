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
  /** The first kind stays plain, the next get these hatches; the ninth kind starts over. */
  private static final List<Integer> HATCHES = List.of(-1, 0, 1, 4, 5, 2, 3, 9);

  /**
   * One kind.
   *
   * @param letter on every piece
   * @param hatch number of its hatch among all hatches; -1 for none
   * @param pieces how many hang
   * @param turned how many of them hang turned
   * @param acrossMm as described, not as turned
   * @param dropMm as described, not as turned
   */
  record Mark(String letter, int hatch, int pieces, int turned, double acrossMm, double dropMm) {}

  private final Map<String, String> letterByKey = new LinkedHashMap<>();
  private final Map<String, Mark> byLetter = new LinkedHashMap<>();

  /**
   * Marks for the pieces of a pattern.
   *
   * @param letters letters given by the parts table, by key; keys of one letter are one kind, keys
   *     without one get the next free
   */
  PieceMarks(HangPattern pattern, Map<String, String> letters) {
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
        HATCHES.get(byLetter.size() % HATCHES.size()),
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

  /** The hatch of a piece; -1 for none. */
  int hatch(String key) {
    Mark mark = byLetter.get(letter(key));
    return mark == null ? -1 : mark.hatch();
  }
}
