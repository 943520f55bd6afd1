package spangle.intake.source;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.StreamReadConstraints;
import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import spangle.intake.problem.Place;
import spangle.intake.problem.ProblemCode;
import spangle.intake.problem.Problems;

/** JSON as a tree of text; numbers keep the digits they were written with. */
public final class JsonSource {
  private static final JsonFactory FACTORY =
      JsonFactory.builder()
          .streamReadConstraints(
              StreamReadConstraints.builder()
                  .maxNestingDepth(Limits.DEPTH + 2)
                  .maxStringLength(Limits.VALUE_CHARS)
                  .maxNameLength(1_000)
                  .maxNumberLength(200)
                  .build())
          .build();

  private final String file;
  private final Problems problems;
  private int values;

  private JsonSource(String file, Problems problems) {
    this.file = file;
    this.problems = problems;
  }

  /**
   * Reads one document.
   *
   * @return empty for a file without content
   * @throws UnreadableException when it is no JSON or beyond the limits
   */
  public static Optional<Datum> read(String file, String text, Problems problems)
      throws UnreadableException {
    return new JsonSource(file, problems).read(text);
  }

  private Optional<Datum> read(String text) throws UnreadableException {
    try (JsonParser parser = FACTORY.createParser(text)) {
      if (parser.nextToken() == null) {
        return Optional.empty();
      }
      Datum root = datum(parser, 0);
      if (parser.nextToken() != null) {
        throw UnreadableException.grammar(
            place(parser.currentTokenLocation()),
            "the JSON goes on after its end",
            "keep one object or one list in a file");
      }
      return Optional.of(root);
    } catch (JsonProcessingException broken) {
      throw UnreadableException.grammar(
          place(broken.getLocation()),
          "this is not JSON, or it is nested too deep: " + said(broken),
          "check quotes, commas and brackets near this line");
    } catch (IOException impossible) {
      throw UnreadableException.grammar(
          Place.file(file), "the text cannot be read", "save the file again");
    }
  }

  /** The parser's sentence without its remarks about where it reads from. */
  private static String said(JsonProcessingException broken) {
    String message = broken.getOriginalMessage();
    return message == null ? "bad layout" : message.replaceFirst("\\s*[(\\[][^)\\]]*Source:.*", "");
  }

  private Datum datum(JsonParser parser, int depth) throws IOException, UnreadableException {
    Place place = place(parser.currentTokenLocation());
    if (depth > Limits.DEPTH || ++values > Limits.VALUES) {
      throw UnreadableException.tooLarge(
          place, "the file is nested too deep or too long", Limits.DEPTH + " levels");
    }
    JsonToken token = parser.currentToken();
    if (token == JsonToken.START_OBJECT) {
      return group(parser, place, depth);
    }
    if (token == JsonToken.START_ARRAY) {
      List<Datum> items = new ArrayList<>();
      while (parser.nextToken() != JsonToken.END_ARRAY) {
        items.add(datum(parser, depth + 1));
      }
      return new Datum.Series(place, items);
    }
    return new Datum.Scalar(place, token == JsonToken.VALUE_NULL ? "" : parser.getText().strip());
  }

  private Datum group(JsonParser parser, Place place, int depth)
      throws IOException, UnreadableException {
    Map<String, Datum.Entry> entries = new LinkedHashMap<>();
    while (parser.nextToken() != JsonToken.END_OBJECT) {
      String name = parser.currentName().strip();
      Place keyPlace = place(parser.currentTokenLocation());
      parser.nextToken();
      Datum value = datum(parser, depth + 1);
      if (entries.putIfAbsent(name, new Datum.Entry(keyPlace, value)) != null) {
        problems.add(
            ProblemCode.KEY_TWICE,
            keyPlace,
            name,
            "",
            "",
            "the name '" + name + "' stands twice in one group",
            "keep one of them; the first is used");
      }
    }
    return new Datum.Group(place, entries);
  }

  private Place place(@Nullable JsonLocation location) {
    return location == null || location.getLineNr() < 1
        ? Place.file(file)
        : Place.at(file, location.getLineNr(), Math.max(1, location.getColumnNr()));
  }
}
