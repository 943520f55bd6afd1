package spangle.intake.read;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import spangle.intake.problem.ProblemCode;
import spangle.intake.source.Datum;
import spangle.intake.source.Near;
import spangle.intake.week.Coating;
import spangle.intake.week.Paint;
import spangle.intake.week.Powder;
import spangle.intake.week.Route;
import spangle.plan.LineKind;

/** Reads the coats of a part and holds them against its route. */
final class FinishReader {
  private final Fields fields;
  private final JobContext context;

  FinishReader(Fields fields, JobContext context) {
    this.fields = fields;
    this.context = context;
  }

  /** Marks the finish as read where the route is not known. */
  List<String> unread() {
    fields.texts("finish", "\\+");
    return List.of();
  }

  /** Ids of the coats, in order; empty for plain zinc. */
  List<String> read(Route route) {
    List<Datum.Scalar> written = fields.texts("finish", "\\+");
    if (route == Route.ZINC) {
      written.stream().filter(f -> !isZinc(f.text())).findFirst().ifPresent(f -> misfit(f, route));
      return List.of();
    }
    if (written.isEmpty()) {
      if (fields.raw("finish").isEmpty()) {
        fields.missing("finish");
      }
      return List.of();
    }
    List<String> ids = new ArrayList<>();
    for (Datum.Scalar finish : written) {
      if (route == Route.DUPLEX && isZinc(finish.text())) {
        continue;
      }
      Optional<Coating> coating = coating(finish, route);
      if (coating.isEmpty()) {
        unknown(finish, route);
      } else if (!fits(coating.get(), route)) {
        misfit(finish, route);
      } else {
        ids.add(coating.get().id());
      }
    }
    checkNumber(route, written, ids);
    return ids;
  }

  /** The route a finish can only mean where none is written; empty where it may mean several. */
  Optional<Route> meant() {
    List<Datum.Scalar> written = fields.texts("finish", "\\+");
    if (written.size() != 1) {
      return Optional.empty();
    }
    String text = written.get(0).text();
    if (isZinc(text)) {
      return Optional.of(Route.ZINC);
    }
    List<Coating> coatings = byId(text).map(List::of).orElseGet(() -> byColour(text));
    return coatings.size() != 1
        ? RouteWords.find(text)
        : Optional.of(coatings.get(0) instanceof Paint ? Route.LIQUID : Route.POWDER);
  }

  private Optional<Coating> byId(String text) {
    return context
        .catalogue()
        .coating(text)
        .or(
            () ->
                context
                    .catalogue()
                    .coatings()
                    .filter(c -> c.id().equalsIgnoreCase(text))
                    .findFirst());
  }

  private List<Coating> byColour(String text) {
    return context
        .catalogue()
        .coatings()
        .filter(c -> c.name().equalsIgnoreCase(text) || c.colour().equalsIgnoreCase(text))
        .toList();
  }

  /** By its id; else by its colour in words where one product alone has it, and then asked. */
  private Optional<Coating> coating(Datum.Scalar finish, Route route) {
    Optional<Coating> named = byId(finish.text());
    if (named.isPresent()) {
      return named;
    }
    List<Coating> fitting = byColour(finish.text()).stream().filter(c -> fits(c, route)).toList();
    if (fitting.size() != 1) {
      return Optional.empty();
    }
    fields
        .notes()
        .add(
            ProblemCode.FINISH_BY_COLOUR,
            finish.place(),
            "finish",
            finish.text(),
            "an id of coatings.yaml",
            "read as " + fitting.get(0).id() + ", the only product of that colour",
            "answer keep if it is right, or give the id");
    return Optional.of(fitting.get(0));
  }

  private boolean isZinc(String text) {
    return text.equalsIgnoreCase("zinc")
        || RouteWords.find(text).filter(way -> way == Route.ZINC).isPresent()
        || context.catalogue().zinc().filter(z -> z.id().equalsIgnoreCase(text)).isPresent();
  }

  private static boolean fits(Coating coating, Route route) {
    return route == Route.LIQUID ? coating instanceof Paint : coating instanceof Powder;
  }

  private void checkNumber(Route route, List<Datum.Scalar> written, List<String> ids) {
    if (fields.notes().refused()) {
      return;
    }
    int least = route == Route.TWO_COAT ? 2 : 1;
    int most = route == Route.TWO_COAT || route == Route.LIQUID ? 2 : 1;
    if (ids.size() >= least && ids.size() <= most) {
      return;
    }
    String many = least == most ? Integer.toString(least) : least + " or " + most;
    fields
        .notes()
        .add(
            ProblemCode.FINISH_DOES_NOT_FIT_ROUTE,
            written.get(0).place(),
            "finish",
            fields.text("finish"),
            many + " coat(s)",
            "the route '"
                + route.word()
                + "' takes "
                + many
                + " coat(s), "
                + ids.size()
                + " are named",
            "name the coats with + between them, or take another route");
  }

  private void unknown(Datum.Scalar finish, Route route) {
    List<String> known = context.catalogue().coatings().map(Coating::id).toList();
    List<String> several =
        byColour(finish.text()).stream().filter(c -> fits(c, route)).map(Coating::id).toList();
    boolean refused = context.refusedFinishes().contains(finish.text());
    fields
        .notes()
        .add(
            ProblemCode.FINISH_UNKNOWN,
            finish.place(),
            "finish",
            finish.text(),
            "",
            refused
                ? "the finish '" + finish.text() + "' stands in coatings.yaml but was refused there"
                : RouteWords.find(finish.text()).isPresent()
                    ? "'" + finish.text() + "' says how, not in which colour"
                    : several.size() > 1
                        ? "several products have that colour: " + String.join(", ", several)
                        : "coatings.yaml has no finish '"
                            + finish.text()
                            + "'"
                            + Near.hint(finish.text(), known),
            refused
                ? "put the entry in coatings.yaml right"
                : "correct the id, or add the product with its data sheet to coatings.yaml");
  }

  private void misfit(Datum.Scalar finish, Route route) {
    String wanted =
        route == Route.ZINC ? "no paint" : route == Route.LIQUID ? "a liquid paint" : "a powder";
    fields
        .notes()
        .add(
            ProblemCode.FINISH_DOES_NOT_FIT_ROUTE,
            finish.place(),
            "finish",
            finish.text(),
            wanted,
            "the route '" + route.word() + "' takes " + wanted + ", '" + finish.text() + "' is not",
            "correct the route (powder, liquid, zinc, duplex, two-coat) or the finish");
  }

  /** Zinc may be bought: then another firm's line stands in for the kettle line. */
  private static boolean serves(LineKind line, LineKind needed) {
    return line == needed || (needed == LineKind.ZINC && line == LineKind.OUTSIDE);
  }

  /** The shop must have the lines a route needs. */
  void checkLine(Route route) {
    List<LineKind> needed = new ArrayList<>();
    if (route.zinc()) {
      needed.add(LineKind.ZINC);
    }
    if (route.powder()) {
      needed.add(LineKind.POWDER);
    }
    if (route == Route.LIQUID) {
      needed.add(LineKind.LIQUID);
    }
    for (LineKind kind : needed) {
      if (context.shop().lines().stream().noneMatch(l -> serves(l.kind(), kind))) {
        fields
            .notes()
            .add(
                ProblemCode.FINISH_DOES_NOT_FIT_ROUTE,
                fields.valuePlace("route"),
                "route",
                route.word(),
                "a line of the shop",
                "the shop has no " + kind.name().toLowerCase(java.util.Locale.ROOT) + " line",
                "take another route, or add the line to shop.yaml");
      }
    }
    if (route.zinc() && context.catalogue().zinc().isEmpty()) {
      fields
          .notes()
          .add(
              ProblemCode.FINISH_UNKNOWN,
              fields.valuePlace("route"),
              "route",
              route.word(),
              "",
              "coatings.yaml has no usable entry 'zinc'",
              "add zinc with its stock to coatings.yaml");
    }
  }
}
