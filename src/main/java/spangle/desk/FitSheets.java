package spangle.desk;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import spangle.equipment.KettleProfile;
import spangle.fit.FitAnswer;
import spangle.fit.Lift;
import spangle.fit.Margin;
import spangle.fit.gate.Gate;
import spangle.fit.gate.GateState;
import spangle.fit.vent.HolePlace;
import spangle.fit.vent.HolePlaces;
import spangle.fit.vent.Holes;
import spangle.intake.brief.PartGates;
import spangle.measure.Figures;
import spangle.plan.PartFacts;
import spangle.report.LotNote;
import spangle.report.fitsheet.FitPage;
import spangle.report.fitsheet.FitSheet;
import spangle.report.fitsheet.KettleDrawing;

/** Fit answers as a page for the customer, and as the drawing on it. */
public final class FitSheets {
  private FitSheets() {}

  /** The page of a part of a week. */
  public static String page(PartFit fit) {
    return FitPage.of(
        new FitSheet(
            fit.job() + "/" + fit.part() + " " + fit.name(),
            verdict(fit.answer()),
            FitWording.attitude(fit.answer()) + limit(fit.answer()),
            figures(fit.answer()),
            fit.hollows().isEmpty()
                ? drawing(fit)
                : KettleDrawing.low(fit.answer(), fit.kettle(), holes(fit)),
            fit.hollows().stream().map(FitSheets::row).toList(),
            fit.shut(),
            gates(fit),
            fit.stations().stream()
                .map(s -> new FitSheet.Figure(s.name(), FitWording.verdict(s.answer().verdict())))
                .toList(),
            cautions(fit),
            fit.answer().waysOut(),
            validity(fit.answer(), fit.validity())));
  }

  /** The page of a size and a place. */
  public static String page(
      String what, FitAnswer answer, Optional<FitPlace> kettle, String validity) {
    return FitPage.of(
        new FitSheet(
            what,
            verdict(answer),
            FitWording.attitude(answer) + limit(answer),
            figures(answer),
            drawing(answer, kettle),
            List.of(),
            false,
            List.of(),
            List.of(),
            cautions(answer),
            answer.waysOut(),
            validity(answer, validity)));
  }

  /** The usual ones of every dip go before those of this one. */
  private static List<String> cautions(FitAnswer answer) {
    if (!answer.rules().twoDips() || answer.dips() == 0) {
      return answer.cautions();
    }
    List<String> all = new ArrayList<>();
    all.add("Nothing sealed and nothing wet goes into zinc: air or water shut in explodes");
    all.add(
        "Two people look at the vents and drains; nobody stands under the load or over the bath");
    all.addAll(answer.cautions());
    return all;
  }

  private static String validity(FitAnswer answer, String validity) {
    return answer.rules().twoDips()
        ? validity + " No promise is made of how the zinc will look."
        : validity;
  }

  /** The drawing of a part of a week. */
  public static String drawing(PartFit fit) {
    return KettleDrawing.of(fit.answer(), fit.kettle(), holes(fit));
  }

  /** The drawing of a size and a place. */
  public static String drawing(FitAnswer answer, Optional<FitPlace> kettle) {
    Optional<KettleProfile> profile = kettle.flatMap(FitPlace::kettle);
    return KettleDrawing.of(answer, profile, List.of());
  }

  /** Drawings of a measured part for its dip sheet; empty where it does not go into zinc. */
  static Optional<LotNote.Drawings> drawings(Optional<PartGates> gates, PartFacts part) {
    boolean hollow = gates.map(g -> !g.members().isEmpty()).orElse(false);
    return gates
        .flatMap(PartGates::best)
        .map(
            best -> {
              FitAnswer answer = best.answer();
              Optional<KettleProfile> kettle = Optional.of(best.way().kettle());
              List<HolePlace> holes =
                  hollow ? HolePlaces.of(FitDesk.hung(answer, part.envelopeMm())) : List.of();
              return new LotNote.Drawings(
                  KettleDrawing.low(answer, kettle, holes),
                  KettleDrawing.beside(answer, kettle, holes));
            });
  }

  private static List<HolePlace> holes(PartFit fit) {
    return fit.hollows().stream().findFirst().map(PartFit.HollowHoles::places).orElse(List.of());
  }

  private static String limit(FitAnswer answer) {
    return answer.limitedBy().map(name -> "; limited by " + name).orElse("");
  }

  private static String verdict(FitAnswer answer) {
    return FitWording.verdict(answer.verdict()).toUpperCase(Locale.ROOT);
  }

  private static List<String> gates(PartFit fit) {
    List<String> lines = new ArrayList<>(fit.questions());
    fit.gates().stream()
        .filter(g -> g.standing() != GateState.Standing.CLEAR)
        .map(g -> g.line() + (g.isShut() ? ". Opens with: " + g.opens() : ""))
        .forEach(lines::add);
    return lines;
  }

  private static List<String> cautions(PartFit fit) {
    Set<String> words = new LinkedHashSet<>(cautions(fit.answer()));
    fit.hollows().forEach(h -> words.addAll(h.need().cautions()));
    fit.gates().stream()
        .filter(g -> fit.answer().dips() > 0 && g.gate() == Gate.POCKETS && !g.isShut())
        .filter(g -> g.words().startsWith("hang"))
        .forEach(g -> words.add("Pockets: " + g.words()));
    return List.copyOf(words);
  }

  private static FitSheet.HoleRow row(PartFit.HollowHoles hollow) {
    return new FitSheet.HoleRow(
        hollow.count()
            + " x "
            + hollow.need().hollow().words()
            + ", "
            + Figures.upTo(hollow.lengthMm(), 0)
            + " mm long",
        hollow.need().vent().map(FitSheets::words).orElse("none"),
        hollow.need().drain().map(FitSheets::words).orElse("none"),
        hollow
            .need()
            .vent()
            .map(h -> h.winner().rule() + ", " + h.winner().source())
            .orElse("none speaks of it"),
        hollow.places().stream().map(HolePlace::words).toList());
  }

  private static String words(Holes holes) {
    return holes.asRuled().words();
  }

  private static List<FitSheet.Figure> figures(FitAnswer answer) {
    List<FitSheet.Figure> figures = new ArrayList<>();
    figures.add(figure("lies across", answer.acrossMm()));
    if (answer.dips() > 0 && answer.rules().twoDips()) {
      figures.add(new FitSheet.Figure("hang at", Figures.upTo(answer.hangDeg(), 1) + " degrees"));
      answer
          .rollDeg()
          .ifPresent(
              roll ->
                  figures.add(
                      new FitSheet.Figure(
                          "roll sideways", Figures.fixed(roll.middle(), 0) + " degrees")));
      figures.add(new FitSheet.Figure("dips", Integer.toString(answer.dips())));
    }
    Margin margin = answer.margin();
    if (!answer.space().anyLength()) {
      figures.add(spare("length", margin.lengthMm()));
    }
    figures.add(spare("width", margin.widthMm()));
    figures.add(spare(answer.rules().upright(), margin.depthMm()));
    answer.overlapMm().ifPresent(overlap -> figures.add(figure("overlap of the dips", overlap)));
    answer.lift().ifPresent(lift -> lift(figures, lift));
    return figures;
  }

  private static void lift(List<FitSheet.Figure> figures, Lift lift) {
    lift.massKg()
        .ifPresent(
            kg ->
                figures.add(
                    new FitSheet.Figure(
                        "on the crane, zinc running off",
                        Figures.fixed(kg, 0)
                            + " of "
                            + Figures.fixed(lift.crane().massKg(), 0)
                            + " kg")));
  }

  private static FitSheet.Figure spare(String side, double mm) {
    return figure(side + (mm < -5e-7 ? " MISSING" : " to spare"), Math.abs(mm));
  }

  private static FitSheet.Figure figure(String name, double mm) {
    return new FitSheet.Figure(name, Figures.upTo(mm, 1) + " mm");
  }
}
