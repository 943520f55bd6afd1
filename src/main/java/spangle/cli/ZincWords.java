package spangle.cli;

import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import spangle.coating.zinc.DipHeat;
import spangle.coating.zinc.DipTimes;
import spangle.coating.zinc.SteelClass;
import spangle.coating.zinc.SteelReactivity;
import spangle.coating.zinc.ZincBudget;
import spangle.coating.zinc.ZincInspection;
import spangle.coating.zinc.ZincLosses;
import spangle.coating.zinc.ZincRow;
import spangle.coating.zinc.ZincSkin;
import spangle.measure.Figures;
import spangle.part.HollowKind;

/** The answer on zinc, for the eye and as data. */
record ZincWords(
    ZincWork work,
    List<ZincSkin> skins,
    SteelReactivity steel,
    ZincBudget budget,
    List<ZincInspection> inspections,
    Optional<KettleOptions.Bath> bath,
    OptionalDouble picklingMin,
    boolean categoryAssumed) {

  /** 1 oz/ft2 in g/m2 (avoirdupois ounce, exact foot). */
  private static final double G_M2_PER_OZ_FT2 = 28.349523125 / 0.09290304;

  private static final String RANGE = "a planning range, not limits";

  /** The row that judges most of the surface. */
  private ZincRow row() {
    return skins.stream().max(Comparator.comparingDouble(ZincSkin::areaM2)).orElseThrow().row();
  }

  private double gramsM2() {
    return 1000 * budget.minimumKg() / budget.areaM2();
  }

  private double likelyUm(ZincRow row) {
    return row.meanUm() * budget.growth().likely();
  }

  private boolean mayFlake() {
    return skins.stream()
        .anyMatch(s -> s.row().meanUm() * budget.growth().high() > SteelClass.FLAKING_UM);
  }

  private List<String> warnings() {
    List<String> warnings = new ArrayList<>(steel.warnings());
    if (steel.steelClass() == SteelClass.UNKNOWN) {
      warnings.add(
          "Steel is not known: laser-grade sheet of ultra-low silicon may miss the minimum, steel"
              + " of the Sandelin range takes two to three times as much.");
    }
    warnings.add(SteelReactivity.CUT_EDGES);
    if (mayFlake()) {
      warnings.add("Over about 200 um the coating may flake when knocked.");
    }
    if (work.hollow().orElse(HollowKind.NONE) == HollowKind.CLOSED) {
      warnings.add(
          "A closed space bursts in molten zinc: no dip before vent and drain holes are seen and"
              + " signed for by two people.");
    }
    if (work.hollow().orElse(HollowKind.NONE) == HollowKind.OPEN) {
      warnings.add("The bore is counted as coated: both ends stay open, nothing may cap them.");
    }
    return warnings;
  }

  private List<String> notes() {
    List<String> notes = new ArrayList<>();
    if (!work.note().isEmpty()) {
      notes.add(work.note());
    }
    if (categoryAssumed) {
      notes.add("category plate is assumed: give --category shape, pipe or bar where it is one");
    }
    if (skins.size() > 1) {
      notes.add("coating_um is the row of the largest skin; each skin is judged by its own row");
    }
    return notes;
  }

  JsonOut json() {
    ZincRow row = row();
    JsonOut out =
        new JsonOut()
            .put("coating_um", new JsonOut().put("local", row.localUm()).put("mean", row.meanUm()))
            .put("coating_g_m2", gramsM2())
            .put("area_m2", budget.areaM2())
            .put("steel_kg", budget.steelKg())
            .put(
                "zinc_on_parts_kg",
                new JsonOut().put("minimum", budget.minimumKg()).put("likely", budget.likelyKg()))
            .put(
                "pickup_pct",
                new JsonOut()
                    .put("minimum", budget.minimumPickupPct())
                    .put("likely", budget.likelyPickupPct()))
            .put("zinc_to_buy_kg", budget.toBuyKg())
            .put("steel_class", steel.steelClass().word())
            .put("rule", row.rule())
            .put("from_memory", row.fromMemory())
            .put("growth", budget.growth())
            .put("look", steel.steelClass().look())
            .put("brittle", steel.steelClass().brittle())
            .put("research_class", steel.research().orElse(null))
            .put("inside_astm_a385", steel.insideA385().orElse(null))
            .put(
                "table_g_m2",
                row.tableMassGM2().isPresent() ? row.tableMassGM2().getAsDouble() : null)
            .put("skins", skinsJson())
            .put("inside_the_purchase_kg", losses(budget.losses()))
            .put(
                "flat_percent",
                new JsonOut()
                    .put("kg", budget.flatPercentKg())
                    .put("off_pct", budget.flatPercentOffPct())
                    .put("use", "a warning only"))
            .put("immersion_min", DipTimes.immersionMin(work.thickestMm()))
            .put("kettle_cycle_min", DipTimes.cycleMin(work.thickestMm()))
            .put("inspection", inspections.stream().map(ZincWords::inspection).toList());
    bath.ifPresent(b -> out.put("bath", bath(b)));
    picklingMin.ifPresent(min -> out.put("pickling_min", min));
    return out.put("warnings", warnings())
        .put("questions", steel.questions())
        .put("note", String.join("; ", notes()))
        .put("working", work.working());
  }

  private List<JsonOut> skinsJson() {
    List<JsonOut> list = new ArrayList<>();
    for (int i = 0; i < skins.size(); i++) {
      ZincSkin skin = skins.get(i);
      list.add(
          new JsonOut()
              .put("thickness_mm", work.walls().get(i).thicknessMm())
              .put("area_m2", skin.areaM2())
              .put("local_um", skin.row().localUm())
              .put("mean_um", skin.row().meanUm())
              .put("minimum_kg", skin.minimumKg())
              .put("rule", skin.row().rule()));
    }
    return list;
  }

  private static JsonOut losses(ZincLosses lost) {
    return new JsonOut()
        .put("ash", lost.ashKg())
        .put("dross", lost.drossKg())
        .put("splash", lost.splashKg())
        .put("ash_by_area", lost.skimmedAshKg());
  }

  private static JsonOut inspection(ZincInspection check) {
    return new JsonOut()
        .put("pieces", check.articles())
        .put("areas_per_piece", check.areasPerArticle())
        .put("pieces_per_group", check.groupedArticles())
        .put("readings_per_area", check.readingsPerArea())
        .put("local_um", check.localUm())
        .put("mean_um", check.meanUm())
        .put("repairable_pct", 100 * ZincInspection.REPAIRABLE_SHARE)
        .put("repairable_spot_cm2", ZincInspection.REPAIRABLE_SPOT_CM2);
  }

  private static JsonOut bath(KettleOptions.Bath b) {
    return new JsonOut()
        .put("zinc_kg", b.bath().massKg())
        .put("level_drop_mm", b.levelMm())
        .put("level_drop_with_losses_mm", b.levelWithLossesMm())
        .put("ingots", b.ingots())
        .put("heat_per_dip_kwh", b.dipHeat().totalKWh())
        .put("drop_per_dip_k", b.bath().dropK(b.dipHeat()))
        .put("dip_share_pct", b.sharePct())
        .put("kg_per_hour", b.kgPerHour())
        .put("covered_until_kg", b.coveredKg().isPresent() ? b.coveredKg().getAsDouble() : null);
  }

  void print(PrintWriter out) {
    Answer answer = new Answer(out);
    for (int i = 0; i < skins.size(); i++) {
      coating(answer, work.walls().get(i), skins.get(i));
    }
    answer.line("area", "%.4g m2 (%.4g ft2)", budget.areaM2(), Answer.ft2(budget.areaM2()));
    answer.line(
        "on work",
        "%.3f kg at least, %.3f kg likely: %.2f %% to %.2f %% of %.1f kg steel",
        budget.minimumKg(),
        budget.likelyKg(),
        budget.minimumPickupPct(),
        budget.likelyPickupPct(),
        budget.steelKg());
    answer.line("to buy", "%s; %s", Answer.kg(budget.toBuyKg()), RANGE);
    ZincLosses lost = budget.losses();
    answer.line(
        "",
        "yield %.2f; inside it, never added: ash %.2f, dross %.2f, splash and jigs %.2f kg",
        budget.yield(),
        lost.ashKg(),
        lost.drossKg(),
        lost.splashKg());
    answer.line(
        "beside",
        "a flat 5.5 %% of the steel mass would say %.2f kg, %.0f %% too %s: a warning only",
        budget.flatPercentKg(),
        Math.abs(budget.flatPercentOffPct()),
        budget.flatPercentOffPct() < 0 ? "little" : "much");
    answer.line("steel", "class %s: %s", steel.steelClass().word(), steel.steelClass().look());
    steel
        .research()
        .ifPresent(
            known ->
                answer.line(
                    "",
                    "class %s of the published eight; %s the ASTM A385 windows",
                    known,
                    steel.insideA385().orElse(false) ? "inside" : "outside"));
    answer.line(
        "kettle",
        "%.1f min in the zinc, %.0f to %.0f min from dip to dip (common practice)",
        DipTimes.immersionMin(work.thickestMm()),
        DipTimes.cycleMin(work.thickestMm()).low(),
        DipTimes.cycleMin(work.thickestMm()).high());
    bath.ifPresent(b -> print(answer, b));
    picklingMin.ifPresent(
        min ->
            answer.line("pickle", "%.0f min, by rust and iron in the acid (common practice)", min));
    inspections.forEach(check -> print(answer, check));
    steel.questions().forEach(q -> answer.say("question", q));
    warnings().forEach(w -> answer.say("warning", w));
    notes().forEach(n -> answer.say("note", n));
    answer.say("working", work.working());
    answer.line(
        "",
        "zinc = area x um x %.3f g/m2 x growth %.1f (%.1f to %.1f) / yield",
        row().gramsPerUm(),
        budget.growth().likely(),
        budget.growth().low(),
        budget.growth().high());
    answer.say(
        "source",
        "minimum: the standard above; steel class: ISO 14713-2 Table 1; growth, yield, times:"
            + " common practice");
    answer.end();
  }

  private void coating(Answer answer, ZincWork.Wall wall, ZincSkin skin) {
    ZincRow row = skin.row();
    answer.line(
        "coating",
        "%s%.0f um mean, %.0f um local (%.2f and %.2f mil); %.0f g/m2 of surface (%.2f oz/ft2)",
        skins.size() > 1 ? String.format(Locale.ROOT, "%.1f mm: ", wall.thicknessMm()) : "",
        row.meanUm(),
        row.localUm(),
        Answer.mil(row.meanUm()),
        Answer.mil(row.localUm()),
        row.coatingGM2(),
        row.coatingGM2() / G_M2_PER_OZ_FT2);
    answer.line(
        "",
        "%s%s; about %.0f um likely on this steel",
        row.rule(),
        row.fromMemory() ? " (from memory)" : "",
        likelyUm(row));
    row.tableMassGM2().ifPresent(g -> answer.line("", "the table prints %.0f g/m2", g));
  }

  private static void print(Answer answer, KettleOptions.Bath b) {
    answer.line(
        "bath",
        "%.1f t zinc; level falls %.1f mm by the work, %.1f mm with ash and dross: %d x %.0f kg"
            + " ingots",
        b.bath().massKg() / 1000,
        b.levelMm(),
        b.levelWithLossesMm(),
        b.ingots(),
        b.ingotKg());
    answer.line(
        "",
        "%s takes %.1f kWh and costs %.1f C with the burners off; %.1f %% of the bath%s",
        b.dips() == 1 ? "the dip" : "each of " + b.dips() + " dips",
        b.dipHeat().totalKWh(),
        b.bath().dropK(b.dipHeat()),
        b.sharePct(),
        b.sharePct() > DipHeat.USUAL_SHARE_OF_BATH_PCT ? ": over the usual 2 %, spread it" : "");
    answer.line(
        "",
        "its long walls give about %.0f kg of work an hour; the maker's figure counts",
        b.kgPerHour());
    b.coveredKg()
        .ifPresent(
            kg ->
                answer.line(
                    "", "%.0f kg of zinc may leave until the deepest part is not covered", kg));
  }

  private static void print(Answer answer, ZincInspection check) {
    answer.line(
        "inspect",
        "%s of the lot (from memory), %s, %d readings in each 10 cm2; no area under %.0f um, mean"
            + " not under %.0f",
        check.articles() == 1 ? "1 piece" : check.articles() + " pieces",
        check.areasPerArticle() == 0
            ? "in groups of " + check.groupedArticles()
            : check.areasPerArticle()
                + (check.areasPerArticle() == 1 ? " area each" : " areas each"),
        check.readingsPerArea(),
        check.localUm(),
        check.meanUm());
    answer.line(
        "",
        "bare spots may be repaired up to %s %% of the surface, each to %s cm2 (from memory); more"
            + " is galvanized again",
        Figures.significant(100 * ZincInspection.REPAIRABLE_SHARE, 2),
        Figures.significant(ZincInspection.REPAIRABLE_SPOT_CM2, 2));
  }
}
