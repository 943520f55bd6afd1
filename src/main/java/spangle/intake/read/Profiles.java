package spangle.intake.read;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import spangle.equipment.Profile;
import spangle.intake.problem.Place;
import spangle.intake.problem.ProblemCode;
import spangle.intake.problem.Problems;
import spangle.intake.source.Datum;
import spangle.intake.source.UnreadableException;
import spangle.intake.source.YamlSource;

/** Equipment by name: the week's own first, then what came with the program. */
final class Profiles {
  static final String FOLDER = "rack-profiles/";

  private final WeekFolder folder;
  private final Problems problems;
  private final Map<String, Optional<Profile>> read = new LinkedHashMap<>();

  Profiles(WeekFolder folder, Problems problems) {
    this.folder = folder;
    this.problems = problems;
  }

  /** The profile a field names, if it is of the kind wanted there. */
  <P> Optional<P> named(Fields fields, String key, Class<P> wanted, String kindWords) {
    Optional<Datum.Scalar> scalar = fields.needed(key);
    if (scalar.isEmpty()) {
      return Optional.empty();
    }
    String name = scalar.get().text();
    Optional<Profile> profile = read.get(name);
    if (profile == null) {
      profile = load(name, scalar.get(), key, fields.notes());
      read.put(name, profile);
    }
    if (profile.isPresent() && !wanted.isInstance(profile.get())) {
      fields
          .notes()
          .add(
              ProblemCode.UNKNOWN_NAME,
              scalar.get().place(),
              key,
              name,
              kindWords,
              "the profile '" + name + "' is not " + kindWords,
              "name a profile that is " + kindWords);
      return Optional.empty();
    }
    return profile.map(wanted::cast);
  }

  private Optional<Profile> load(String name, Datum.Scalar scalar, String key, Notes notes) {
    Optional<String> text = Fields.isName(name) ? text(name) : Optional.empty();
    if (text.isEmpty()) {
      notes.add(
          ProblemCode.UNKNOWN_NAME,
          scalar.place(),
          key,
          name,
          "a file in rack-profiles/",
          "there is no equipment profile '" + name + "'",
          "put rack-profiles/" + name + ".yaml into the week folder, or name one that exists");
      return Optional.empty();
    }
    String file = FOLDER + name + ".yaml";
    Notes own = new Notes(problems, true);
    try {
      Optional<Datum> datum = YamlSource.read(file, text.get(), problems);
      if (datum.isPresent() && datum.get() instanceof Datum.Group group) {
        return ProfileReader.read(name, group, own);
      }
      own.add(
          ProblemCode.WRONG_SHAPE,
          Place.file(file),
          "",
          "",
          "",
          "the profile is empty",
          "write kind, title, sizes and limits");
    } catch (UnreadableException broken) {
      own.add(broken.code(), broken.place(), "", "", broken.limit(), broken.why(), broken.remedy());
    }
    return Optional.empty();
  }

  private Optional<String> text(String name) {
    String file = FOLDER + name + ".yaml";
    Optional<String> own = folder.exists(file) ? folder.text(file, problems) : Optional.empty();
    return own.isPresent() ? own : builtIn(file);
  }

  static Optional<String> builtIn(String file) {
    try (InputStream in = Profiles.class.getClassLoader().getResourceAsStream(file)) {
      return in == null
          ? Optional.empty()
          : Optional.of(new String(in.readAllBytes(), StandardCharsets.UTF_8));
    } catch (IOException unreadable) {
      return Optional.empty();
    }
  }
}
