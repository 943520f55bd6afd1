package spangle.intake.copy;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import spangle.intake.week.Body;
import spangle.intake.week.Handling;
import spangle.intake.week.Heat;
import spangle.intake.week.Job;
import spangle.intake.week.Metal;
import spangle.intake.week.PartLine;
import spangle.intake.week.Shop;
import spangle.intake.week.Signature;
import spangle.intake.week.Told;
import spangle.intake.week.Wanted;
import spangle.measure.Box;

/** One accepted part as the cells of one row, each under the program's own heading. */
final class CleanRow {
  /** Headings in the order of the table. */
  static final List<String> HEADINGS =
      List.of(
          "job",
          "customer",
          "part",
          "description",
          "revision",
          "qty",
          "material",
          "grade",
          "thickness_mm",
          "thickest_mm",
          "skins",
          "shape",
          "length_mm",
          "width_mm",
          "height_mm",
          "area_m2",
          "mass_kg",
          "masked_area_m2",
          "drawing",
          "drawing_unit",
          "route",
          "finish",
          "film_um",
          "ready",
          "arrivals",
          "due",
          "priority",
          "reject_allowance_pct",
          "welded",
          "hollow",
          "overlaps",
          "vents_checked",
          "pockets",
          "soldered",
          "certificate",
          "si_pct",
          "p_pct",
          "al_pct",
          "strength_mpa",
          "bend_radius_mm",
          "heat_sensitive",
          "heat_limit_c",
          "moving_parts",
          "hooks",
          "show_face",
          "masking",
          "spin",
          "carriers",
          "may_turn",
          "note");

  private final LocalDate weekStart;
  private final Map<String, String> cells = new LinkedHashMap<>();

  private CleanRow(LocalDate weekStart) {
    this.weekStart = weekStart;
  }

  /** The cells by heading; every heading is there. */
  static Map<String, String> of(Job job, PartLine part, LocalDate weekStart) {
    CleanRow row = new CleanRow(weekStart);
    HEADINGS.forEach(heading -> row.cells.put(heading, ""));
    row.put("job", job.id());
    row.put("customer", job.customer());
    row.put("part", part.id());
    row.put("description", part.description());
    row.put("revision", part.revision());
    row.put("qty", Integer.toString(part.qty()));
    row.metal(part.metal());
    row.body(part.body());
    row.wanted(part.wanted(), part.qty());
    row.put("welded", word(part.hollows().welded()));
    row.put("hollow", HollowWords.members(part.hollows()));
    row.put("overlaps", HollowWords.overlaps(part.hollows()));
    row.put("vents_checked", signatures(part.hollows().ventsChecked()));
    row.put("pockets", word(part.hollows().pockets()));
    row.put("soldered", word(part.hollows().soldered()));
    row.heat(part.heat());
    row.handling(part.handling());
    row.put("note", part.note());
    return row.cells;
  }

  private void put(String heading, String text) {
    cells.put(heading, Plain.line(text));
  }

  private void put(String heading, OptionalDouble number) {
    put(heading, number.isPresent() ? Plain.number(number.getAsDouble()) : "");
  }

  private void metal(Metal metal) {
    put("material", metal.materialWord());
    put("grade", metal.grade());
    put("thickness_mm", Plain.number(metal.thicknessMm()));
    boolean mixed = metal.thickestMm() != metal.thicknessMm();
    put("thickest_mm", mixed ? Plain.number(metal.thickestMm()) : "");
    put(
        "skins",
        metal.skins().stream()
            .map(s -> Plain.number(s.thicknessMm()) + "mm:" + Plain.number(s.areaM2()) + "m2")
            .collect(Collectors.joining("; ")));
    put("certificate", metal.certificate());
    put("si_pct", metal.siPct());
    put("p_pct", metal.pPct());
    put("al_pct", metal.alPct());
    put("strength_mpa", metal.strengthMpa());
    put("bend_radius_mm", metal.bendRadiusMm());
  }

  private void body(Body body) {
    put("shape", body.shape().map(ShapeText::of).orElse(""));
    body.sizeMm().ifPresent(this::size);
    put("area_m2", body.areaM2());
    put("mass_kg", body.massKg());
    put("masked_area_m2", body.maskedAreaM2() > 0 ? Plain.number(body.maskedAreaM2()) : "");
    // The drawing lies beside the job file in the copy too, so its plain name leads to it.
    put("drawing_unit", body.drawingUnit());
    put("drawing", body.drawing().substring(body.drawing().lastIndexOf('/') + 1));
  }

  private void size(Box box) {
    put("length_mm", Plain.number(box.lengthMm()));
    put("width_mm", Plain.number(box.widthMm()));
    put("height_mm", Plain.number(box.heightMm()));
  }

  private void wanted(Wanted wanted, int qty) {
    put("route", wanted.route().word());
    put("finish", String.join(" + ", wanted.finishes()));
    put("film_um", wanted.filmUm());
    List<Wanted.Arrival> arrivals = wanted.arrivals();
    boolean together = arrivals.size() == 1 && arrivals.get(0).pieces() == qty;
    put("ready", together ? time(arrivals.get(0).atMin()) : "");
    put("arrivals", together ? "" : arrivals(arrivals));
    put("due", due(wanted.dueMin()));
    put("priority", Integer.toString(wanted.weight()));
    put("reject_allowance_pct", wanted.rejectAllowancePct());
  }

  private String arrivals(List<Wanted.Arrival> arrivals) {
    return arrivals.stream()
        .map(a -> a.pieces() + "@" + time(a.atMin()))
        .collect(Collectors.joining("; "));
  }

  private String time(int minute) {
    int ofDay = Math.floorMod(minute, Shop.DAY_MIN);
    return day(Math.floorDiv(minute, Shop.DAY_MIN)) + clock(ofDay);
  }

  /** Due at midnight is the end of the day before, as people say it. */
  private String due(int minute) {
    return Math.floorMod(minute, Shop.DAY_MIN) == 0
        ? day(Math.floorDiv(minute, Shop.DAY_MIN) - 1) + " 24:00"
        : time(minute);
  }

  private String day(int days) {
    return weekStart.plusDays(days).toString();
  }

  private static String clock(int ofDay) {
    return String.format(Locale.ROOT, " %02d:%02d", ofDay / 60, ofDay % 60);
  }

  private void heat(Heat heat) {
    put("heat_sensitive", heat.what().isEmpty() ? word(heat.sensitive()) : heat.what());
    put("heat_limit_c", heat.limitC());
  }

  private void handling(Handling handling) {
    put("moving_parts", word(handling.movingParts()));
    put("hooks", handling.hooks().isPresent() ? "" + handling.hooks().getAsInt() : "");
    put("show_face", handling.showFace());
    put("masking", String.join("; ", handling.masking()));
    put("spin", word(handling.spin()));
    put("carriers", String.join("; ", handling.carriers()));
    put("may_turn", word(handling.mayTurn()));
  }

  static String word(Told told) {
    return switch (told) {
      case YES -> "yes";
      case NO -> "no";
      case NOTHING -> "";
    };
  }

  private static String signatures(List<Signature> signatures) {
    List<String> words = new ArrayList<>();
    for (Signature signature : signatures) {
      words.add((signature.by() + " " + signature.at()).strip());
    }
    return String.join("; ", words);
  }
}
