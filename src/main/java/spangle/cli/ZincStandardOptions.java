package spangle.cli;

import java.util.Arrays;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;
import spangle.coating.zinc.AstmA123;
import spangle.coating.zinc.AstmA153;
import spangle.coating.zinc.Iso1461;
import spangle.coating.zinc.ZincRow;

/** Which standard judges the work, and by which of its rows. */
final class ZincStandardOptions {
  private static final String ISO = "iso1461";
  private static final String A123 = "astm-a123";
  private static final String A153 = "astm-a153";

  @Option(
      names = "--standard",
      paramLabel = "NAME",
      description = "iso1461 (default), astm-a123, or astm-a153 for spun hardware.")
  private String standard = ISO;

  @Option(
      names = "--category",
      paramLabel = "NAME",
      description = "For astm-a123: plate, shape, pipe, bar, wire, rebar, casting.")
  private @Nullable String category;

  @Option(names = "--spun", description = "Centrifuged.")
  private boolean spun;

  @Option(names = "--threaded", description = "Threaded and centrifuged.")
  private boolean threaded;

  @Option(names = "--diameter", paramLabel = "D", description = "Thread diameter.")
  private @Nullable String diameter;

  @Option(names = "--casting", description = "An iron casting.")
  private boolean casting;

  @Option(names = "--washer", description = "For astm-a153: a washer.")
  private boolean washer;

  @Option(
      names = "--piece-length",
      paramLabel = "L",
      description = "For astm-a153: length of rolled, pressed or forged hardware.")
  private @Nullable String pieceLength;

  /** Whether the category was left to the usual one. */
  boolean categoryAssumed() {
    return standard.equals(A123) && category == null;
  }

  /** Refuses what contradicts. */
  void check() {
    if (!standard.equals(ISO) && !standard.equals(A123) && !standard.equals(A153)) {
      throw ExitException.usage(
          "--standard '" + standard + "' is not known: iso1461, astm-a123 or astm-a153");
    }
    if (standard.equals(A123) && (spun || threaded || casting)) {
      throw ExitException.usage(
          "--spun, --threaded and --casting go with iso1461; ASTM A153 judges spun hardware");
    }
    if (threaded && casting) {
      throw ExitException.usage("--threaded and --casting contradict each other: give one");
    }
    if (diameter != null && !threaded) {
      throw ExitException.usage("--diameter goes with --threaded: give both or neither");
    }
    if (threaded && diameter == null) {
      throw ExitException.usage("--threaded needs --diameter, like --diameter 12mm");
    }
    if (category != null && !standard.equals(A123)) {
      throw ExitException.usage("--category goes with --standard astm-a123");
    }
    if ((washer || pieceLength != null) && !standard.equals(A153)) {
      throw ExitException.usage("--washer and --piece-length go with --standard astm-a153");
    }
    if (standard.equals(A153)) {
      checkHardware();
    }
  }

  private void checkHardware() {
    int kinds =
        (threaded ? 1 : 0) + (casting ? 1 : 0) + (washer ? 1 : 0) + (pieceLength != null ? 1 : 0);
    if (kinds != 1) {
      throw ExitException.usage(
          "--standard astm-a153 needs one of --casting, --threaded with --diameter, --washer,"
              + " --piece-length");
    }
  }

  /** The row for one thickness. */
  ZincRow row(ZincWork.Wall wall) {
    return switch (standard) {
      case A123 ->
          wall.inches().isPresent()
              ? AstmA123.rowInches(category(), wall.inches().getAsDouble())
              : AstmA123.row(category(), wall.thicknessMm());
      case A153 -> hardware(wall.thicknessMm()).row();
      default -> iso(wall.thicknessMm());
    };
  }

  private ZincRow iso(double thicknessMm) {
    if (diameter != null) {
      return Iso1461.threaded(threadMm(diameter));
    }
    if (spun) {
      return Iso1461.spun(thicknessMm);
    }
    return casting ? Iso1461.casting(thicknessMm) : Iso1461.steel(thicknessMm);
  }

  private AstmA153 hardware(double thicknessMm) {
    if (diameter != null) {
      return AstmA153.fastener(threadMm(diameter));
    }
    if (casting) {
      return AstmA153.A;
    }
    return pieceLength == null
        ? AstmA153.washer(thicknessMm)
        : AstmA153.hardware(thicknessMm, Ask.lengthMm("--piece-length", pieceLength));
  }

  private static double threadMm(String text) {
    return Ask.thicknessMm("--diameter", text);
  }

  private AstmA123.Category category() {
    String wanted = category == null ? "plate" : category;
    for (AstmA123.Category each : AstmA123.Category.values()) {
      if (each.word().equals(wanted)) {
        return each;
      }
    }
    throw ExitException.usage(
        "--category '"
            + wanted
            + "' is not known: "
            + Arrays.stream(AstmA123.Category.values())
                .map(AstmA123.Category::word)
                .collect(Collectors.joining(", ")));
  }
}
