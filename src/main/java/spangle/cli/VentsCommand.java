package spangle.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import spangle.fit.vent.HolePlace;
import spangle.fit.vent.HolePlaces;
import spangle.fit.vent.Hollow;
import spangle.fit.vent.HungHollow;
import spangle.fit.vent.OpenFront;
import spangle.fit.vent.VentAnswer;
import spangle.fit.vent.Vents;
import spangle.report.fitsheet.HoleSketch;

/** Vents and drains of one hollow: every published rule, the largest wins. */
@Command(
    name = "vents",
    mixinStandardHelpOptions = true,
    description = {
      "Vent and drain holes of one hollow for hot-dip zinc: number, diameter and place.",
      "All published rules are computed; the largest need wins and is named.",
      "--tube, --pipe and --box are outside sizes with --thickness; --plates is inside."
    },
    footer = {
      "",
      "Examples:",
      "  spangle calc vents --tube 60x60x1200mm --thickness 3mm --tilt 20",
      "  spangle calc vents --box 1200x1000x1000mm --thickness 5mm",
      "  spangle calc vents --box 1200x800x300mm --open front --return 25mm --thickness 2mm",
      "  spangle calc vents --plates 600x400mm --thickness 12mm",
      "  spangle calc vents --overlap 480cm2 --sheets 8+10mm --length 800mm",
      "  spangle calc vents --pockets 4 --thickness 2mm"
    })
final class VentsCommand implements Callable<Integer> {
  @Spec
  @SuppressWarnings("NullAway.Init")
  private CommandSpec spec;

  @Mixin private final HollowOptions hollow = new HollowOptions();

  @Option(
      names = "--tilt",
      paramLabel = "DEG",
      description = "Angle above level it hangs at, 0 to 90; 20 where nothing is said.")
  private double tilt = 20;

  @Option(
      names = "--second-dip",
      paramLabel = "turned-over|end-for-end",
      description = "How it meets the zinc a second time.")
  private @Nullable String second;

  @Option(
      names = "--out",
      paramLabel = "FILE.svg",
      description = "Write a sketch of the holes as it hangs.")
  private @Nullable Path out;

  @Option(names = "--json", description = "Print one JSON object.")
  private boolean json;

  @Override
  public Integer call() {
    if (!(tilt >= 0 && tilt <= 90)) {
      throw ExitException.usage("--tilt " + tilt + " is no angle above level: 0 to 90 degrees");
    }
    Path picture = out == null ? null : Ask.svg("--out", out);
    Hollow asked = hollow.hollow(tilt);
    VentAnswer answer = Vents.of(asked);
    HungHollow hung = hung();
    List<HolePlace> places = places(asked, hung);
    if (picture != null) {
      sketch(picture, HoleSketch.of(hung, answer, places));
    }
    if (json) {
      VentWords.json(answer, places).print(spec.commandLine().getOut());
    } else {
      VentWords.print(answer, places, spec.commandLine().getOut());
    }
    return ExitCode.DONE;
  }

  private static List<HolePlace> places(Hollow asked, HungHollow hung) {
    if (asked instanceof OpenFront) {
      return HolePlaces.inReturns(hung);
    }
    boolean placed = !(asked instanceof Hollow.Overlap) && !(asked instanceof Hollow.Returns);
    return placed ? HolePlaces.of(hung) : List.of();
  }

  private HungHollow hung() {
    List<Double> seen = hollow.seenMm();
    return new HungHollow(seen.get(0), seen.get(1), tilt, secondDip());
  }

  private HungHollow.Second secondDip() {
    if (second == null) {
      return HungHollow.Second.NONE;
    }
    return switch (second.toLowerCase(Locale.ROOT)) {
      case "turned-over" -> HungHollow.Second.TURNED_OVER;
      case "end-for-end" -> HungHollow.Second.END_FOR_END;
      default ->
          throw ExitException.usage(
              "--second-dip '" + second + "' is not known: turned-over or end-for-end");
    };
  }

  private void sketch(Path file, String svg) {
    try {
      Files.writeString(file, svg, StandardCharsets.UTF_8);
    } catch (IOException unwritable) {
      throw ExitException.refused(
          "The file " + file + " cannot be written: check the folder and who may write there");
    }
    spec.commandLine().getErr().println("Sketch: " + file);
  }
}
