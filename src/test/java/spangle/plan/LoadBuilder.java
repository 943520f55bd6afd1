package spangle.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import spangle.fit.hang.HangPattern;
import spangle.fit.hang.HangPattern.HungPiece;
import spangle.plan.PlannedLoad.PlannedVisit;

/** Builds one load for a test. */
public final class LoadBuilder {
  private final String id;
  private String carrierId;
  private final List<String> lotIds;
  private int number = 1;
  private final List<PlannedVisit> visits = new ArrayList<>();
  private final List<HungPiece> pieces = new ArrayList<>();

  LoadBuilder(String id, String carrierId, String... lotIds) {
    this.id = id;
    this.carrierId = carrierId;
    this.lotIds = List.of(lotIds);
  }

  /** Which one of the carriers owned. */
  public LoadBuilder number(int carrierNumber) {
    number = carrierNumber;
    return this;
  }

  /** Another kind of carrier. */
  public LoadBuilder carrier(String otherId) {
    carrierId = otherId;
    return this;
  }

  /** A visit at place 1 without set-up. */
  public LoadBuilder visit(String stationId, int startMin, int endMin) {
    return visit(stationId, 1, startMin, startMin, endMin);
  }

  /** Any visit. */
  public LoadBuilder visit(
      String stationId, int place, int setupStartMin, int startMin, int endMin) {
    visits.add(new PlannedVisit(stationId, place, setupStartMin, startMin, endMin));
    return this;
  }

  /** A row of 200 x 300 mm pieces, 50 mm apart, at that height. */
  public LoadBuilder row(String key, int count, double yMm) {
    pieces.addAll(PlanFixtures.rowOf(key, count, yMm, 200, 300));
    return this;
  }

  /** One piece. */
  public LoadBuilder piece(HungPiece piece) {
    pieces.add(piece);
    return this;
  }

  /** No pattern, as for baskets. */
  public LoadBuilder noPattern() {
    pieces.clear();
    return this;
  }

  /** The load; without pieces it has no pattern. */
  public PlannedLoad build() {
    return new PlannedLoad(
        id,
        carrierId,
        number,
        lotIds,
        visits,
        pieces.isEmpty() ? Optional.empty() : Optional.of(new HangPattern(pieces)));
  }
}
