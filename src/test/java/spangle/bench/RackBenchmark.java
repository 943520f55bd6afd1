package spangle.bench;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import spangle.fit.hang.CarrierFace;
import spangle.fit.hang.HangEffort;
import spangle.fit.hang.HangItem;
import spangle.fit.hang.HangPacker;
import spangle.fit.hang.HangPattern;
import spangle.fit.hang.HangPattern.HungPiece;

/**
 * Packs public rectangle-packing instances with the hang patterns of the product, quarter turns
 * allowed, and compares the number of frames with the best known.
 *
 * <p>Arguments: the folder with {@code instances.json} and {@code best_known.csv}; {@code --style
 * rows|free} (free); {@code --seconds N} per instance (2); {@code --fast} for the quick rules
 * alone; {@code --every N} for a sample of each N-th instance; {@code --list} for a line per
 * instance.
 */
public final class RackBenchmark {
  private final CarrierFace.Style style;
  private final Duration perInstance;
  private final boolean fast;
  private final boolean list;
  private final Map<String, Totals> byClass = new TreeMap<>();
  private final Totals all = new Totals();

  private RackBenchmark(Map<String, String> options) {
    style =
        CarrierFace.Style.valueOf(options.getOrDefault("--style", "free").toUpperCase(Locale.ROOT));
    double seconds = Double.parseDouble(options.getOrDefault("--seconds", "2"));
    perInstance = Duration.ofMillis(Math.round(seconds * 1000));
    fast = options.containsKey("--fast");
    list = options.containsKey("--list");
  }

  /** Sums over a group of instances. */
  private static final class Totals {
    private int instances;
    private int frames;
    private int best;
    private int bound;
    private int atBest;
    private int boundFaults;
    private double seconds;
    private double longest;

    void add(int packed, int bestKnown, int lowest, double took) {
      instances++;
      frames += packed;
      best += bestKnown;
      bound += lowest;
      atBest += packed <= bestKnown ? 1 : 0;
      boundFaults += lowest > bestKnown ? 1 : 0;
      seconds += took;
      longest = Math.max(longest, took);
    }

    String line(String name) {
      return String.format(
          Locale.ROOT,
          "| %-5s | %4d | %5d | %5d | %.4f | %5d | %4d | %2d | %7.3f | %6.3f |",
          name,
          instances,
          frames,
          best,
          (double) frames / best,
          bound,
          atBest,
          boundFaults,
          seconds / instances,
          longest);
    }
  }

  /** Runs the benchmark and prints a table. */
  public static void main(String[] args) throws IOException {
    Map<String, String> options = new LinkedHashMap<>();
    for (int i = 1; i < args.length; i++) {
      boolean flag = args[i].equals("--fast") || args[i].equals("--list");
      options.put(args[i], flag ? "" : args[++i]);
    }
    new RackBenchmark(options)
        .run(Path.of(args[0]), Integer.parseInt(options.getOrDefault("--every", "1")));
  }

  private void run(Path folder, int every) throws IOException {
    JsonNode instances = new ObjectMapper().readTree(folder.resolve("instances.json").toFile());
    List<String> lines = Files.readAllLines(folder.resolve("best_known.csv"));
    List<String> header = List.of(lines.get(0).split(",", -1));
    for (int i = 1; i < lines.size(); i++) {
      if ((i - 1) % every == 0) {
        String[] row = lines.get(i).split(",", -1);
        JsonNode instance = instances.get(row[0]);
        runOne(
            row[0],
            row[header.indexOf("cls")],
            instance,
            Integer.parseInt(row[header.indexOf("best_rotation")]));
      }
    }
    System.out.println(
        "| class | inst | ours  | best  | ratio  | bound | at best | bound faults | mean s | max s |");
    System.out.println("|---|---|---|---|---|---|---|---|---|---|");
    byClass.forEach((name, totals) -> System.out.println(totals.line(name)));
    System.out.println(all.line("all"));
  }

  private void runOne(String name, String cls, JsonNode instance, int best) {
    CarrierFace face =
        CarrierFace.plain(instance.get("W").asDouble(), instance.get("H").asDouble(), style);
    List<HangItem> items = new ArrayList<>();
    for (JsonNode size : instance.get("items")) {
      String key = "p" + items.size();
      items.add(
          new HangItem(key, 1, size.get(0).asDouble(), size.get(1).asDouble(), 0, 0, 0, true));
    }
    long start = System.nanoTime();
    List<HangPattern> patterns =
        fast
            ? HangPacker.packAllQuickly(face, items)
            : HangPacker.packAll(face, items, HangEffort.within(perInstance));
    double seconds = (System.nanoTime() - start) / 1e9;
    prove(name, face, items, patterns);
    int bound = HangPacker.fewestCarriers(face, items);
    byClass
        .computeIfAbsent("0".repeat(2 - cls.length()) + cls, key -> new Totals())
        .add(patterns.size(), best, bound, seconds);
    all.add(patterns.size(), best, bound, seconds);
    if (list) {
      System.out.printf(
          Locale.ROOT,
          "%s %d best %d bound %d %.3f s%n",
          name,
          patterns.size(),
          best,
          bound,
          seconds);
    }
  }

  /** Every piece once, inside its frame, apart from the others; otherwise the run ends. */
  private static void prove(
      String name, CarrierFace face, List<HangItem> items, List<HangPattern> patterns) {
    Map<String, HangItem> waiting = new TreeMap<>();
    items.forEach(item -> waiting.put(item.key(), item));
    for (HangPattern pattern : patterns) {
      List<HungPiece> pieces = pattern.pieces();
      for (int i = 0; i < pieces.size(); i++) {
        HungPiece a = pieces.get(i);
        HangItem item = waiting.remove(a.key());
        boolean good =
            item != null
                && a.widthMm() == (a.turned() ? item.dropMm() : item.acrossMm())
                && a.heightMm() == (a.turned() ? item.acrossMm() : item.dropMm())
                && a.xMm() >= 0
                && a.yMm() >= 0
                && a.rightMm() <= face.widthMm()
                && a.bottomMm() <= face.heightMm();
        for (int j = 0; j < i && good; j++) {
          HungPiece b = pieces.get(j);
          good =
              a.rightMm() <= b.xMm()
                  || b.rightMm() <= a.xMm()
                  || a.bottomMm() <= b.yMm()
                  || b.bottomMm() <= a.yMm();
        }
        if (!good) {
          throw new IllegalStateException(name + ": wrong pattern at " + a);
        }
      }
    }
    if (!waiting.isEmpty()) {
      throw new IllegalStateException(name + ": not hung: " + waiting.keySet());
    }
  }
}
