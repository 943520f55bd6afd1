package spangle.cli;

import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import spangle.desk.DrawingDesk;
import spangle.intake.drawing.FlatRead;
import spangle.intake.drawing.SolidRead;
import spangle.measure.Box;
import spangle.measure.Figures;
import spangle.part.Edges;
import spangle.part.FlatPattern;
import spangle.part.HollowKind;
import spangle.part.Material;
import spangle.part.Measured;
import spangle.part.Shape;
import spangle.part.ShapeException;

/** Area, mass and envelope of one piece by its form. */
@Command(
    name = "area",
    mixinStandardHelpOptions = true,
    description = {
      "Surface, mass and outside size of one piece.",
      "All surface a bath wets counts: both faces, bores of open tubes, cut edges."
    },
    footer = {
      "",
      "Examples:",
      "  spangle calc area --plate 500x400mm --thickness 3mm --hole 4x20mm",
      "  spangle calc area --box 800x1000x300mm --open front --thickness 2mm",
      "  spangle calc area --tube 2x2x48in --thickness 0.12in --material aluminium",
      "  spangle calc area --section L50x50x5 --length 6m",
      "  spangle calc area --flat bracket.dxf --thickness 2mm --picture bracket.svg",
      "  spangle calc area --solid casting.stl --unit mm --material cast-iron"
    })
final class AreaCommand implements Callable<Integer> {
  private static final double FT2_PER_M2 = 1 / 0.09290304;
  private static final double LB_PER_KG = 1 / 0.45359237;

  @Spec
  @SuppressWarnings("NullAway.Init")
  private CommandSpec spec;

  @Mixin private final FormOptions form = new FormOptions();

  @Mixin private final FormDetails details = new FormDetails();

  @Mixin private final DrawingOptions drawing = new DrawingOptions();

  @Option(
      names = "--material",
      paramLabel = "NAME",
      description = "steel (default), aluminium, stainless, cast-iron, brass, copper.")
  private String material = "steel";

  @Option(
      names = "--density",
      paramLabel = "KG_M3",
      description = "Density in kg/m3, in place of the material's.")
  private @Nullable Double density;

  @Option(names = "--no-edges", description = "Leave cut edges out of the area.")
  private boolean noEdges;

  @Option(names = "--count", paramLabel = "N", description = "Pieces, for the totals.")
  private int count = 1;

  @Option(names = "--json", description = "Print one JSON object.")
  private boolean json;

  @Override
  public Integer call() {
    Ask.count("--count", count);
    form.requireOne();
    if (form.flat().isPresent()) {
      return flat(form.flat().get());
    }
    if (form.solid().isPresent()) {
      return solid(form.solid().get());
    }
    drawing.refuseStrays();
    Measured measured = measured();
    if (json) {
      figures(measured).print(spec.commandLine().getOut());
    } else {
      say(measured, size(measured.envelopeMm()));
    }
    return ExitCode.DONE;
  }

  private int flat(Path file) {
    details.refuseStrays(false, false, false, false);
    DrawingDesk.Flat flat =
        DrawingDesk.flat(file, drawing.asked(details.thicknessMm(), densityKgM3()));
    drawing.picture().filter(p -> flat.read().isPresent()).ifPresent(p -> draw(p, flat));
    Optional<Measured> measured =
        flat.read()
            .flatMap(FlatRead::shape)
            .map(s -> s.measure(densityKgM3(), noEdges ? Edges.IGNORED : Edges.COUNTED));
    PrintWriter out = spec.commandLine().getOut();
    if (json) {
      JsonOut object = measured.map(this::figures).orElseGet(JsonOut::new);
      FlatWords.json(object, flat).print(out);
    } else {
      boolean unknown =
          flat.read().flatMap(FlatRead::shape).map(FlatPattern::foldedSizeUnknown).orElse(false);
      measured.ifPresent(m -> say(m, unknown ? "not known after bending" : size(m.envelopeMm())));
      FlatWords.print(flat, measured.isPresent() ? out : spec.commandLine().getErr());
    }
    return FlatWords.exitCode(flat);
  }

  private static void draw(Path picture, DrawingDesk.Flat flat) {
    try {
      DrawingDesk.write(picture, DrawingDesk.picture(flat));
    } catch (UncheckedIOException failed) {
      throw ExitException.refused(
          "the picture cannot be written to '" + picture + "': check the folder and its rights");
    }
  }

  private int solid(Path file) {
    details.refuseStrays(false, false, false, false);
    details.refuseThickness();
    DrawingDesk.Body body = DrawingDesk.body(file, drawing.askedOfBody(densityKgM3()));
    Optional<Measured> measured =
        body.read().flatMap(SolidRead::shape).map(s -> s.measure(densityKgM3()));
    PrintWriter out = spec.commandLine().getOut();
    if (json) {
      JsonOut object = measured.map(this::figures).orElseGet(JsonOut::new);
      SolidWords.json(object, body).print(out);
    } else {
      measured.ifPresent(m -> say(m, size(m.envelopeMm())));
      SolidWords.print(body, body.read().isPresent() ? out : spec.commandLine().getErr());
    }
    return SolidWords.exitCode(body);
  }

  private Measured measured() {
    try {
      Shape shape = form.shape(details);
      return shape.measure(densityKgM3(), noEdges ? Edges.IGNORED : Edges.COUNTED);
    } catch (ShapeException impossible) {
      throw ExitException.usage(impossible.sentence());
    }
  }

  private double densityKgM3() {
    if (density != null) {
      return density;
    }
    Material known =
        Material.parse(material)
            .orElseThrow(
                () ->
                    ExitException.usage(
                        "--material '"
                            + material
                            + "' is not known: use steel, aluminium, stainless, cast-iron, brass"
                            + " or copper, or give --density in kg/m3"));
    return known
        .densityKgM3()
        .orElseThrow(() -> ExitException.usage("--material other needs --density in kg/m3"));
  }

  private JsonOut figures(Measured measured) {
    Box box = measured.envelopeMm();
    JsonOut out =
        new JsonOut()
            .put("area_m2", measured.areaM2())
            .put("one_side_m2", measured.oneSideM2())
            .put("cut_edge_m", measured.cutEdgeM())
            .put("mass_kg", measured.massKg())
            .put("envelope_mm", List.of(box.lengthMm(), box.widthMm(), box.heightMm()))
            .put("thickness_mm", measured.skinThicknessMm())
            .put("hollow", measured.hollow().name().toLowerCase(Locale.ROOT))
            .put("enclosed_l", measured.enclosedVolumeL())
            .put("working", measured.working())
            .put("source", form.source())
            .put("cautions", cautions(measured));
    if (count > 1) {
      out.put("count", count)
          .put("total_area_m2", count * measured.areaM2())
          .put("total_mass_kg", count * measured.massKg());
    }
    return out;
  }

  private void say(Measured measured, String size) {
    var out = spec.commandLine().getOut();
    out.println("area      " + area(measured.areaM2()));
    out.println("one side  " + area(measured.oneSideM2()));
    out.println("mass      " + mass(measured.massKg()));
    out.println("size      " + size);
    if (count > 1) {
      out.println(
          count
              + " pieces "
              + area(count * measured.areaM2())
              + ", "
              + mass(count * measured.massKg()));
    }
    out.println("working   " + measured.working());
    out.println("source    " + form.source());
    for (String caution : cautions(measured)) {
      out.println("CAUTION   " + caution);
    }
    out.flush();
  }

  private static String size(Box box) {
    return Figures.upTo(box.lengthMm(), 1)
        + " x "
        + Figures.upTo(box.widthMm(), 1)
        + " x "
        + Figures.upTo(box.heightMm(), 1)
        + " mm";
  }

  private static String area(double m2) {
    return Figures.significant(m2, 5) + " m2 (" + Figures.significant(m2 * FT2_PER_M2, 4) + " ft2)";
  }

  private static String mass(double kg) {
    return Figures.significant(kg, 5) + " kg (" + Figures.significant(kg * LB_PER_KG, 4) + " lb)";
  }

  private static List<String> cautions(Measured measured) {
    if (measured.hollow() != HollowKind.CLOSED) {
      return List.of();
    }
    return List.of(
        "a closed space of "
            + Figures.significant(measured.enclosedVolumeL(), 3)
            + " l: it bursts in molten zinc unless it is vented and drained; its inside counts"
            + " above as coated. Have the holes seen and signed for before it is dipped.");
  }
}
