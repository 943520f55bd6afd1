package spangle.intake.read;

import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * The words people put above the columns of an order list. A word that could mean two columns is
 * not here: it is asked about. Some words are weak: where a better one stands beside them, they
 * give way.
 */
final class ColumnWords {
  private static final List<String> NUMBERS =
      List.of("", " no", " nr", " num", " number", " ref", " reference", " id", " code");

  private static final Map<String, String> WORDS = new LinkedHashMap<>();
  private static final Set<String> WEAK = new LinkedHashSet<>();

  private ColumnWords() {}

  /** Words in small letters, blanks between them, to the program's names. */
  static Map<String, String> all() {
    return Map.copyOf(WORDS);
  }

  /** Whether a heading gives way to another of the same column. */
  static boolean weak(String plain) {
    return WEAK.contains(plain);
  }

  private static void add(String name, String... words) {
    for (String word : words) {
      WORDS.putIfAbsent(word, name);
    }
  }

  private static void numbered(String name, String... bases) {
    for (String base : bases) {
      for (String number : NUMBERS) {
        WORDS.putIfAbsent(base + number, name);
      }
    }
  }

  private static void weak(String name, String... words) {
    add(name, words);
    WEAK.addAll(List.of(words));
  }

  private static void weakly(String name, String... bases) {
    Set<String> before = Set.copyOf(WORDS.keySet());
    numbered(name, bases);
    WORDS.keySet().stream().filter(word -> !before.contains(word)).forEach(WEAK::add);
  }

  static {
    numbered(
        "job", "job", "work order", "works order", "shop order", "production order", "wo", "w o");
    numbered("job", "job card", "order", "sales order", "so", "auftrag", "auftrags", "bestellung");
    add("job", "auftragsnr", "traveller", "traveler", "ticket");
    weakly("job", "po", "purchase order", "customer order", "customer po");
    numbered("part", "part", "component", "article", "product", "teil", "artikel");
    add("part", "teilenr", "artikelnr", "piece mark", "sku", "p n", "pn");
    weakly("part", "item", "pos", "position", "mark", "drawing no", "drawing number", "dwg no");
    add("customer", "client", "kunde", "for", "ordered by", "cust", "customer name");
    add("customer", "client name", "account", "sold to", "buyer");
    add("description", "desc", "part description", "item description", "part desc", "item desc");
    add("description", "part name", "item name", "name", "title", "bezeichnung", "benennung");
    add("revision", "rev", "index", "version", "rev no", "revision no", "issue", "dwg rev");
    add("revision", "drawing rev", "rev level");
    quantities();
    add("material", "mat", "metal", "matl", "mtl", "material type", "mat type", "metal type");
    add("material", "base material", "substrate", "alloy", "werkstoff");
    add("grade", "steel grade", "material grade", "güte", "guete");
    add("thickness", "thk", "thick", "t", "sheet", "wall", "wall thickness", "sheet thickness");
    add("thickness", "plate thickness", "material thickness", "mat thk", "matl thk", "sheet thk");
    add("thickness", "dicke", "stärke", "blechdicke");
    add("thickest", "max thickness", "thickness max", "max thk");
    add("skins", "skin", "area by thickness", "surface by thickness");
    add("gauge", "ga", "gage", "gauge no", "sheet gauge", "material gauge");
    add("shape", "form", "geometry", "size", "dimensions", "dims", "abmessung", "abmessungen");
    add("length", "l", "len", "overall length", "long", "oal", "länge", "laenge");
    add("width", "w", "b", "wide", "wid", "overall width", "breite");
    add("height", "h", "ht", "hgt", "depth", "deep", "overall height", "höhe", "hoehe");
    areasAndMasses();
    add("drawing_unit", "dxf unit", "unit of drawing", "zeichnungseinheit");
    add("drawing", "dxf", "file", "drawing file", "dxf file", "file name", "cad file", "zeichnung");
    add("route", "process", "treatment", "surface treatment", "finish type", "coating type");
    add("route", "finish process", "coating process", "finishing", "verfahren");
    finishes();
    dates();
    add("priority", "prio", "pri", "urgency");
    add("welded", "weld", "geschweißt", "geschweisst");
    add("hollow", "hollows", "hollow sections", "hohl");
    add("overlaps", "overlap", "doublers");
    add("pockets", "blind pockets", "returns");
    add("soldered", "brazed", "solder", "gelötet", "geloetet");
    add("certificate", "cert", "mill certificate", "mill cert", "cert no", "zeugnis");
    add("si_pct", "si", "si %", "silicon");
    add("p_pct", "p", "p %", "phosphorus");
    add("al_pct", "al", "al %");
    add("reject_allowance_pct", "reject allowance", "reject allowance %", "rejects allowed %");
    add("heat_sensitive", "heat sensitive parts", "rubber", "plastic");
    add("hooks", "hooks per piece", "hooks each", "hang points", "hanging points", "haken");
    add("show_face", "show side", "visible face", "sichtseite");
    add("masking", "masks", "mask", "plugs", "mask off");
    add("spin", "centrifuge", "schleudern");
    add("carriers", "carrier", "rack");
    add("note", "notes", "remark", "remarks", "comment", "comments", "bemerkung");
    add("note", "instructions", "special instructions", "info");
  }

  private static void quantities() {
    add("qty", "quantity", "qnty", "quant", "pcs", "pieces", "nos");
    weak("qty", "count", "units", "ordered", "total qty", "total pcs", "job qty", "lot qty");
    add("qty", "no off", "number off", "no of pieces", "number of pieces", "no of pcs", "no pcs");
    add("qty", "qty ordered", "order qty", "ordered qty", "order quantity");
    add("qty", "qty reqd", "qty req", "qty required", "reqd qty", "req qty", "required qty");
    add("qty", "batch qty", "qty pcs", "menge", "anzahl");
    add("qty", "stück", "stueck", "stk");
  }

  private static void areasAndMasses() {
    add("area", "surface", "surface area", "area each", "area ea", "area per piece", "unit area");
    add("area", "area per part", "area per pc", "surface area each", "paint area", "coated area");
    add("area", "fläche", "flaeche", "oberfläche");
    add("mass", "weight", "wt", "weight each", "weight ea", "wt each", "wt ea", "unit weight");
    add("mass", "unit wt", "mass each", "weight per piece", "weight per part", "weight per pc");
    add("mass", "piece weight", "part weight", "gewicht", "masse");
  }

  private static void finishes() {
    add("finish", "colour", "color", "coating", "powder", "paint", "farbe", "ral", "ral no");
    add("finish", "colour code", "color code", "colour name", "color name", "powder colour");
    add("finish", "powder color", "powder code", "paint colour", "paint color", "paint code");
    add("finish", "finish colour", "finish color", "finish code", "top coat", "topcoat");
    add("film", "dft", "film thickness", "coating thickness", "film build", "schichtdicke");
  }

  private static void dates() {
    add("ready", "ready date", "available", "arrives", "start", "bereit", "date in", "in date");
    add("ready", "arrival", "arrival date", "ready by", "available from", "material ready");
    add("due", "due date", "due dt", "date due", "due by", "deadline", "need by", "needed");
    add("due", "need date", "needed by", "need by date", "required by", "reqd by");
    add("due", "required date", "reqd date", "req date", "date required", "date reqd");
    add("due", "wanted by", "want date", "delivery date", "del date");
    add("due", "deliver by", "ship date", "ship by", "dispatch date");
    add("due", "despatch date", "promise date", "promised", "date promised");
    add("due", "complete by", "completion date", "target date", "date out", "out date");
    add("due", "termin", "liefertermin", "fertig bis");
  }
}
