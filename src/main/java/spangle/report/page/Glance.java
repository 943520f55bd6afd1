package spangle.report.page;

import java.util.ArrayList;
import java.util.List;
import spangle.plan.PlanFigures;
import spangle.plan.PlannedBatch;
import spangle.report.Bound;
import spangle.report.Comparison;
import spangle.report.WeekReport;
import spangle.report.week.Answer;
import spangle.report.week.Say;
import spangle.report.week.TenAnswers;
import spangle.report.week.WeekIndex;

/** The first page: ten answers, what the plan comes to, how near it is to the best. */
public final class Glance {
  private Glance() {}

  /**
   * One answer, cut to the room of the first page.
   *
   * @param number 1 to 10
   * @param question the question
   * @param answer in a few words
   * @param details as many as there is room for
   * @param more how many details stand elsewhere; empty for none
   * @param alarm true when it needs a person
   * @param place where on the page the whole answer stands
   */
  public record Box(
      String number,
      String question,
      String answer,
      List<String> details,
      String more,
      boolean alarm,
      String place) {
    /** Copies the list. */
    public Box {
      details = List.copyOf(details);
    }
  }

  /**
   * A figure of the plan.
   *
   * @param name what is counted
   * @param value the figure
   */
  public record Figure(String name, String value) {}

  /**
   * The plan beside something else.
   *
   * @param name what is counted
   * @param ours by the plan
   * @param other by hand, or what no plan can go under
   */
  public record Beside(String name, String ours, String other) {}

  private static final List<String> PLACES =
      List.of(
          "run", "cards", "fits", "holds", "buy", "kits", "waiting", "waiting", "changes",
          "waiting");

  static List<Box> boxes(WeekIndex index) {
    GlanceRoom room = GlanceRoom.of(index.report());
    List<Box> boxes = new ArrayList<>();
    for (Answer answer : TenAnswers.of(index)) {
      List<String> shown = room.details(answer);
      int more = answer.details().size() - shown.size();
      boxes.add(
          new Box(
              Integer.toString(answer.number()),
              answer.question(),
              answer.answer(),
              shown,
              more > 0 ? "and " + more + " more" : "",
              answer.alarm(),
              place(index, answer)));
    }
    return boxes;
  }

  /** Where the whole answer stands; this page where there is no more to it. */
  private static String place(WeekIndex index, Answer answer) {
    String place = PLACES.get(answer.number() - 1);
    boolean there =
        switch (place) {
          case "fits" -> !index.report().facts().fits().isEmpty();
          case "changes" -> !index.report().yardstick().changes().isEmpty();
          case "cards" -> !OvenCards.of(index).isEmpty();
          case "run" -> !index.loads().isEmpty();
          default -> true;
        };
    return there ? place : "glance";
  }

  static List<Figure> figures(WeekIndex index) {
    WeekReport report = index.report();
    PlanFigures f = report.plan().figures();
    Say say = index.say();
    int pieces =
        index.loads().stream()
            .flatMap(l -> l.lots().stream())
            .mapToInt(l -> l.lastLeg() ? l.pieces() : 0)
            .sum();
    double steel = index.loads().stream().mapToDouble(l -> l.massKg()).sum();
    List<PlannedBatch> own = report.brief().inTheHouse(report.plan().batches());
    int minutes = own.stream().mapToInt(PlannedBatch::dwellMin).sum();
    return List.of(
        new Figure("loads", Integer.toString(f.loads())),
        new Figure("oven batches and dips", Integer.toString(own.size())),
        new Figure("hours in ovens and kettles", say.number(minutes / 60.0, 1)),
        new Figure("colour changes", Integer.toString(f.colourChanges())),
        new Figure("pieces finished", Integer.toString(pieces)),
        new Figure("kg moved", say.number(steel, 0)));
  }

  static List<Beside> bounds(WeekIndex index) {
    return index.report().yardstick().bounds().stream()
        .map((Bound b) -> beside(index, b.name(), b.ours(), b.noPlanFewerThan()))
        .toList();
  }

  static List<Beside> comparisons(WeekIndex index) {
    return index.report().yardstick().comparisons().stream()
        .map((Comparison c) -> beside(index, c.name(), c.plan(), c.byHand()))
        .toList();
  }

  private static Beside beside(WeekIndex index, String name, double ours, double other) {
    return new Beside(name, index.say().number(ours, 1), index.say().number(other, 1));
  }
}
