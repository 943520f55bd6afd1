package spangle.desk;

import java.util.List;
import spangle.plan.FinishKind;

/** What can hurt or spoil at a load, by what is done to it. */
final class LoadCautions {
  private LoadCautions() {}

  static List<String> of(FinishKind kind) {
    return switch (kind) {
      case POWDER ->
          List.of(
              "Clean hooks: part to earth at most 1 megohm; the local code decides.",
              "Part below 38 C before powder; cool before handling.");
      case DEGAS -> List.of("Hot load: gloves; cool below 38 C before powder.");
      case LIQUID ->
          List.of(
              "Solvent: extraction on, no flame, oven exhaust proven; the local code decides.",
              "Never in an oven together with powder.");
      case ZINC ->
          List.of(
              "Only dry work enters the zinc.",
              "Nobody under the load; the crane's plate and the chain maker's table decide.");
    };
  }
}
