package spangle.intake.read;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import spangle.intake.problem.Problem;

/** Writes week folders for tests: a sound one, then whatever a test wants to be different. */
public final class WeekFiles {
  public static final String SHOP =
      """
      name: Harbour workshop
      week_start: 2026-11-02
      shifts:
        - {days: [mon, tue, wed, thu, fri], from: 06:00, to: 14:30, breaks: [09:00-09:15, 12:00-12:30]}
        - {days: [mon, tue], from: 14:30, to: 20:00, lines: [powder]}
      extra_days:
        - {date: 2026-11-07, from: 06:00, to: 12:00, lines: [zinc], why: Saturday dips}
      closed_days:
        - {date: 2026-11-05, why: town holiday}
      maintenance:
        - {station: kettle, day: fri, from: 12:30, to: 14:30, why: top-up}
      lines:
        - id: powder
          name: Powder line
          kind: powder
          settings_c: [180, 190, 200, 230]
          stations:
            - {id: hang-p, profile: hanging-place, count: 2}
            - {id: wash, profile: spray-washer}
            - {id: dry-off, profile: dry-off-oven}
            - {id: booth, profile: powder-booth, starts_with: P-GREY}
            - {id: oven-1, profile: box-oven-large, starts_at_c: 200}
            - {id: oven-2, profile: box-oven-small, starts_at_c: 190}
            - {id: cool, profile: cooling-bay, count: 4}
            - {id: unhang-p, profile: unhanging-place}
          carriers:
            - {id: flat-rack, profile: flat-rack, owned: 6, in_strip: 1}
            - {id: deep-cart, profile: deep-cart, owned: 3}
        - id: liquid
          name: Liquid booth
          kind: liquid
          settings_c: [60, 70]
          stations:
            - {id: hang-l, profile: hanging-place}
            - {id: booth-l, profile: liquid-booth}
            - {id: flash-off, profile: flash-off-bay}
            - {id: drying-room, profile: liquid-oven, starts_at_c: 60}
          carriers:
            - {id: tall-cart, profile: tall-cart, owned: 2}
        - id: zinc
          name: Kettle line
          kind: zinc
          crane: hall-crane
          stations:
            - {id: hang-z, profile: jigging-place, count: 2}
            - {id: degrease, profile: degrease-tank, count: 2}
            - {id: rinse-1, profile: rinse-tank}
            - {id: pickle, profile: pickle-tank, count: 5}
            - {id: rinse-2, profile: rinse-tank}
            - {id: flux, profile: flux-tank}
            - {id: dryer, profile: flux-dryer}
            - {id: kettle, profile: kettle-medium}
            - {id: cool-z, profile: air-cooling, count: 2}
          carriers:
            - {id: beam, profile: dip-beam, owned: 6}
            - {id: basket, profile: spin-basket, owned: 4}
      colour_change:
        minutes:
          light: {light: 10, dark: 12}
          dark: {light: 25, dark: 10}
        other_chemistry_min: 45
        overrides:
          - {from: P-BLACK, to: P-GREY, minutes: 40, why: specks last spring}
      """;

  public static final String COATINGS =
      """
      powders:
        - id: P-GREY
          name: light grey, gloss
          colour: light grey
          swatch: "#C5C7C4"
          family: light
          chemistry: polyester
          sg: 1.5
          film_um: {min: 60, aim: 80, max: 120}
          colour_loss_kg: 0.8
          cure: {basis: metal, points: "10@200 15@190", max_min: 20}
          pack_kg: 20
          lead_days: 4
          price_kg: 6.5
          stock: [{lot: A-117, kg: 42.5, made: 2026-05-04}]
          on_order: [{kg: 20, arrives: wed 10:00, lot: A-131}]
        - id: P-BLACK
          colour: black
          swatch: "#101010"
          family: dark
          chemistry: polyester
          sg: 1.3
          film_um: {min: 60, aim: 80, max: 120}
          cure: {basis: metal, points: "10@200", max_min: 20}
          stock: [{lot: B-2, kg: 12, made: 2026-06-01}]
      paints:
        - id: L-EPOXY
          colour: grey
          family: dark
          chemistry: epoxy
          solids_pct: 60
          mix: "4:1"
          film_um: {min: 60, aim: 80, max: 160}
          pot_life_min: 120
          recoat_min: {min: 480, max: 10080}
          cure: {basis: metal, points: "30@60", max_min: 240}
          stock: [{lot: C-1, l: 20, made: 2026-07-01}]
      zinc:
        ingot_kg: 25
        stock: [{lot: Z-1, kg: 850}]
      """;

  public static final String HEADING =
      "job,customer,part,qty,material,thickness_mm,shape,area_m2,mass_kg,route,finish,ready,due,"
          + "welded,hollow,certificate,si_pct,p_pct,note\n";

  public static final String ROW =
      "J-1,Pilot House,LB-20,400,steel,3,plate 160x120 mm,,,powder,P-GREY,mon 07:00,wed,no,no,,,,\n";

  private final Path folder;

  private WeekFiles(Path folder) {
    this.folder = folder;
  }

  /** A folder with nothing in it. */
  public static WeekFiles empty(Path folder) {
    return new WeekFiles(folder);
  }

  /** A sound week of one row. */
  public static WeekFiles sound(Path folder) {
    return new WeekFiles(folder)
        .put("shop.yaml", SHOP)
        .put("coatings.yaml", COATINGS)
        .put("jobs/a.csv", HEADING + ROW);
  }

  /** A sound week whose job file holds these lines below the usual headings. */
  public static WeekFiles rows(Path folder, String... rows) {
    return sound(folder).put("jobs/a.csv", HEADING + String.join("\n", rows) + "\n");
  }

  public WeekFiles put(String file, String text) {
    return put(file, text.getBytes(StandardCharsets.UTF_8));
  }

  public WeekFiles put(String file, byte[] bytes) {
    try {
      Path path = folder.resolve(file);
      Files.createDirectories(path.getParent());
      // Some file systems wait for the disk when a file is written over, not when it is new.
      Files.deleteIfExists(path);
      Files.write(path, bytes);
      return this;
    } catch (IOException failed) {
      throw new UncheckedIOException(failed);
    }
  }

  public Path folder() {
    return folder;
  }

  public WeekReader.Reading read() {
    return WeekReader.read(folder);
  }

  public List<Problem> problems() {
    return read().problems();
  }

  /** Problems in short: code, place, field, value. */
  public List<String> inShort() {
    return problems().stream()
        .map(p -> p.code().key() + " " + p.place().words() + " " + p.field() + "=" + p.value())
        .toList();
  }
}
