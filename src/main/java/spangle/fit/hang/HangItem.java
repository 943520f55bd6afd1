package spangle.fit.hang;

/**
 * Pieces of one kind as they hang, show face out.
 *
 * @param key tells kinds apart, usually the lot's id
 * @param pieces how many
 * @param acrossMm width of the face seen on the carrier
 * @param dropMm height of the face seen on the carrier, without the hook
 * @param depthMm off the face
 * @param massKg of one piece
 * @param hooksPerPiece hooks one piece takes
 * @param mayTurn whether a quarter turn is allowed
 */
public record HangItem(
    String key,
    int pieces,
    double acrossMm,
    double dropMm,
    double depthMm,
    double massKg,
    int hooksPerPiece,
    boolean mayTurn) {}
