package spangle.intake.source;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.composer.Composer;
import org.yaml.snakeyaml.error.Mark;
import org.yaml.snakeyaml.error.MarkedYAMLException;
import org.yaml.snakeyaml.error.YAMLException;
import org.yaml.snakeyaml.nodes.MappingNode;
import org.yaml.snakeyaml.nodes.Node;
import org.yaml.snakeyaml.nodes.NodeTuple;
import org.yaml.snakeyaml.nodes.ScalarNode;
import org.yaml.snakeyaml.nodes.SequenceNode;
import org.yaml.snakeyaml.parser.Parser;
import org.yaml.snakeyaml.parser.ParserImpl;
import org.yaml.snakeyaml.reader.StreamReader;
import org.yaml.snakeyaml.resolver.Resolver;
import spangle.intake.problem.Place;
import spangle.intake.problem.ProblemCode;
import spangle.intake.problem.Problems;

/**
 * YAML as a tree of text. No value is resolved to a type and no tag makes an object, so {@code no},
 * {@code 06:00} and {@code 1_000} arrive as they are written.
 */
public final class YamlSource {
  private final String file;
  private final Problems problems;
  private int values;

  /** Knows no types: every plain value stays text, and no pattern is tried on it. */
  private static final class TextOnly extends Resolver {
    @Override
    protected void addImplicitResolvers() {}
  }

  private YamlSource(String file, Problems problems) {
    this.file = file;
    this.problems = problems;
  }

  /**
   * Reads one document.
   *
   * @param file path for places
   * @param text the text
   * @param problems takes keys that stand twice
   * @return empty for a file without content
   * @throws UnreadableException when it is no YAML or beyond the limits
   */
  public static Optional<Datum> read(String file, String text, Problems problems)
      throws UnreadableException {
    return new YamlSource(file, problems).read(text);
  }

  private Optional<Datum> read(String text) throws UnreadableException {
    LoaderOptions options = new LoaderOptions();
    options.setMaxAliasesForCollections(Limits.ALIASES);
    options.setNestingDepthLimit(Limits.DEPTH);
    options.setCodePointLimit((int) Limits.TEXT_BYTES);
    options.setAllowRecursiveKeys(false);
    try {
      Parser parser = new ParserImpl(new StreamReader(text), options);
      Node root = new Composer(parser, new TextOnly(), options).getSingleNode();
      return root == null ? Optional.empty() : Optional.of(datum(root, 0));
    } catch (MarkedYAMLException broken) {
      throw UnreadableException.grammar(
          place(
              broken.getProblemMark() == null ? broken.getContextMark() : broken.getProblemMark()),
          "this is not YAML: " + (broken.getProblem() == null ? "bad layout" : broken.getProblem()),
          "check indentation, quotes and colons near this line");
    } catch (IllegalArgumentException | IndexOutOfBoundsException escaped) {
      // The library answers some broken escapes ('\\x', code points there are none of) with these.
      throw UnreadableException.grammar(
          Place.file(file),
          "this is not YAML: a backslash in a quoted text is followed by what it cannot be",
          "write the backslash twice, or take the quotes away");
    } catch (YAMLException refused) {
      throw UnreadableException.tooLarge(
          Place.file(file),
          "the YAML is nested too deep, repeats itself too often or has characters no text has",
          Limits.DEPTH + " levels, " + Limits.ALIASES + " aliases");
    }
  }

  private Datum datum(Node node, int depth) throws UnreadableException {
    Place place = place(node.getStartMark());
    if (depth > Limits.DEPTH || ++values > Limits.VALUES) {
      throw UnreadableException.tooLarge(
          place,
          "the file is nested too deep or repeats itself too often",
          Limits.DEPTH + " levels, " + Limits.VALUES + " values");
    }
    if (node instanceof ScalarNode scalar) {
      return scalar(place, scalar);
    }
    if (node instanceof SequenceNode sequence) {
      List<Datum> items = new ArrayList<>();
      for (Node item : sequence.getValue()) {
        items.add(datum(item, depth + 1));
      }
      return new Datum.Series(place, items);
    }
    return group(place, (MappingNode) node, depth);
  }

  private Datum group(Place place, MappingNode mapping, int depth) throws UnreadableException {
    Map<String, Datum.Entry> entries = new LinkedHashMap<>();
    for (NodeTuple tuple : mapping.getValue()) {
      Place keyPlace = place(tuple.getKeyNode().getStartMark());
      if (!(tuple.getKeyNode() instanceof ScalarNode key)) {
        throw UnreadableException.grammar(
            keyPlace, "a name is expected before the colon", "write name: value");
      }
      Datum value = datum(tuple.getValueNode(), depth + 1);
      if (entries.putIfAbsent(key.getValue().strip(), new Datum.Entry(keyPlace, value)) != null) {
        problems.add(
            ProblemCode.KEY_TWICE,
            keyPlace,
            key.getValue(),
            "",
            "",
            "the name '" + key.getValue() + "' stands twice in one group",
            "keep one of them; the first is used");
      }
    }
    return new Datum.Group(place, entries);
  }

  private Datum.Scalar scalar(Place place, ScalarNode node) throws UnreadableException {
    String text = node.getValue();
    if (text.length() > Limits.VALUE_CHARS) {
      throw UnreadableException.tooLarge(
          place,
          "one value has " + text.length() + " characters",
          Limits.VALUE_CHARS + " characters");
    }
    boolean empty = node.isPlain() && (text.equals("~") || text.equals("null"));
    return new Datum.Scalar(place, empty ? "" : text.strip());
  }

  private Place place(@Nullable Mark mark) {
    return mark == null
        ? Place.file(file)
        : Place.at(file, mark.getLine() + 1, mark.getColumn() + 1);
  }
}
