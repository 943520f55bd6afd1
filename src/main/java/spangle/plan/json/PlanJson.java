package spangle.plan.json;

import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonParseException;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.core.StreamWriteFeature;
import com.fasterxml.jackson.core.json.JsonWriteFeature;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonMappingException;
import com.fasterxml.jackson.databind.MapperFeature;
import com.fasterxml.jackson.databind.PropertyNamingStrategies;
import com.fasterxml.jackson.databind.SerializationFeature;
import com.fasterxml.jackson.databind.exc.InvalidFormatException;
import com.fasterxml.jackson.databind.exc.UnrecognizedPropertyException;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.datatype.jsr310.JavaTimeModule;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.stream.Collectors;

/**
 * Writes plans and reads them. Keys stand in the order of the records, with small letters and the
 * unit at their end; what has no limit, no value or no end is null; numbers are written as short as
 * they can be read back unchanged.
 */
public final class PlanJson {
  private static final JsonMapper COMPACT =
      mapper()
          .addModule(new JavaTimeModule())
          .addModule(new Numbers())
          .addModule(new Optionals())
          .build();
  private static final JsonMapper MAPPER =
      mapper()
          .addModule(new JavaTimeModule())
          .addModule(new Numbers())
          .addModule(new Optionals())
          .addModule(new OneLine(COMPACT))
          .build();

  private static final String MISSING = "Missing creator property";

  private static final String OTHER =
      "; the plan was written by another version of the program: plan the week again, the events"
          + " stay in events.yaml (loads are numbered anew, so events that name a load of this plan"
          + " may need the new number)";

  private PlanJson() {}

  private static JsonMapper.Builder mapper() {
    return JsonMapper.builder()
        .propertyNamingStrategy(PropertyNamingStrategies.SNAKE_CASE)
        .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
        .enable(StreamWriteFeature.USE_FAST_DOUBLE_WRITER)
        .disable(JsonWriteFeature.WRITE_NAN_AS_STRINGS)
        .enable(DeserializationFeature.FAIL_ON_MISSING_CREATOR_PROPERTIES)
        .enable(DeserializationFeature.FAIL_ON_NULL_CREATOR_PROPERTIES)
        .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
        .enable(DeserializationFeature.USE_BIG_DECIMAL_FOR_FLOATS)
        .disable(DeserializationFeature.ACCEPT_FLOAT_AS_INT)
        .disable(MapperFeature.ALLOW_COERCION_OF_SCALARS)
        .disable(SerializationFeature.WRITE_DATES_AS_TIMESTAMPS);
  }

  /** The plan as UTF-8 JSON with a line end; the same plan gives the same bytes. */
  public static byte[] write(PlanFile plan) {
    DefaultIndenter indenter = new DefaultIndenter(" ", "\n");
    DefaultPrettyPrinter printer =
        new DefaultPrettyPrinter().withObjectIndenter(indenter).withArrayIndenter(indenter);
    try {
      String text = MAPPER.writer(printer).writeValueAsString(plan);
      return (text + "\n").getBytes(StandardCharsets.UTF_8);
    } catch (JsonProcessingException cannotHappenInMemory) {
      throw new UncheckedIOException(cannotHappenInMemory);
    }
  }

  /**
   * Reads a plan.
   *
   * @param json UTF-8
   * @throws PlanFileException with line, column and what is wrong
   */
  public static PlanFile read(byte[] json) throws PlanFileException {
    if (json.length == 0) {
      throw new PlanFileException("the file is empty");
    }
    try {
      PlanFile file = MAPPER.readValue(json, PlanFile.class);
      if (file == null) {
        throw new PlanFileException("the file holds null, not a plan", new IOException("null"));
      }
      return file;
    } catch (JsonProcessingException wrong) {
      throw new PlanFileException(sentence(wrong), wrong);
    } catch (IOException wrong) {
      throw new PlanFileException("the file cannot be read as text: " + wrong.getMessage(), wrong);
    }
  }

  private static String sentence(JsonProcessingException wrong) {
    JsonLocation where = wrong.getLocation();
    String place =
        where == null ? "" : "line " + where.getLineNr() + ", column " + where.getColumnNr() + ": ";
    if (!(wrong instanceof JsonMappingException mapping)) {
      return place + notJson(firstLine(wrong.getOriginalMessage()));
    }
    String path =
        mapping.getPath().stream()
            .map(
                step ->
                    step.getFieldName() == null ? "[" + step.getIndex() + "]" : step.getFieldName())
            .collect(Collectors.joining("."))
            .replace(".[", "[");
    String what = what(mapping);
    return place + (path.isEmpty() ? "" : path + ": ") + what + (otherKeys(mapping) ? OTHER : "");
  }

  private static String notJson(String original) {
    return original.startsWith("Unexpected end-of-input")
        ? "the file ends here, in the middle of a plan: it was cut short; put a whole copy back, or"
            + " plan the week again"
        : "not JSON: " + original;
  }

  /** A key too many or too few is what a plan of an earlier or later version looks like. */
  private static boolean otherKeys(JsonMappingException mapping) {
    return mapping instanceof UnrecognizedPropertyException
        || mapping.getOriginalMessage().startsWith(MISSING);
  }

  private static String what(JsonMappingException mapping) {
    if (mapping instanceof UnrecognizedPropertyException unknown) {
      return "a plan has no key \"" + unknown.getPropertyName() + "\" here";
    }
    if (mapping.getCause() instanceof NullPointerException) {
      return "a list in it holds null where something must stand";
    }
    if (mapping.getCause() instanceof IllegalArgumentException refused) {
      return String.valueOf(refused.getMessage());
    }
    if (mapping instanceof InvalidFormatException value) {
      String text = String.valueOf(value.getValue()).replaceAll("\\s+", " ");
      return "\"" + text + "\" is not " + wanted(value.getTargetType());
    }
    String original = firstLine(mapping.getOriginalMessage());
    if (mapping.getCause() instanceof JsonParseException) {
      return notJson(original);
    }
    if (original.startsWith(MISSING)) {
      return "the key is missing";
    }
    return original.startsWith("Null value for creator property") ? "a value is missing" : original;
  }

  private static String wanted(Class<?> type) {
    if (type == LocalDate.class) {
      return "a date such as 2026-11-30";
    }
    if (type.isEnum()) {
      return "one of "
          + Arrays.stream(type.getEnumConstants())
              .map(String::valueOf)
              .collect(Collectors.joining(", "));
    }
    boolean number = type.isPrimitive() || Number.class.isAssignableFrom(type);
    return number ? "a number that can stand here" : "a value that can stand here";
  }

  private static String firstLine(String text) {
    int end = text.indexOf('\n');
    String line = end < 0 ? text : text.substring(0, end);
    int source = line.indexOf(" (for Object starting at");
    return source < 0 ? line : line.substring(0, source);
  }
}
