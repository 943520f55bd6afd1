package spangle.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;
import spangle.measure.Quantities;
import spangle.part.Hole;

/** What belongs to some forms of a piece and not to others. */
final class FormDetails {
  private static final Pattern COUNTED = Pattern.compile("([1-9][0-9]{0,5})\\s*[xX×]\\s*(.+)");

  @Option(names = "--thickness", paramLabel = "T", description = "Sheet or wall, e.g. 3mm.")
  private @Nullable String thickness;

  @Option(names = "--open", paramLabel = "front", description = "The box has no front.")
  private @Nullable String open;

  @Option(
      names = "--hole",
      paramLabel = "[Nx]D",
      description = "Round holes in the plate, e.g. 4x20mm; may be repeated.")
  private List<String> holes = new ArrayList<>();

  @Option(names = "--length", paramLabel = "L", description = "Length of the section, e.g. 6m.")
  private @Nullable String length;

  double thicknessMm() {
    if (thickness == null) {
      throw ExitException.usage("--thickness is missing: give it like --thickness 3mm");
    }
    return Ask.thicknessMm("--thickness", thickness);
  }

  /** The thickness as it was written, where it was given. */
  Optional<String> thickness() {
    return Optional.ofNullable(thickness);
  }

  double lengthMm() {
    if (length == null) {
      throw ExitException.usage("--length is missing: give it like --length 6m");
    }
    return Quantities.lengthMm(length);
  }

  boolean openFront() {
    if (open != null && !open.toLowerCase(Locale.ROOT).equals("front")) {
      throw ExitException.usage("--open '" + open + "' is not known: only 'front' is");
    }
    return open != null;
  }

  List<Hole> holes() {
    return holes.stream().map(FormDetails::hole).toList();
  }

  private static Hole hole(String text) {
    Matcher counted = COUNTED.matcher(text.strip());
    return counted.matches()
        ? Hole.round(Integer.parseInt(counted.group(1)), Quantities.lengthMm(counted.group(2)))
        : Hole.round(1, Quantities.lengthMm(text));
  }

  /** An option that the form cannot use is a mistake, never ignored. */
  void refuseStrays(boolean plate, boolean box, boolean section, boolean bar) {
    refuse(open != null && !box, "--open", "--box");
    refuse(!holes.isEmpty() && !plate, "--hole", "--plate");
    refuse(length != null && !section, "--length", "--section");
    if (thickness != null && (section || bar)) {
      throw ExitException.usage(
          "--thickness does not belong to a " + (bar ? "bar" : "section") + ": leave it out");
    }
  }

  /** A body brings its own walls. */
  void refuseThickness() {
    if (thickness != null) {
      throw ExitException.usage("--thickness does not belong to a body: leave it out");
    }
  }

  private static void refuse(boolean stray, String option, String form) {
    if (stray) {
      throw ExitException.usage(option + " goes with " + form + " only: leave it out");
    }
  }
}
