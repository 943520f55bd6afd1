package spangle.estimate;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * Who gets what of an item, and from which lot. What stays in hoses goes first, because nothing is
 * sprayed without it; then kits, because a kit is as late as its latest part; then the rest; within
 * each by due time. The lot that is past its shelf life first is opened first. The visible parts of
 * a kit that asks for it come from one lot, because makers' lots differ in shade.
 */
public final class LotSharing {
  private static final double NOTHING = 0.001;

  private LotSharing() {}

  /**
   * One claim served.
   *
   * @param jobId the order
   * @param kitId kit that waits for it; empty where none does
   * @param amount likely need
   * @param draws lots it is served from
   * @param missing what is not there, at least 0
   * @param needsOneLot whether one lot was asked for
   */
  public record Share(
      String jobId,
      String kitId,
      double amount,
      List<Draw> draws,
      double missing,
      boolean needsOneLot) {
    /** Copies the list. */
    public Share {
      draws = List.copyOf(draws);
    }

    /** Whether one lot was asked for and more than one is needed. */
    public boolean oneLotBroken() {
      return needsOneLot && (draws.size() > 1 || (missing > 0 && !draws.isEmpty()));
    }
  }

  /** So much of one lot; the name of a delivery may be empty. */
  public record Draw(String lot, double amount) {}

  private static final class Lot {
    final String name;
    final int fromMin;
    double left;
    double kept;

    Lot(String name, int fromMin, double left) {
      this.name = name;
      this.fromMin = fromMin;
      this.left = left;
    }
  }

  private record Claimed(Use first, List<Use> uses) {
    double amount() {
      return uses.stream().mapToDouble(u -> u.amount().likely()).sum();
    }
  }

  /** Serves all draws of an item. */
  public static List<Share> of(StoreItem item, List<Use> uses) {
    List<Lot> lots = new ArrayList<>();
    item.lots().forEach(l -> lots.add(new Lot(l.lot(), 0, l.amount())));
    item.deliveries().forEach(d -> lots.add(new Lot(d.lot(), d.atMin(), d.amount())));
    List<Claimed> claims = claims(uses);
    Map<String, Lot> ofKit = new LinkedHashMap<>();
    for (Claimed claim : claims) {
      if (claim.first().claim().oneLot()) {
        String kit = claim.first().claim().kitId();
        if (!ofKit.containsKey(kit)) {
          keepLot(claims, kit, lots).ifPresent(lot -> ofKit.put(kit, lot));
        }
      }
    }
    List<Share> shares = new ArrayList<>();
    for (Claimed claim : claims) {
      shares.add(serve(claim, ofKit.get(claim.first().claim().kitId()), lots));
    }
    return shares;
  }

  /**
   * The lot the plan keeps for a kit, else the first that holds all it needs, there in time if
   * there is one such.
   */
  private static Optional<Lot> keepLot(List<Claimed> claims, String kit, List<Lot> lots) {
    List<Claimed> own = claims.stream().filter(c -> c.first().claim().kitId().equals(kit)).toList();
    double amount = own.stream().mapToDouble(Claimed::amount).sum();
    int from = own.stream().mapToInt(c -> c.first().atMin()).min().orElse(0);
    Set<String> planned =
        own.stream()
            .flatMap(c -> c.uses().stream())
            .map(u -> u.claim().lot())
            .filter(name -> !name.isEmpty())
            .collect(Collectors.toSet());
    Optional<Lot> found =
        lots.stream()
            .filter(l -> l.left - l.kept >= amount - NOTHING)
            .min(
                Comparator.comparing((Lot l) -> !planned.contains(l.name))
                    .thenComparing(l -> l.fromMin > from));
    found.ifPresent(lot -> lot.kept += amount);
    return found;
  }

  private static List<Claimed> claims(List<Use> uses) {
    Map<String, List<Use>> byJob = new LinkedHashMap<>();
    for (Use use : uses) {
      byJob
          .computeIfAbsent(use.jobId() + "\n" + use.claim().kitId(), job -> new ArrayList<>())
          .add(use);
    }
    List<Claimed> claims = new ArrayList<>();
    for (List<Use> own : byJob.values()) {
      own.sort(Comparator.comparingInt(Use::atMin));
      claims.add(new Claimed(own.get(0), own));
    }
    claims.sort(
        Comparator.comparing((Claimed c) -> !c.first().jobId().equals(Use.COLOUR_LOSS))
            .thenComparing(c -> !c.first().claim().forKit())
            .thenComparingInt(c -> c.first().claim().dueMin())
            .thenComparing(c -> c.first().jobId())
            .thenComparing(c -> c.first().claim().kitId()));
    return claims;
  }

  private static Share serve(Claimed claim, @Nullable Lot own, List<Lot> lots) {
    Map<String, Double> drawn = new LinkedHashMap<>();
    double missing = 0;
    for (Use use : claim.uses()) {
      double want = use.amount().likely();
      for (Lot lot : own == null ? lots : List.of(own)) {
        double taken = Math.min(want, own == null ? free(lot, use.atMin()) : lot.left);
        if (taken > 0) {
          lot.left -= taken;
          lot.kept -= own == null ? 0 : taken;
          want -= taken;
          drawn.merge(lot.name, taken, Double::sum);
        }
      }
      missing += want < NOTHING ? 0 : want;
    }
    return new Share(
        claim.first().jobId(),
        claim.first().claim().kitId(),
        claim.amount(),
        drawn.entrySet().stream().map(e -> new Draw(e.getKey(), e.getValue())).toList(),
        missing,
        claim.first().claim().oneLot());
  }

  private static double free(Lot lot, int atMin) {
    return lot.fromMin <= atMin ? Math.max(0, lot.left - lot.kept) : 0;
  }
}
