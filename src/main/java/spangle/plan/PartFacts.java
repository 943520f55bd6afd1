package spangle.plan;

import java.util.List;
import java.util.OptionalDouble;
import spangle.measure.Box;
import spangle.part.Material;
import spangle.part.WallArea;

/**
 * What is known of one part of an order once it is measured; sheets and estimates read it.
 *
 * @param jobId the order
 * @param partId the part
 * @param customer who wants it
 * @param description words for the sheet
 * @param revision of the drawing; may be empty
 * @param pieces ordered
 * @param material what it is made of
 * @param thicknessMm thinnest wall that counts
 * @param thickestMm thickest wall, which heats up last
 * @param skins coated surface of one piece by thickness, thinnest first, masked surface taken off;
 *     one where nothing says otherwise
 * @param envelopeMm outside size, folded
 * @param areaM2 coated surface of one piece, masked surface taken off
 * @param massKg of one piece
 * @param working where area and mass come from, in words
 * @param route word of the route
 * @param coatingIds powders or paints in the order of coats
 * @param filmUm film of the last coat; 0 where none
 * @param readyMin when the first pieces are here
 * @param dueMin when the last must be finished
 * @param weight how much lateness counts
 * @param hooks one piece takes
 * @param showFace which face is seen, in words
 * @param masking plugs and tape in words
 * @param spun whether it is centrifuged
 * @param welded whether it is welded together
 * @param hollow whether it has hollow members
 * @param siPct silicon of the steel, per cent; empty without certificate
 * @param pPct phosphorus
 * @param alPct aluminium in the steel
 */
public record PartFacts(
    String jobId,
    String partId,
    String customer,
    String description,
    String revision,
    int pieces,
    Material material,
    double thicknessMm,
    double thickestMm,
    List<WallArea> skins,
    Box envelopeMm,
    double areaM2,
    double massKg,
    String working,
    String route,
    List<String> coatingIds,
    double filmUm,
    int readyMin,
    int dueMin,
    int weight,
    int hooks,
    String showFace,
    List<String> masking,
    boolean spun,
    boolean welded,
    boolean hollow,
    OptionalDouble siPct,
    OptionalDouble pPct,
    OptionalDouble alPct) {
  /** Copies the lists. */
  public PartFacts {
    skins = List.copyOf(skins);
    coatingIds = List.copyOf(coatingIds);
    masking = List.copyOf(masking);
  }
}
