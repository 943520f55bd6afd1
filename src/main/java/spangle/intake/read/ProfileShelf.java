package spangle.intake.read;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import spangle.equipment.KettleProfile;
import spangle.equipment.Profile;
import spangle.intake.problem.Place;
import spangle.intake.problem.Problem;
import spangle.intake.problem.Problems;
import spangle.intake.source.Datum;
import spangle.intake.source.Near;
import spangle.intake.source.UnreadableException;
import spangle.intake.source.YamlSource;

/**
 * Equipment profiles by name, for questions that need no week: those that come along, or a week's.
 */
public final class ProfileShelf {
  /** Kettles that come with the program, smallest first. */
  static final List<String> KETTLES =
      List.of("kettle-small", "kettle-medium", "kettle-large", "kettle-long");

  /** Names of all profiles that come with the program, for hints. */
  static final List<String> NAMES =
      List.of(
          "air-cooling",
          "box-oven-large",
          "box-oven-small",
          "centrifuge",
          "cooling-bay",
          "deep-cart",
          "degrease-tank",
          "dip-beam",
          "dry-off-oven",
          "flash-off-bay",
          "flat-rack",
          "flux-dryer",
          "flux-tank",
          "hall-crane",
          "hanging-place",
          "jigging-place",
          "kettle-large",
          "kettle-long",
          "kettle-medium",
          "kettle-small",
          "liquid-booth",
          "liquid-oven",
          "long-beam",
          "pallet",
          "pickle-tank",
          "powder-booth",
          "quench-tank",
          "rinse-tank",
          "small-parts-rack",
          "spin-basket",
          "spray-washer",
          "tall-cart",
          "truck-floor",
          "unhanging-place");

  private ProfileShelf() {}

  /**
   * What a name led to.
   *
   * @param profile the profile; empty with a sentence
   * @param complaint why there is none; empty otherwise
   */
  public record Found(Optional<Profile> profile, String complaint) {}

  /**
   * Looks a profile up, the week's own before the built-in one.
   *
   * @param week a week folder; empty for the built-in ones alone
   */
  public static Found find(Optional<Path> week, String name) {
    Problems problems = new Problems();
    Optional<WeekFolder> folder = week.flatMap(path -> WeekFolder.open(path, problems, false));
    if (week.isPresent() && folder.isEmpty()) {
      return new Found(Optional.empty(), "there is no week folder " + week.get());
    }
    String file = Profiles.FOLDER + name + ".yaml";
    Optional<String> text =
        Fields.isName(name)
            ? folder
                .filter(f -> f.exists(file))
                .flatMap(f -> f.text(file, problems))
                .or(() -> Profiles.builtIn(file))
            : Optional.empty();
    if (text.isEmpty()) {
      return new Found(
          Optional.empty(),
          "there is no equipment profile '" + name + "'" + Near.hint(name, NAMES));
    }
    return read(name, file, text.get(), problems);
  }

  private static Found read(String name, String file, String text, Problems problems) {
    try {
      Optional<Datum> datum = YamlSource.read(file, text, problems);
      if (datum.isPresent() && datum.get() instanceof Datum.Group group) {
        Optional<Profile> profile = ProfileReader.read(name, group, new Notes(problems, true));
        if (profile.isPresent()) {
          return new Found(profile, "");
        }
      }
      return new Found(
          Optional.empty(),
          file
              + " cannot be used: "
              + problems.sorted().stream()
                  .findFirst()
                  .map(ProfileShelf::words)
                  .orElse("it is empty"));
    } catch (UnreadableException broken) {
      return new Found(Optional.empty(), file + " cannot be read: " + broken.why());
    }
  }

  private static String words(Problem problem) {
    Place place = problem.place();
    return place.words() + ", " + problem.field() + ": " + problem.why();
  }

  /** The kettles that come with the program. */
  public static List<KettleProfile> kettles() {
    List<KettleProfile> kettles = new ArrayList<>();
    for (String name : KETTLES) {
      find(Optional.empty(), name)
          .profile()
          .filter(KettleProfile.class::isInstance)
          .map(KettleProfile.class::cast)
          .ifPresent(kettles::add);
    }
    return kettles;
  }
}
