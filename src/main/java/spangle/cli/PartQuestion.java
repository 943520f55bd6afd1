package spangle.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Supplier;
import spangle.desk.FitDesk;
import spangle.desk.FitSheets;
import spangle.desk.PartFit;

/** The question whether a part of a week goes in, asked and answered. */
final class PartQuestion {
  private PartQuestion() {}

  /**
   * Answers {@code fit WEEK PART}, with {@code --json} or without, past the reading of options by
   * reflection: that takes longer than the answer, and somebody is on the phone. Every other form
   * is left to the option reader.
   *
   * @return the exit code; empty where the line is of another form
   */
  static OptionalInt plain(PrintWriter out, PrintWriter err, String[] args) {
    List<String> words = new ArrayList<>(List.of(args));
    if (words.isEmpty() || !words.remove(0).equals("fit")) {
      return OptionalInt.empty();
    }
    boolean json = words.remove("--json");
    if (words.size() != 2 || !isWord(words.get(0)) || !isWord(words.get(1))) {
      return OptionalInt.empty();
    }
    try {
      Path week = Path.of(words.get(0));
      return OptionalInt.of(answer(week, words.get(1), Optional.empty(), json, out, err));
    } catch (InvalidPathException noPath) {
      return OptionalInt.empty();
    } catch (RuntimeException ending) {
      return OptionalInt.of(
          Complaints.said(new Complaints.Screen(out, err, List.of(args)), ending));
    }
  }

  /** Neither an option nor the name of a file with options. */
  private static boolean isWord(String word) {
    return !word.isBlank() && !word.startsWith("-") && !word.startsWith("@");
  }

  /** Answers and gives the exit code. */
  static int answer(
      Path week,
      String part,
      Optional<Path> sheet,
      boolean json,
      PrintWriter out,
      PrintWriter err) {
    FitDesk.Asked asked = FitDesk.part(week, part);
    if (asked.fit().isEmpty()) {
      throw asked.refused()
          ? ExitException.refused(asked.complaint())
          : ExitException.usage(asked.complaint());
    }
    PartFit fit = asked.fit().get();
    sheet.ifPresent(
        file -> write(file, () -> FitSheets.page(fit), () -> FitSheets.drawing(fit), err));
    if (json) {
      FitWords.json(fit).print(out);
    } else {
      FitWords.print(fit, out);
    }
    return fit.waits() ? ExitCode.WAITS : ExitCode.DONE;
  }

  /** Writes the answer as a page or as its drawing alone, by the name of the file. */
  static void write(Path file, Supplier<String> page, Supplier<String> drawing, PrintWriter err) {
    String name = String.valueOf(file.getFileName()).toLowerCase(Locale.ROOT);
    if (!name.endsWith(".html") && !name.endsWith(".svg")) {
      throw ExitException.usage("--out '" + file + "' must end in .html or .svg");
    }
    try {
      Files.writeString(
          file, (name.endsWith(".svg") ? drawing : page).get(), StandardCharsets.UTF_8);
    } catch (IOException unwritable) {
      throw ExitException.refused(
          "The file " + file + " cannot be written: check the folder and who may write there");
    }
    err.println("Sheet: " + file);
  }
}
