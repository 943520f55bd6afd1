package spangle.part.flat;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Joins loose curves end to end into closed contours and open chains. */
final class Chains {
  private static final int MOST_ENDS_PAIRED = 1_500;

  /** A loose curve between two joints. */
  static final class Edge {
    final Curve curve;
    final String label;
    final int from;
    final int to;
    boolean used;

    Edge(Curve curve, String label, int from, int to) {
      this.curve = curve;
      this.label = label;
      this.from = from;
      this.to = to;
    }

    int other(int joint) {
      return joint == from ? to : from;
    }
  }

  /** Curves one after the other with two free ends. */
  record Chain(List<Curve> curves, String label) {
    Point start() {
      return curves.get(0).start();
    }

    Point end() {
      return curves.get(curves.size() - 1).end();
    }

    double lengthMm() {
      return curves.stream().mapToDouble(Curve::lengthMm).sum();
    }

    double gapMm() {
      return start().distance(end());
    }

    Chain reversed() {
      List<Curve> back = new ArrayList<>(curves.size());
      for (int i = curves.size() - 1; i >= 0; i--) {
        back.add(curves.get(i).reversed());
      }
      return new Chain(back, label);
    }

    Chain then(Chain next) {
      List<Curve> both = new ArrayList<>(curves);
      both.addAll(next.curves);
      return new Chain(both, label);
    }
  }

  final List<Contour> contours = new ArrayList<>();
  final List<Defect> defects = new ArrayList<>();
  private List<Chain> open = new ArrayList<>();

  List<Chain> open() {
    return open;
  }

  /** Walks from joint to joint; joints where more than two lines meet must be gone before. */
  void walk(List<Edge> edges) {
    Map<Integer, Deque<Edge>> at = new HashMap<>();
    for (Edge edge : edges) {
      at.computeIfAbsent(edge.from, k -> new ArrayDeque<>()).add(edge);
      at.computeIfAbsent(edge.to, k -> new ArrayDeque<>()).add(edge);
    }
    for (Edge edge : edges) {
      if (!edge.used) {
        edge.used = true;
        chain(edge, at);
      }
    }
  }

  private void chain(Edge seed, Map<Integer, Deque<Edge>> at) {
    Deque<Curve> curves = new ArrayDeque<>();
    curves.add(seed.curve);
    int end = extend(seed.to, seed.from, at, curves, true);
    if (end == seed.from) {
      contours.add(new Contour(List.copyOf(curves), seed.label));
      return;
    }
    extend(seed.from, end, at, curves, false);
    open.add(new Chain(List.copyOf(curves), seed.label));
  }

  /** Goes on from a joint as long as there is an unused line; stops at the goal. */
  private static int extend(
      int joint, int goal, Map<Integer, Deque<Edge>> at, Deque<Curve> curves, boolean forward) {
    int here = joint;
    while (here != goal) {
      Edge next = unused(at.getOrDefault(here, new ArrayDeque<>()));
      if (next == null) {
        return here;
      }
      next.used = true;
      boolean along = next.from == here;
      if (forward) {
        curves.addLast(along ? next.curve : next.curve.reversed());
      } else {
        curves.addFirst(along ? next.curve.reversed() : next.curve);
      }
      here = next.other(here);
    }
    return here;
  }

  private static @Nullable Edge unused(Deque<Edge> edges) {
    while (!edges.isEmpty() && edges.peek().used) {
      edges.poll();
    }
    return edges.peek();
  }

  private record Pair(int a, int b, double gap) {}

  /**
   * Joins free ends that lie so near that nobody meant a gap, nearest first, and says so. End 2k is
   * the start of chain k, 2k + 1 its end.
   */
  void closeGaps(double gapMm) {
    int ends = 2 * open.size();
    if (ends == 0 || ends > MOST_ENDS_PAIRED) {
      return;
    }
    List<Pair> pairs = new ArrayList<>();
    for (int a = 0; a < ends; a++) {
      for (int b = a + 1; b < ends; b++) {
        double gap = end(a).distance(end(b));
        boolean lone = a / 2 == b / 2 && open.get(a / 2).lengthMm() <= 4 * gap;
        if (gap <= gapMm && !lone) {
          pairs.add(new Pair(a, b, gap));
        }
      }
    }
    pairs.sort(Comparator.comparingDouble(Pair::gap));
    int[] partner = new int[ends];
    Arrays.fill(partner, -1);
    for (Pair pair : pairs) {
      if (partner[pair.a] < 0 && partner[pair.b] < 0) {
        partner[pair.a] = pair.b;
        partner[pair.b] = pair.a;
        Point middle = end(pair.a).middle(end(pair.b));
        defects.add(new Defect(Defect.Kind.GAP, middle, pair.gap, open.get(pair.a / 2).label));
      }
    }
    if (!pairs.isEmpty()) {
      relink(partner);
    }
  }

  private Point end(int number) {
    Chain chain = open.get(number / 2);
    return number % 2 == 0 ? chain.start() : chain.end();
  }

  private void relink(int[] partner) {
    List<Chain> before = open;
    open = new ArrayList<>();
    boolean[] done = new boolean[before.size()];
    for (int pass = 0; pass < 2; pass++) {
      for (int k = 0; k < before.size(); k++) {
        boolean free = partner[2 * k] < 0 || partner[2 * k + 1] < 0;
        if (!done[k] && (free || pass == 1)) {
          link(before, partner, done, k);
        }
      }
    }
  }

  private void link(List<Chain> chains, int[] partner, boolean[] done, int first) {
    boolean back = partner[2 * first + 1] < 0 && partner[2 * first] >= 0;
    Chain whole = back ? chains.get(first).reversed() : chains.get(first);
    done[first] = true;
    int leave = back ? 2 * first : 2 * first + 1;
    while (partner[leave] >= 0) {
      int enter = partner[leave];
      int next = enter / 2;
      if (done[next]) {
        contours.add(new Contour(whole.curves, whole.label));
        return;
      }
      done[next] = true;
      Chain chain = chains.get(next);
      whole = whole.then(enter % 2 == 0 ? chain : chain.reversed());
      leave = enter % 2 == 0 ? enter + 1 : enter - 1;
    }
    open.add(whole);
  }
}
