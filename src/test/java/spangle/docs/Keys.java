package spangle.docs;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.StreamSupport;

/** Every key of a schema as one row: path, whether it is needed, what it holds, what it means. */
final class Keys {
  private static final Pattern QUANTITY = Pattern.compile("\\^(\\w+)\\(_\\(([\\w|]+)\\)\\)\\?\\$");

  private final JsonNode root;
  private final Map<String, String> rows = new LinkedHashMap<>();
  private final Set<String> open = new HashSet<>();

  Keys(JsonNode root) {
    this.root = root;
    walk("", root);
  }

  List<String> rows() {
    return List.copyOf(rows.values());
  }

  private void walk(String path, JsonNode schema) {
    String reference = schema.path("$ref").asText();
    if (!reference.isEmpty()) {
      // A record that holds its own kind is written once.
      if (open.add(reference + " " + path) && path.length() < 120) {
        walk(path, root.at(reference.substring(1)));
      }
      return;
    }
    Set<String> needed = texts(schema.path("required"));
    schema
        .path("properties")
        .properties()
        .forEach(
            e -> {
              String key = path + e.getKey();
              rows.putIfAbsent(key, row(key, needed.contains(e.getKey()), e.getValue()));
              below(key, e.getValue());
            });
    schema
        .path("patternProperties")
        .properties()
        .forEach(
            e -> {
              Matcher quantity = QUANTITY.matcher(e.getKey());
              if (quantity.matches()) {
                rows.putIfAbsent(path + quantity.group(1), quantityRow(path, quantity, e));
              }
            });
    for (String any : List.of("oneOf", "anyOf", "allOf")) {
      schema.path(any).forEach(each -> walk(path, each));
    }
    if (schema.path("items").isObject()) {
      walk(path, schema.path("items"));
    }
    if (schema.path("additionalProperties").isObject()) {
      walk(path + "NAME.", schema.path("additionalProperties"));
    }
  }

  /** A key that ends in its unit is shown with the usual one; the others stand behind it. */
  private static String quantityRow(
      String path, Matcher quantity, Map.Entry<String, JsonNode> entry) {
    List<String> units = List.of(quantity.group(2).split("\\|", -1));
    return "| `"
        + path
        + quantity.group(1)
        + "_"
        + units.get(0)
        + "` |  | "
        + holds(entry.getValue())
        + " | "
        + entry.getValue().path("description").asText()
        + "; also in "
        + String.join(", ", units.subList(1, units.size()))
        + " |";
  }

  private void below(String key, JsonNode value) {
    walk(key + ".", value);
  }

  private static String row(String key, boolean needed, JsonNode value) {
    JsonNode items = value.path("items");
    String words = value.path("description").asText(items.path("description").asText());
    return "| `"
        + key
        + "` | "
        + (needed ? "needed" : "")
        + " | "
        + holds(value)
        + " | "
        + words.replace("|", "\\|")
        + " |";
  }

  private static String holds(JsonNode value) {
    if (value.has("enum")) {
      return texts(value.path("enum")).stream().collect(Collectors.joining(", "));
    }
    if (value.path("items").isObject()) {
      return "list"
          + (holds(value.path("items")).isEmpty() ? "" : " of " + holds(value.path("items")));
    }
    String limits = limits(value);
    JsonNode type = value.path("type");
    String word =
        type.isArray()
            ? texts(type).stream().map(Keys::word).distinct().collect(Collectors.joining(" or "))
            : word(type.asText());
    return (word + limits).strip();
  }

  private static String word(String type) {
    return switch (type) {
      case "string" -> "text";
      case "integer" -> "whole number";
      case "boolean" -> "yes or no";
      case "object" -> "group";
      case "array" -> "list";
      case "null" -> "nothing";
      default -> type;
    };
  }

  private static String limits(JsonNode value) {
    String least = value.path("minimum").asText(value.path("exclusiveMinimum").asText());
    String most = value.path("maximum").asText();
    if (least.isEmpty() && most.isEmpty()) {
      return "";
    }
    return most.isEmpty() ? " from " + least : " " + least + " to " + most;
  }

  private static Set<String> texts(JsonNode list) {
    return StreamSupport.stream(list.spliterator(), false)
        .map(JsonNode::asText)
        .collect(Collectors.toCollection(LinkedHashSet::new));
  }
}
