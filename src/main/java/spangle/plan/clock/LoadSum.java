package spangle.plan.clock;

import java.util.Arrays;
import java.util.Comparator;
import java.util.Optional;
import java.util.stream.IntStream;
import spangle.plan.PlannedLoad;

/** Adds lots up to a load. */
final class LoadSum {
  final CarrierFacts carrier;
  final int[] lots;
  final int finish;
  final int finishIndex;
  final int group;
  final double massKg;
  final int ready;
  final long machines;
  final int[] dwellMin;
  final int[] dwellMax;
  final int weight;
  final boolean alone;
  final boolean chained;
  final int[] minutes;
  final int travel;
  final int supply;
  final double supplyKg;
  final int[] dues;
  final int[] dueWeights;
  final Announced.Word announced;
  final Optional<PlannedLoad> frozen;

  LoadSum(Floor floor, CarrierFacts carrier, int[] lotIndices, Optional<PlannedLoad> frozen) {
    this.carrier = carrier;
    this.lots = lotIndices.clone();
    Arrays.sort(lots);
    this.frozen = frozen;
    LotFacts first = floor.lots[lots[0]];
    LineFacts line = floor.lines[first.line];
    finish = first.finish;
    finishIndex = first.lot.finish().index();
    group = first.group;
    supply = first.supply;
    double mass = 0;
    double drawn = 0;
    int readyMin = 0;
    long takes = -1L;
    int weightSum = 0;
    boolean anyAlone = false;
    boolean anyChained = false;
    for (int index : lots) {
      LotFacts lot = floor.lots[index];
      mass += lot.lot.massKg();
      drawn += lot.lot.materialKg();
      readyMin = Math.max(readyMin, lot.lot.readyMin());
      takes &= lot.machines;
      weightSum += lot.lot.weight();
      anyAlone |= lot.lot.alone();
      anyChained |= lot.after >= 0;
    }
    massKg = mass;
    supplyKg = drawn;
    ready = readyMin;
    machines = takes;
    weight = weightSum;
    alone = anyAlone;
    chained = anyChained;
    if (lots.length == 1) {
      dwellMin = first.dwellMin;
      dwellMax = first.dwellMax;
    } else {
      dwellMin = new int[line.settings];
      dwellMax = new int[line.settings];
      meetDwells(floor);
    }
    minutes = minutes(floor, line);
    travel = IntStream.range(0, line.ahead).map(s -> minutes[s]).sum();
    int[] last =
        Arrays.stream(lots)
            .filter(i -> floor.lots[i].lot.lastLeg())
            .boxed()
            .sorted(Comparator.comparingInt(i -> floor.lots[i].lot.dueMin()))
            .mapToInt(Integer::intValue)
            .toArray();
    dues = Arrays.stream(last).map(i -> floor.lots[i].lot.dueMin()).toArray();
    dueWeights = Arrays.stream(last).map(i -> floor.lots[i].lot.weight()).toArray();
    announced = floor.announced.of(Arrays.stream(lots).mapToObj(i -> floor.lots[i].lot).toList());
  }

  private void meetDwells(Floor floor) {
    for (int s = 0; s < dwellMin.length; s++) {
      int shortest = 0;
      int longest = Integer.MAX_VALUE;
      for (int index : lots) {
        LotFacts lot = floor.lots[index];
        if (lot.dwellMin[s] < 0) {
          longest = -1;
          break;
        }
        shortest = Math.max(shortest, lot.dwellMin[s]);
        longest = Math.min(longest, lot.dwellMax[s]);
      }
      dwellMin[s] = shortest <= longest ? shortest : -1;
      dwellMax[s] = longest;
    }
  }

  private int[] minutes(Floor floor, LineFacts line) {
    int[] sum = new int[line.stations.length];
    for (int s = 0; s < sum.length; s++) {
      int fixed = 0;
      double variable = 0;
      for (int index : lots) {
        LotFacts lot = floor.lots[index];
        fixed = Math.max(fixed, lot.fixedMin[s]);
        variable += lot.variableMin[s];
      }
      sum[s] = fixed + (int) Math.ceil(variable - 1e-9);
    }
    return sum;
  }
}
