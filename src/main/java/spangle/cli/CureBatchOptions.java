package spangle.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;
import spangle.coating.heat.BatchPart;
import spangle.coating.heat.ConvectionRadiation;
import spangle.coating.heat.CureWindow;
import spangle.coating.heat.HeatTransfer;
import spangle.coating.heat.HeatUpTable;
import spangle.coating.heat.HeatedPart;
import spangle.coating.heat.Metal;
import spangle.coating.heat.OvenBatchRange;
import spangle.coating.heat.OvenBatchVerdict;
import spangle.measure.Figures;
import spangle.measure.Interval;

/** Other parts that would share the oven. */
final class CureBatchOptions {
  private static final Pattern PART =
      Pattern.compile("(?i)(steel|aluminium)\\s+([^;]+?)\\s*(?:;\\s*(.+))?");

  @Option(
      names = "--with",
      paramLabel = "\"METAL T [; WINDOW]\"",
      description =
          "Another part of the batch, e.g. \"steel 1mm\" or \"steel 1mm; 10@180, max 20\"; repeat.")
  private List<String> others = new ArrayList<>();

  @Option(
      names = "--settings",
      paramLabel = "LOW-HIGH",
      description = "Settings the oven has. Default: 100C-240C.")
  private @Nullable String settings;

  /** The batch at the asked setting and at all the others. */
  record Batch(OvenBatchVerdict here, OvenBatchRange range) {}

  Optional<Batch> batch(
      HeatedPart part,
      HeatTransfer transfer,
      CureWindow window,
      double startC,
      double ovenC,
      HeatUpTable table) {
    Ask.goesWith(settings, "--settings", !others.isEmpty(), "--with");
    if (others.isEmpty()) {
      return Optional.empty();
    }
    if (others.size() > 50) {
      throw ExitException.usage("--with is given " + others.size() + " times: at most 50");
    }
    List<BatchPart> parts = new ArrayList<>();
    parts.add(new BatchPart(name(part), part, transfer, window));
    others.forEach(text -> parts.add(part(text, transfer, window)));
    OvenBatchVerdict here = OvenBatchVerdict.of(parts, List.of(ovenC), startC, table).get(0);
    return Optional.of(new Batch(here, OvenBatchRange.of(parts, range(), startC, table)));
  }

  private Interval range() {
    if (settings == null) {
      return new Interval(100, 240);
    }
    String[] ends = settings.split("-", -1);
    if (ends.length != 2) {
      throw ExitException.usage(
          "--settings '" + settings + "' is no range: write it like 160C-220C");
    }
    double low = Ask.ovenC("--settings", ends[0]);
    double high = Ask.ovenC("--settings", ends[1]);
    if (high < low) {
      throw ExitException.usage("--settings '" + settings + "': the lower setting comes first");
    }
    return new Interval(low, high);
  }

  private static BatchPart part(String text, HeatTransfer transfer, CureWindow window) {
    Matcher said = PART.matcher(text.strip());
    if (!said.matches()) {
      throw ExitException.usage(
          "--with '"
              + text
              + "' is not a part: write it like \"steel 1mm\" or"
              + " \"aluminium 3mm; 10@180, max 20\"");
    }
    Metal metal = said.group(1).equalsIgnoreCase("steel") ? Metal.STEEL : Metal.ALUMINIUM;
    HeatedPart part = HeatedPart.bothSides(metal, Ask.thicknessMm("--with", said.group(2).strip()));
    CureWindow own = said.group(3) == null ? window : CureCommand.window("--with", said.group(3));
    HeatTransfer coated =
        transfer instanceof ConvectionRadiation oven
            ? new ConvectionRadiation(oven.hWM2K(), ConvectionRadiation.COATED_EMISSIVITY)
            : transfer;
    return new BatchPart(name(part), part, coated, own);
  }

  private static String name(HeatedPart part) {
    return part.metal().word() + " " + Figures.upTo(part.thicknessMm(), 2) + " mm";
  }

  static JsonOut json(Batch batch) {
    JsonOut out =
        new JsonOut()
            .put("common_dwell_min", batch.here().common().orElse(null))
            .put("probe", batch.here().probe().part().name())
            .put("quickest", batch.here().quickest().part().name())
            .put("words", batch.here().words())
            .put("settings_c", batch.range().ovenC().orElse(null));
    batch
        .here()
        .conflict()
        .ifPresent(
            c ->
                out.put(
                    "conflict",
                    new JsonOut()
                        .put("slow", c.slow())
                        .put("quick", c.quick())
                        .put("apart_min", c.apartMin())));
    List<JsonOut> each = new ArrayList<>();
    for (OvenBatchVerdict verdict : batch.range().settings()) {
      each.add(
          new JsonOut()
              .put("oven_c", verdict.ovenC())
              .put("dwell_min", verdict.common().orElseThrow()));
    }
    out.put("at", each);
    batch.range().best().ifPresent(b -> out.put("shortest_at_c", b.ovenC()));
    batch.range().nearest().ifPresent(n -> out.put("nearest", n.words()));
    return out;
  }

  /** Where it comes nearest, unless that is the setting just told. */
  private static String nearest(Batch batch) {
    return batch
        .range()
        .nearest()
        .map(
            n ->
                n.ovenC() == batch.here().ovenC()
                    ? "; this is the nearest"
                    : "; nearest: " + n.words())
        .orElse("");
  }

  static void say(Answer answer, Batch batch) {
    answer.say("batch", batch.here().words());
    batch
        .range()
        .ovenC()
        .ifPresentOrElse(
            range ->
                answer.line(
                    "",
                    "settings at which all share: %.0f to %.0f C; shortest: %s",
                    range.min(),
                    range.max(),
                    batch.range().best().orElseThrow().words()),
            () -> answer.say("", "no setting of the oven suits all of them" + nearest(batch)));
    answer.say(
        "",
        "as a plan takes it: least by the slower, most by the faster of this model and the measured"
            + " table (else 3 min per mm of steel)");
  }
}
